import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { Listener, Performer } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import { opened } from '../helpers/open-shows.ts';
import { printedAddress, startServing } from '../helpers/serving-process.ts';
import { smallRoot } from '../helpers/small-root.ts';
import { openSocket } from '../helpers/socket.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

/** More than enough for every run; FOLDBOOK_KILLS=300 is for the patient. */
const kills = Number(process.env.FOLDBOOK_KILLS ?? 8);
const inFlight = 4;
const longestLifeMs = 250;

/** One edit of two rows that belong together: a performer and who they listen to. */
const edit = (number: number) => ({
  label: `Edit ${number}`,
  put: [
    put(
      'performers',
      Performer.parse({ id: `performer ${number}`, actId: 'act', name: `Performer ${number}` }),
    ),
    put(
      'listeners',
      Listener.parse({ id: `listener ${number}`, mixId: 'mix', performerId: `performer ${number}` }),
    ),
  ],
  remove: [],
});

/** Streams edits until the program is killed under it; answers the numbers of those that it said were saved. */
async function editUntilKilled(root: string, folder: string, first: number): Promise<number[]> {
  const serving = startServing(root, folder);
  const { window, socket } = await openSocket(await printedAddress(serving));
  const gone = new Promise<void>((resolve) => socket.once('close', () => resolve()));
  const saved: number[] = [];
  let next = first;
  const stream = async () => {
    while (socket.readyState === socket.OPEN) {
      const number = next++;
      const reply = await Promise.race([window.call('show.change', { change: edit(number) }), gone]);
      if (reply?.ok) saved.push(number);
    }
  };
  const streams = Array.from({ length: inFlight }, stream);
  await wait(Math.random() * longestLifeMs);
  serving.process.kill('SIGKILL');
  await Promise.all([...streams, serving.ended]);
  return saved;
}

test(
  `every edit that was said to be saved is there after ${kills} kills at any moment, and none by halves`,
  async () => {
    const [root, folder] = [smallRoot(), temporaryFolder()];
    const path = join(folder, 'festival.foldbook');
    const saved: number[] = [];
    for (let kill = 0; kill < kills; kill++) {
      saved.push(...(await editUntilKilled(root, folder, kill * 10_000)));
      const show = opened(path);
      const standing = show.standing();
      expectWhole(show.read(), saved, standing.revision);
      show.close();
      expect(integrityOf(path)).toBe('ok');
    }
    expect(saved.length).toBeGreaterThan(kills);
    console.log(`Kills survived: ${kills}; ${saved.length} edits were said to be saved, 0 of them lost`);
  },
  15_000 * kills + 60_000,
);

function expectWhole(show: Show, saved: readonly number[], revision: number): void {
  const there = [...show.performers.keys()].filter((id) => id.startsWith('performer '));
  const listening = [...show.listeners.keys()].filter((id) => id.startsWith('listener '));
  expect(listening.map((id) => id.split(' ')[1])).toEqual(there.map((id) => id.split(' ')[1]));
  expect(revision, 'one write for each edit').toBe(there.length);
  const found = new Set(there);
  expect(saved.filter((number) => !found.has(`performer ${number}`))).toEqual([]);
}

function integrityOf(path: string): unknown {
  const database = new Database(path, { readonly: true });
  const found = database.pragma('integrity_check', { simple: true });
  database.close();
  return found;
}

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
  '%s ends the program in order, with the whole show in one file',
  async (signal) => {
    const [root, folder] = [smallRoot(), temporaryFolder()];
    const serving = startServing(root, folder);
    const { window } = await openSocket(await printedAddress(serving));
    await window.call('show.change', { change: edit(1) });
    serving.process.kill(signal);
    expect(await serving.ended).toBe(0);
    const database = new Database(join(folder, 'festival.foldbook'), { readonly: true, fileMustExist: true });
    expect(
      database.prepare('SELECT count(*) FROM "performers" WHERE "id" = ?').pluck().get('performer 1'),
    ).toBe(1);
    database.close();
  },
  60_000,
);
