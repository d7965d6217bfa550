import { hasDisplay } from '../electron/starting/find-browser.ts';
import { installedElectron } from '../electron/starting/find-electron.ts';

/** Whether the test in Electron itself can run here: its binary and a display are needed. */
export function canRunElectron(root: string): boolean {
  return installedElectron(root) !== null && hasDisplay();
}

/** What to say where it cannot, or null where it does: a test that is not run counts neither way. */
export function electronTestNote(root: string): string | null {
  if (canRunElectron(root)) return null;
  const missing = installedElectron(root) ? 'no display here' : 'no binary here';
  return `Electron end-to-end: not run, ${missing}`;
}
