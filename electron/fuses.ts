/**
 * What is welded shut in the program that is given out: switches in Electron's binary that nobody without write
 * access to it can turn again. Electron's own page lists them (electronjs.org/docs/latest/tutorial/fuses) and its
 * security list asks to look at each. They are turned when the program is packaged: `npm run flip-fuses`.
 */
export const fuses = {
  RunAsNode: { on: false, why: 'The program is no Node for whoever sets ELECTRON_RUN_AS_NODE.' },
  EnableCookieEncryption: { on: true, why: 'There are no cookies; were there any, they would be encrypted.' },
  EnableNodeOptionsEnvironmentVariable: { on: false, why: 'NODE_OPTIONS brings no foreign code in.' },
  EnableNodeCliInspectArguments: { on: false, why: 'No debugger is let in by --inspect.' },
  EnableEmbeddedAsarIntegrityValidation: {
    on: true,
    why: 'A changed archive of the program is not run (macOS and Windows; elsewhere it has no effect).',
  },
  OnlyLoadAppFromAsar: { on: true, why: 'A folder laid beside the archive is not run in its place.' },
  LoadBrowserProcessSpecificV8Snapshot: { on: false, why: 'There is no snapshot of our own to load.' },
  GrantFileProtocolExtraPrivileges: {
    on: false,
    why: 'Nothing is loaded from file addresses, so they get no rights.',
  },
  WasmTrapHandlers: {
    on: true,
    why: 'The solver is WebAssembly; the checks of its memory are those of the engine, as in Chromium.',
  },
} as const satisfies Record<string, { on: boolean; why: string }>;

export type FuseName = keyof typeof fuses;
