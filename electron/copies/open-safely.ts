import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { type Outcome, type Problem, refuse } from '../../core/contract/problem.ts';
import { ageInWords } from '../../core/show/age-in-words.ts';
import { documentFromShow, type Rows } from '../../core/show/show.ts';
import type { StoredAct } from '../database/archive.ts';
import { newShowInMemory, openShow, showInMemory } from '../database/open-show.ts';
import { salvage } from '../database/salvage.ts';
import { ShelteredShow } from '../database/sheltered-show.ts';
import type { ShowDatabase } from '../database/show-database.ts';
import { type CopyFolders, firstWritable } from './copy-folders.ts';
import { type CopyFile, copiesIn, isOwnCopy } from './copy-names.ts';
import { readCopy } from './read-copy.ts';
import { showRefuge } from './show-refuge.ts';

type Settings = {
  folders: CopyFolders;
  /** What a show holds that was never there before. */
  firstRows: () => Partial<Rows>;
  now?: () => Date;
  tell?: () => void;
};

/** A show that can be worked on, and what happened on the way that the engineer should know. */
export type SafelyOpened = { show: ShelteredShow; notice: Problem | null };

/**
 * Opens the show at a path so that work can begin: a damaged file is set aside and repaired or replaced by the newest
 * good copy, a missing one is restored from its copies, one that cannot be written is worked on in memory. Refused
 * are a show that is in use, one of a newer program, and a file of another program.
 */
export function openSafely(path: string, settings: Settings): Outcome<SafelyOpened> {
  const { folders, now = () => new Date() } = settings;
  // A file of no bytes is what a power cut may leave; beside copies it is no new show.
  const isMissing = !existsSync(path) || statSync(path).size === 0;
  if (isMissing && existsSync(dirname(path))) {
    const restored = restoreNewest(path, folders, now);
    if (restored) return sheltered(restored.show, settings, missing(restored));
  }
  const opened = openShow(path, { firstRows: settings.firstRows, now });
  if (opened.ok) return sheltered(opened.value, settings, isMissing ? null : rescued(path, folders));
  const { code } = opened.problem;
  const isOurs = code === 'damaged show' || (code === 'not a show' && copiesIn(folders.first).length > 0);
  if (isOurs) return recover(path, opened.problem, settings, now);
  if (code === 'cannot write') return openInMemory(path, opened.problem, settings, now);
  return opened;
}

function recover(path: string, problem: Problem, settings: Settings, now: () => Date): Outcome<SafelyOpened> {
  const saved = salvage(path);
  const aside = setAside(path, now());
  if (!aside) return { ok: false, problem };
  // A copy of the last write holds every letter; what was read from a damaged file may hold a wrong one.
  const exact = saved?.isWhole ? restoreNewest(path, settings.folders, now, saved.revision ?? 0) : null;
  const archived = saved?.archived ?? [];
  if (exact) return sheltered(exact.show, settings, restoredNotice(exact, problem, aside), archived);
  if (saved?.isWhole) {
    const repaired = openShow(path, { firstRows: () => documentFromShow(saved.show), now });
    if (repaired.ok)
      return sheltered(repaired.value, settings, repairedNotice(problem, saved.rowCount, aside), archived);
  }
  const restored = restoreNewest(path, settings.folders, now);
  if (restored) return sheltered(restored.show, settings, restoredNotice(restored, problem, aside), archived);
  const rest = saved
    ? openShow(path, { firstRows: () => documentFromShow(saved.show), now })
    : ({ ok: false, problem } as const);
  if (rest.ok && saved)
    return sheltered(rest.value, settings, salvagedNotice(saved.rowCount, aside), archived);
  bringBackFrom(aside, path);
  return { ok: false, problem };
}

type Restored = { show: ShowDatabase; copy: CopyFile; ageMs: number };

/**
 * Puts the newest good copy in the place of the show, if it holds the write of `revision`. Copies of another machine
 * come last: their show may be another one, and whoever takes over from it has none of their own.
 */
function restoreNewest(path: string, folders: CopyFolders, now: () => Date, revision = 0): Restored | null {
  const places = [folders.first, folders.second, ...folders.refuges].filter((it) => it !== null);
  const found = places.flatMap(copiesIn).sort((a, b) => b.madeAtMs - a.madeAtMs);
  const copies = [...found.filter((it) => isOwnCopy(it)), ...found.filter((it) => !isOwnCopy(it))];
  const good = copies.find((copy) => {
    const looked = readCopy(
      copy.path,
      (show) => show.damage() === null && show.standing().revision >= revision,
    );
    return looked.ok && looked.value;
  });
  if (!good) return null;
  moveLogAside(path, now());
  const unfinished = `${path}.unfinished`;
  copyFileSync(good.path, unfinished);
  chmodSync(unfinished, 0o600);
  renameSync(unfinished, path);
  const opened = openShow(path, { now });
  return opened.ok ? { show: opened.value, copy: good, ageMs: now().getTime() - good.madeAtMs } : null;
}

/** What SQLite kept beside a file that is gone would be taken for the log of the copy that comes in its place. */
function moveLogAside(path: string, now: Date): void {
  const left = ['-wal', '-shm'].filter((end) => existsSync(path + end));
  if (left.length === 0) return;
  const aside = asideOf(path, now);
  mkdirSync(dirname(aside), { recursive: true, mode: 0o700 });
  for (const end of left) renameSync(path + end, aside + end);
}

const asideOf = (path: string, now: Date) =>
  join(dirname(path), 'damaged', `show.${now.toISOString().replace(/[:.]/g, '-')}.foldbook`);

/** Moves the damaged file away with what SQLite keeps beside it; answers its new path, null where that fails. */
function setAside(path: string, now: Date): string | null {
  const aside = asideOf(path, now);
  try {
    mkdirSync(dirname(aside), { recursive: true, mode: 0o700 });
    renameSync(path, aside);
    for (const end of ['-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
    return aside;
  } catch {
    return null;
  }
}

function bringBackFrom(aside: string, path: string): void {
  rmSync(path, { force: true });
  for (const end of ['', '-wal', '-shm']) if (existsSync(aside + end)) renameSync(aside + end, path + end);
}

/** The show as it can be read, else its newest copy, else a new one; all of it in memory. */
function openInMemory(
  path: string,
  problem: Problem,
  settings: Settings,
  now: () => Date,
): Outcome<SafelyOpened> {
  if (
    firstWritable(settings.folders.refuges) === null &&
    !statSync(path, { throwIfNoEntry: false })?.isFile()
  )
    return { ok: false, problem };
  const memory = readIntoMemory(path, settings);
  if (!memory) return { ok: false, problem };
  const show = ShelteredShow.inMemory(memory, problem, {
    refuge: showRefuge(settings.folders, now),
    reopen: () => openShow(path, { firstRows: () => documentFromShow(memory.read()), now }),
    ...(settings.tell ? { tell: settings.tell } : {}),
  });
  return { ok: true, value: { show, notice: null } };
}

function readIntoMemory(path: string, { folders, firstRows }: Settings): ShowDatabase | null {
  try {
    if (existsSync(path)) return showInMemory(path, readFileSync(path));
  } catch {
    return null;
  }
  const [copy] = [folders.first, folders.second ?? folders.first].flatMap(copiesIn);
  return copy ? showInMemory(path, readFileSync(copy.path)) : newShowInMemory(path, firstRows());
}

function sheltered(
  file: ShowDatabase,
  { folders, now, tell }: Settings,
  notice: Problem | null,
  archived: readonly StoredAct[] = [],
): Outcome<SafelyOpened> {
  // Where this fails the disk is full: the damaged file, which is kept, still has these acts.
  if (archived.length > 0) file.adoptArchived(archived);
  const show = ShelteredShow.onFile(file, { refuge: showRefuge(folders, now), ...(tell ? { tell } : {}) });
  return { ok: true, value: { show, notice } };
}

const said = (what: string, todo: string): Problem => refuse('was repaired', what, todo).problem;

/** A copy that a full disk drove elsewhere, and that is newer than the show: the program was ended before it came back. */
function rescued(path: string, { refuges }: CopyFolders): Problem | null {
  const [newest] = refuges.flatMap(copiesIn).sort((a, b) => b.madeAtMs - a.madeAtMs);
  const writtenAtMs = Math.max(...['', '-wal'].map((end) => mtimeMs(path + end)));
  if (!newest || newest.madeAtMs <= writtenAtMs) return null;
  return said(
    `When the show could last not be written, newer work was kept in “${newest.path}”.`,
    'Look at it in the list of copies, and restore it if it is what you want.',
  );
}

const mtimeMs = (path: string) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const named = (copy: CopyFile) =>
  isOwnCopy(copy) ? `“${copy.name}”` : `“${copy.name}” of the machine “${copy.machine}”`;

function missing({ copy, ageMs }: Restored): Problem {
  return said(
    `There was no show in its folder. It was restored from the copy ${named(copy)}, which is ${ageInWords(ageMs)} old.`,
    'Look whether the last edits are in it.',
  );
}

function repairedNotice({ what }: Problem, rowCount: number, aside: string): Problem {
  return said(
    `The show was damaged. All of its ${rowCount} rows could be read, and it was written anew. What was found: ${what}`,
    `Look through the acts: a letter may be wrong. Undo begins anew. The damaged file is kept: ${aside}.`,
  );
}

function restoredNotice({ copy, ageMs }: Restored, { what }: Problem, aside: string): Problem {
  return said(
    `${what} It was restored from the copy ${named(copy)}, which is ${ageInWords(ageMs)} old.`,
    `Do again what you did since. The damaged file is kept: ${aside}.`,
  );
}

function salvagedNotice(rowCount: number, aside: string): Problem {
  return said(
    `The show was damaged and there is no copy of it. ${rowCount} rows could be read; others are lost.`,
    `Look through every act before you rely on it. The damaged file is kept: ${aside}.`,
  );
}
