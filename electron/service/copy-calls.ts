import type { Changed } from '../../core/contract/contract.ts';
import type { CopyKey, CopyPlaces } from '../../core/contract/copies.ts';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { type BringBack, bringBack } from '../../core/show/bring-back.ts';
import type { Change } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import type { CopyKeeper } from '../copies/copy-keeper.ts';
import { toldCopy } from '../copies/copy-keeper.ts';
import type { CopyFile } from '../copies/copy-names.ts';
import { makeFolderOn } from '../copies/found-drives.ts';
import { readCopy } from '../copies/read-copy.ts';
import { toldDifferences } from './differences.ts';
import type { Context, Handler } from './handlers.ts';

export const listCopies: Handler<'copies.list'> = (context) =>
  withKeeper(context, (keeper) => listed(context, keeper));

export const makeCopy: Handler<'copies.make'> = async (context) =>
  withKeeper(context, async (keeper) => {
    const made = await keeper.make('by hand');
    return made.ok ? listed(context, keeper) : made;
  });

export const previewCopy: Handler<'copies.preview'> = (context, key) =>
  withCopy(context, key, (copy) =>
    readCopy(copy.path, (database) => {
      const held = database.read();
      return {
        copy: toldCopy(key.place, copy),
        days: [...held.days.values()].map((it) => it.name),
        acts: [...held.acts.values()].map((it) => it.name),
        sourceCount: held.sources.size,
        mixCount: held.mixes.size,
        differences: toldDifferences(context.show.read(), held),
      };
    }),
  );

export const restoreCopy: Handler<'copies.restore'> = async (context, key) =>
  withCopy(context, key, async (copy) => {
    const read = readCopy(copy.path, (database) => ({
      held: database.read(),
      states: database.allStates(),
      archived: database.allArchived(),
    }));
    if (!read.ok) return read;
    const { held, states, archived } = read.value;
    const label = `Restore the copy of ${new Date(copy.madeAtMs).toISOString().slice(0, 16).replace('T', ' ')}`;
    const restored = await changeAfterCopy(context, (now) => {
      const adopted = context.show.adoptStates(states);
      if (!adopted.ok) return adopted;
      const recalled = context.show.adoptArchived(archived);
      if (!recalled.ok) return recalled;
      return { ok: true, value: bringBack(label, now, now, held) };
    });
    return restored.ok ? { ok: true, value: restored.value.changed } : restored;
  });

export const chooseFolder: Handler<'copies.choose'> = async (context, { choice }) =>
  withKeeper(context, async (keeper) => {
    if (choice.how === 'none') {
      keeper.folders.choose(null);
      return listed(context, keeper);
    }
    const chosen =
      choice.how === 'dialog' ? await fromDialog(context) : await onDrive(context, choice.driveId);
    if (!chosen.ok) return chosen;
    if (chosen.value !== null) {
      keeper.folders.choose(chosen.value);
      await keeper.make('by hand');
    }
    return listed(context, keeper);
  });

async function fromDialog({ chooseFolder: ask }: Context): Promise<Outcome<string | null>> {
  if (ask) return { ok: true, value: await ask() };
  return refuse(
    'no dialog',
    'In a browser window there is no dialog for a folder.',
    'Put a stick in and choose it in the list, start the program with FOLDBOOK_COPIES set to the folder, or run: npm run copies -- second FOLDER.',
  );
}

async function onDrive({ findDrives }: Context, driveId: string): Promise<Outcome<string>> {
  const drive = (await findDrives()).find(({ id }) => id === driveId);
  if (!drive)
    return refuse('not there', 'This stick or share is not there any more.', 'Put it in and look again.');
  const folder = await makeFolderOn(drive);
  if (folder !== null) return { ok: true, value: folder };
  return refuse(
    'cannot write',
    `Nothing can be written on “${drive.name}”.`,
    'Look whether it is write-protected or full, or take another one.',
  );
}

/**
 * Keeps a copy, then writes what `changeOf` makes of the show. It is asked only then, because other windows go on
 * writing while the copy is made.
 */
export async function changeAfterCopy(
  context: Context,
  changeOf: (now: Show) => Outcome<BringBack>,
): Promise<Outcome<{ changed: Changed; leftOut: number }>> {
  const kept = await keepBefore(context);
  if (!kept.ok) return kept;
  const wanted = changeOf(context.show.read());
  if (!wanted.ok) return wanted;
  const { change, leftOut } = wanted.value;
  const changed = writeAndTell(context, change);
  return changed.ok ? { ok: true, value: { changed: changed.value, leftOut } } : changed;
}

/**
 * Copies the present show before a step that replaces much of it. A full disk does not stop the step while the work
 * is in memory anyway; else no copy means no step.
 */
async function keepBefore({ copies, show }: Context): Promise<Outcome<null>> {
  if (!copies || show.standing().unsaved) return { ok: true, value: null };
  const made = await copies.make('before a step');
  return made.ok ? { ok: true, value: null } : made;
}

/** Writes a change that a call made itself; every other window hears it, the caller has it in its answer. */
function writeAndTell(context: Context, change: Change): Outcome<Changed> {
  const written = context.show.change(change);
  if (!written.ok) return written;
  const changed = { change, standing: written.value };
  context.tellOthers({ push: 'changed', changed });
  return { ok: true, value: changed };
}

async function listed(
  { chooseFolder: ask, findDrives }: Context,
  keeper: CopyKeeper,
): Promise<Outcome<CopyPlaces>> {
  const drives = (await findDrives()).map(({ id, name, path }) => ({ id, name, where: path }));
  return { ok: true, value: { ...keeper.list(), drives, hasDialog: ask !== null } };
}

function withKeeper<T>(
  { copies }: Context,
  work: (keeper: CopyKeeper) => Outcome<T> | Promise<Outcome<T>>,
): Outcome<T> | Promise<Outcome<T>> {
  return copies
    ? work(copies)
    : refuse('not there', 'This show keeps no copies.', 'Start the program as usual.');
}

function withCopy<T>(
  context: Context,
  key: CopyKey,
  work: (copy: CopyFile) => Outcome<T> | Promise<Outcome<T>>,
): Outcome<T> | Promise<Outcome<T>> {
  return withKeeper(context, (keeper) => {
    const copy = keeper.find(key);
    return copy
      ? work(copy)
      : refuse(
          'not there',
          'This copy is not there any more.',
          'Look at the list again and choose another one.',
        );
  });
}
