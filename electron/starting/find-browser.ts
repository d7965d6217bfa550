import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Programs that can show the page as a window of its own (`--app`), by the name they have on a machine. */
const commands = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'brave-browser',
];

const macPaths = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const windowsPaths = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
  'Chromium\\Application\\chrome.exe',
];

/** The first browser of the Chromium family on this machine, or null. */
export function findBrowser(
  env: NodeJS.ProcessEnv = process.env,
  platform = process.platform,
): string | null {
  return candidates(env, platform).find(isProgram) ?? null;
}

function candidates(env: NodeJS.ProcessEnv, platform: NodeJS.Platform): string[] {
  if (platform === 'darwin') return macPaths;
  if (platform === 'win32') {
    const folders = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA];
    return folders.flatMap((folder) => (folder ? windowsPaths.map((path) => join(folder, path)) : []));
  }
  const folders = (env.PATH ?? '').split(delimiter).filter((it) => it !== '');
  return commands.flatMap((command) => folders.map((folder) => join(folder, command)));
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Whether a window can be shown at all. */
export function hasDisplay(env: NodeJS.ProcessEnv = process.env, platform = process.platform): boolean {
  if (platform === 'win32' || platform === 'darwin') return true;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}

/** Chromium refuses to run as root with its sandbox; every other user keeps it. */
export function sandboxArguments(): string[] {
  return process.getuid?.() === 0 ? ['--no-sandbox'] : [];
}
