import { mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** Where a user's show, log and window settings live. `FOLDBOOK_DATA` names another folder. */
export function dataFolder(env: NodeJS.ProcessEnv = process.env, platform = process.platform): string {
  if (env.FOLDBOOK_DATA) return resolve(env.FOLDBOOK_DATA);
  if (platform === 'win32') return join(env.APPDATA ?? join(homedir(), 'AppData', 'Roaming'), 'Foldbook');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Foldbook');
  return join(env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share'), 'foldbook');
}

/** Makes the folder, closed to other users of the machine. Throws what the file system throws. */
export function makeDataFolder(folder: string): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
}
