import { createHash } from 'node:crypto';
import { access, constants, mkdir, readdir, readFile } from 'node:fs/promises';
import { basename, join, parse, sep } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** A stick, disk or share beside the disk of the show. */
export type FoundDrive = { id: string; name: string; path: string };

/** Where the systems put what is plugged in. */
const plugged = ['/media/', '/run/media/', '/mnt/', '/Volumes/'];
const shares = new Set(['nfs', 'nfs4', 'cifs', 'smb3', 'fuse.sshfs', 'fuse.davfs', 'fuse.rclone']);
/** What lies on the disk or the memory of the machine itself, wherever it appears. */
const notApart = new Set(['overlay', 'tmpfs', 'devtmpfs', 'squashfs', 'iso9660', 'autofs', 'ramfs']);

/** A share whose server went away must not hold up the list. */
const lookWithinMs = 1_500;

const folderName = 'Foldbook copies';

/**
 * The drives on which a second folder may lie, by name; without the one that holds the show, for what breaks that
 * disk breaks the copies too. Nothing is read from them: a dead share would hang.
 */
export async function foundDrives(
  dataFolder: string,
  platform: NodeJS.Platform = process.platform,
): Promise<FoundDrive[]> {
  const paths = await Promise.race([pathsOn(platform, dataFolder), wait(lookWithinMs, [])]);
  return paths.map(driveAt).sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** The folder for copies on a drive, made where it is not there; null where nothing can be written. */
export async function makeFolderOn({ path }: FoundDrive): Promise<string | null> {
  const folder = join(path, folderName);
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
    return folder;
  } catch {
    return null;
  }
}

/** The mount points of sticks and shares in a list of mounts (fstab(5): device, place, kind, options). */
export function pathsInMounts(mounts: string, dataFolder: string): string[] {
  const all = mounts.split('\n').flatMap((line) => {
    const [, place, kind = '', options = ''] = line.split(' ');
    return place ? [{ path: unescaped(place), kind, isReadOnly: options.split(',').includes('ro') }] : [];
  });
  const holding = all
    .filter(({ path }) => isInside(dataFolder, path))
    .reduce((deepest, { path }) => (path.length >= deepest.length ? path : deepest), '');
  const apart = all.filter(
    ({ path, kind, isReadOnly }) =>
      !isReadOnly &&
      path !== holding &&
      (shares.has(kind) || (plugged.some((it) => path.startsWith(it)) && !notApart.has(kind))),
  );
  return [...new Set(apart.map(({ path }) => path))];
}

async function pathsOn(platform: NodeJS.Platform, dataFolder: string): Promise<string[]> {
  try {
    if (platform === 'linux') return pathsInMounts(await readFile('/proc/self/mounts', 'utf8'), dataFolder);
    if (platform === 'darwin') {
      const volumes = await readdir('/Volumes', { withFileTypes: true });
      // The disk that the system runs from stands there as a link.
      return volumes
        .filter((it) => it.isDirectory())
        .map(({ name }) => join('/Volumes', name))
        .filter((path) => !isInside(dataFolder, path));
    }
    return platform === 'win32' ? await windowsDrives(dataFolder) : [];
  } catch {
    return [];
  }
}

async function windowsDrives(dataFolder: string): Promise<string[]> {
  const own = parse(dataFolder).root.toUpperCase();
  const roots = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => `${letter}:\\`);
  const there = await Promise.all(
    roots.map((root) =>
      access(root).then(
        () => true,
        () => false,
      ),
    ),
  );
  return roots.filter((root, at) => there[at] && root !== own);
}

function driveAt(path: string): FoundDrive {
  const id = createHash('sha256').update(path).digest('hex').slice(0, 16);
  return { id, name: basename(path) || path, path };
}

function isInside(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}

/** Blanks in a mount point stand as \040 and the like. */
function unescaped(place: string): string {
  return place.replace(/\\([0-7]{3})/g, (_, octal: string) => String.fromCharCode(Number.parseInt(octal, 8)));
}
