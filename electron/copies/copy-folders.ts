import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { z } from 'zod';

const Settings = z.object({ secondFolder: z.string().nullable().default(null) });

/** Where copies go: beside the show always, and to a second folder that the engineer chose. */
export class CopyFolders {
  readonly first: string;
  readonly #refuges: readonly string[];
  readonly #settingsFile: string;
  readonly #named: string | null;

  /** `env.FOLDBOOK_COPIES` names the second folder and goes before what was chosen in the window. */
  constructor(dataFolder: string, env: NodeJS.ProcessEnv = process.env, refuges?: readonly string[]) {
    this.first = join(dataFolder, 'copies');
    // Each show has a corner of its own: what was rescued of one must never open in the place of another.
    const corner = createHash('sha256').update(resolve(dataFolder)).digest('hex').slice(0, 16);
    this.#refuges = refuges ?? [
      join(homedir(), 'Foldbook rescued', corner),
      join(tmpdir(), 'foldbook-rescued', corner),
    ];
    this.#settingsFile = join(dataFolder, 'copies.json');
    this.#named = env.FOLDBOOK_COPIES ? resolve(env.FOLDBOOK_COPIES) : null;
  }

  /** Where a show is kept whose own disk is full, in the order they are tried. None that another user made. */
  get refuges(): readonly string[] {
    return this.#refuges.filter((folder) => {
      const found = statSync(folder, { throwIfNoEntry: false });
      return !found || process.getuid === undefined || found.uid === process.getuid();
    });
  }

  /** Whether the second folder was named at the start. */
  get isNamed(): boolean {
    return this.#named !== null;
  }

  get second(): string | null {
    if (this.#named) return this.#named;
    try {
      return Settings.parse(JSON.parse(readFileSync(this.#settingsFile, 'utf8'))).secondFolder;
    } catch {
      return null;
    }
  }

  /** Remembers the second folder, or that there is none. Throws what the file system throws. */
  choose(secondFolder: string | null): void {
    const unfinished = `${this.#settingsFile}.unfinished`;
    writeFileSync(unfinished, `${JSON.stringify({ secondFolder })}\n`, { mode: 0o600 });
    renameSync(unfinished, this.#settingsFile);
  }
}

/** The first of the folders that can be written to, made where it is not there; null where none can. */
export function firstWritable(folders: readonly string[]): string | null {
  return folders.find(canWrite) ?? null;
}

function canWrite(folder: string): boolean {
  const trial = join(folder, '.foldbook-trial');
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeFileSync(trial, 'x'.repeat(4096));
    return true;
  } catch {
    return false;
  } finally {
    try {
      rmSync(trial, { force: true });
    } catch {
      // A folder that takes no file has none to be removed.
    }
  }
}
