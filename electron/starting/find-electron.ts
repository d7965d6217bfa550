import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const reachableWithinMs = 4_000;
const downloadWithinMs = 5 * 60_000;

/** Electron's program where its binary is installed, else null. */
export function installedElectron(root: string): string | null {
  const folder = join(root, 'node_modules', 'electron');
  try {
    const program = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8'));
    return existsSync(program) ? program : null;
  } catch {
    return null;
  }
}

/**
 * Electron's program, fetched once if it is not there. A failure is remembered in the data folder and not tried
 * again for this version: a machine without a way out must not wait at every start.
 */
export async function findElectron(root: string, dataFolder: string): Promise<string | null> {
  const installed = installedElectron(root);
  if (installed) return installed;
  const version = electronVersion(root);
  const failureFile = join(dataFolder, 'electron-not-fetched.txt');
  if (version === null || rememberedFailure(failureFile) === version) return null;
  if (await isReachable(version)) {
    console.log('Fetching the window program (once, about 100 MB) ...');
    await runInstaller(join(root, 'node_modules', 'electron', 'install.js'));
  }
  const fetched = installedElectron(root);
  if (!fetched) writeFileSync(failureFile, version);
  return fetched;
}

function electronVersion(root: string): string | null {
  try {
    const manifest = readFileSync(join(root, 'node_modules', 'electron', 'package.json'), 'utf8');
    return String(JSON.parse(manifest).version);
  } catch {
    return null;
  }
}

function rememberedFailure(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    return null;
  }
}

/** Asks for the small list of checksums that lies beside the binary. */
async function isReachable(version: string): Promise<boolean> {
  const mirror = process.env.ELECTRON_MIRROR ?? 'https://github.com/electron/electron/releases/download/';
  try {
    const answer = await fetch(`${mirror}v${version}/SHASUMS256.txt`, {
      method: 'HEAD',
      signal: AbortSignal.timeout(reachableWithinMs),
    });
    return answer.ok;
  } catch {
    return false;
  }
}

function runInstaller(script: string): Promise<void> {
  return new Promise((resolve) => {
    const installer = spawn(process.execPath, [script], { stdio: 'ignore', timeout: downloadWithinMs });
    installer.on('error', () => resolve());
    installer.on('close', () => resolve());
  });
}
