import { copyFile, mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { CopyInList, CopyKey, CopyList, CopyReason } from '../../core/contract/copies.ts';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { WorkingShow } from '../database/sheltered-show.ts';
import type { CopyFolders } from './copy-folders.ts';
import { type CopyFile, copiesIn, isOwnCopy, nameOfCopy } from './copy-names.ts';
import { copiesToForget } from './kept-by-age.ts';

/** A show that was written to is copied this often. */
const everyMs = 5 * 60_000;

/** Makes, lists and forgets the copies of an open show. */
export class CopyKeeper {
  readonly folders: CopyFolders;
  readonly #show: WorkingShow;
  readonly #now: () => Date;
  #copiedRevision: number | null = null;
  #trouble: string | null = null;
  #last: Promise<unknown> = Promise.resolve();
  #timer: NodeJS.Timeout | null = null;
  #stopped = false;

  constructor(show: WorkingShow, folders: CopyFolders, now: () => Date = () => new Date()) {
    this.#show = show;
    this.folders = folders;
    this.#now = now;
  }

  /** Copies by itself from now on, whenever something was written since the last copy. */
  start(): void {
    this.#timer = setInterval(() => void this.makeIfDue(), everyMs);
    this.#timer.unref();
    void this.makeIfDue();
  }

  /** Ends the schedule. A copy that is being made is given up when the show is closed, and leaves nothing half. */
  stop(): void {
    this.#stopped = true;
    if (this.#timer) clearInterval(this.#timer);
  }

  async makeIfDue(): Promise<void> {
    if (this.#stopped || this.#show.standing().revision === this.#copiedRevision) return;
    await this.make('by itself');
  }

  /** Makes a copy in both folders, one after the other; a second folder that is away is told in the list. */
  make(reason: CopyReason): Promise<Outcome<CopyFile>> {
    const made = this.#last.then(() => this.#make(reason));
    this.#last = made.catch(() => undefined);
    return made;
  }

  list(): CopyList {
    return copyList(this.folders, this.#trouble);
  }

  /** The copy of a key, or null where there is none now. */
  find({ place, name }: CopyKey): CopyFile | null {
    const { first, second, refuges } = this.folders;
    const folders = { 'beside the show': [first], 'second folder': second ? [second] : [], rescued: refuges };
    return folders[place].flatMap((folder) => copiesIn(folder)).find((it) => it.name === name) ?? null;
  }

  async #make(reason: CopyReason): Promise<Outcome<CopyFile>> {
    if (this.#stopped) return refuse('stopped', 'The show was closed.', 'Open it and make the copy again.');
    const now = this.#now();
    const name = nameOfCopy(now, reason);
    const { first, second } = this.folders;
    const { revision } = this.#show.standing();
    const path = join(first, name);
    try {
      await mkdir(first, { recursive: true, mode: 0o700 });
      await this.#show.copyTo(path);
    } catch (error) {
      await rm(`${path}.unfinished`, { force: true }).catch(() => undefined);
      if (codeOf(error) === 'DAMAGED')
        return this.#failed(
          'A thorough check found damage in the show. Close the program and start it again: it then repairs the file or restores the newest good copy.',
        );
      return this.#failed(`No copy could be made in “${first}” (${codeOf(error)}).`);
    }
    this.#copiedRevision = revision;
    this.#trouble = null;
    if (second) await this.#copyToSecond(path, join(second, name));
    for (const folder of second && !this.#trouble ? [first, second] : [first])
      await forgetOld(folder, now.getTime());
    const made = copiesIn(first).find((it) => it.name === name);
    return made ? { ok: true, value: made } : this.#failed(`The copy in “${first}” is not there.`);
  }

  async #copyToSecond(from: string, to: string): Promise<void> {
    try {
      await copyDurably(from, to);
    } catch (error) {
      await rm(`${to}.unfinished`, { force: true }).catch(() => undefined);
      this.#trouble = `The second folder “${dirname(to)}” took no copy (${codeOf(error)}): is its stick in, is the network there? The copy beside the show was made.`;
    }
  }

  #failed(trouble: string): Outcome<never> {
    this.#trouble = trouble;
    return refuse('cannot write', trouble, 'Make room there, or look whether it may be written to.');
  }
}

/** The folder is not made: a stick that is not in must not become a folder of the machine. */
async function copyDurably(from: string, to: string): Promise<void> {
  const unfinished = `${to}.unfinished`;
  await copyFile(from, unfinished);
  const file = await open(unfinished, 'r+');
  await file.sync();
  await file.close();
  await rename(unfinished, to);
}

/** On a shared stick the copies of another machine are not this one's to forget. */
async function forgetOld(folder: string, nowMs: number): Promise<void> {
  const own = copiesIn(folder).filter((copy) => isOwnCopy(copy));
  for (const { path } of copiesToForget(own, nowMs)) await rm(path, { force: true }).catch(() => undefined);
}

/** All copies in the folders, the newest first. */
export function copyList(
  { first, second, refuges, isNamed }: CopyFolders,
  trouble: string | null = null,
): CopyList {
  const copies = [
    ...inList('beside the show', copiesIn(first)),
    ...(second ? inList('second folder', copiesIn(second)) : []),
    ...refuges.flatMap((folder) => inList('rescued', copiesIn(folder))),
  ];
  copies.sort((a, b) => Date.parse(b.madeAt) - Date.parse(a.madeAt));
  return { copies, secondFolder: second, isNamed, trouble };
}

/** A copy as a window is told of it. */
export function toldCopy(place: CopyKey['place'], copy: CopyFile): CopyInList {
  const { name, reason, madeAtMs, byteCount, machine } = copy;
  const madeAt = new Date(madeAtMs).toISOString();
  return { place, name, reason, madeAt, byteCount, machine, isOwn: isOwnCopy(copy) };
}

const inList = (place: CopyKey['place'], copies: readonly CopyFile[]) =>
  copies.map((copy) => toldCopy(place, copy));

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
}
