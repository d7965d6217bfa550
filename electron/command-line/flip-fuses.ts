import { existsSync } from 'node:fs';
import {
  type FuseConfig,
  FuseState,
  FuseV1Options,
  FuseVersion,
  flipFuses,
  getCurrentFuseWire,
} from '@electron/fuses';
import { type FuseName, fuses } from '../fuses.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';

const usage = `Usage: npm run flip-fuses -- PROGRAM
Turns the fuses of a packaged program (its file, or the .app on a Mac) to what electron/fuses.ts says, and reads them
back. To be done after packaging and before signing. A fuse that is not decided on there stops it, and nothing is turned.
Exit code: 0 turned and read back, 1 it could not be done, 2 wrong use.`;

const named = Object.entries(fuses) as [FuseName, (typeof fuses)[FuseName]][];

const wanted: FuseConfig = {
  version: FuseVersion.V1,
  strictlyRequireAllFuses: true,
  resetAdHocDarwinSignature: process.platform === 'darwin' && process.arch === 'arm64',
  [FuseV1Options.RunAsNode]: fuses.RunAsNode.on,
  [FuseV1Options.EnableCookieEncryption]: fuses.EnableCookieEncryption.on,
  [FuseV1Options.EnableNodeOptionsEnvironmentVariable]: fuses.EnableNodeOptionsEnvironmentVariable.on,
  [FuseV1Options.EnableNodeCliInspectArguments]: fuses.EnableNodeCliInspectArguments.on,
  [FuseV1Options.EnableEmbeddedAsarIntegrityValidation]: fuses.EnableEmbeddedAsarIntegrityValidation.on,
  [FuseV1Options.OnlyLoadAppFromAsar]: fuses.OnlyLoadAppFromAsar.on,
  [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: fuses.LoadBrowserProcessSpecificV8Snapshot.on,
  [FuseV1Options.GrantFileProtocolExtraPrivileges]: fuses.GrantFileProtocolExtraPrivileges.on,
  [FuseV1Options.WasmTrapHandlers]: fuses.WasmTrapHandlers.on,
};

process.exitCode = await run();

async function run(): Promise<number> {
  const given = argumentsOf({});
  const [program, ...more] = given?.positionals ?? [];
  if (given?.values.help || program === undefined || more.length > 0)
    return sayUsage(usage, given?.values.help);
  if (!existsSync(program))
    return fail(`There is no “${program}”. Package the program first, then name its file.`);
  try {
    await flipFuses(program, wanted);
    return await readBack(program);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail(
      `The fuses of “${program}” could not be turned: ${reason}. Name the packaged program itself.`,
    );
  }
}

async function readBack(program: string): Promise<number> {
  const wire = await getCurrentFuseWire(program);
  const wrong = named.filter(
    ([name, { on }]) => wire[FuseV1Options[name]] !== (on ? FuseState.ENABLE : FuseState.DISABLE),
  );
  for (const [name, { on, why }] of named) console.log(`${on ? 'on ' : 'off'} ${name}: ${why}`);
  if (wrong.length === 0) return exitCodes.done;
  return fail(
    `Not as wanted after turning: ${wrong.map(([name]) => name).join(', ')}. This Electron may no longer have them.`,
  );
}
