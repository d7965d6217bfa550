import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { put } from '../../core/show/change.ts';
import { documentFromShow } from '../../core/show/show.ts';
import { CopyFolders } from '../../electron/copies/copy-folders.ts';
import { CopyKeeper } from '../../electron/copies/copy-keeper.ts';
import { openShow } from '../../electron/database/open-show.ts';
import { openLog } from '../../electron/service/log.ts';
import { Service } from '../../electron/service/service.ts';
import { smallFestival } from '../fixtures/small-festival.ts';
import { type TestWindow, windowOf } from './window.ts';

/**
 * One hour of work: how long an edit took in the middle and at the worst of twenty, the processor's part of it (which
 * a busy machine does not change), and what is held after it.
 */
export type Hour = {
  editMs: number;
  slowEditMs: number;
  editProcessorMs: number;
  heapMb: number;
  residentMb: number;
  calls: number;
};

/** What is done in an hour; the day is as dense as its figures, not as long. */
export type Density = { hours: number; edits: number; recalls: number; imports: number; prints: number };

const first = documentFromShow(smallFestival());

/**
 * Works through a day by the calls of a window, on a file in `folder`: edits with an undo now and then, acts put
 * back to a kept state, acts brought in and taken back, riders read, sheets made, copies made. `collect` frees what
 * is not held any more, so that what is measured is held.
 */
export async function longDay(folder: string, density: Density, collect: () => void): Promise<Hour[]> {
  mkdirSync(folder, { recursive: true });
  const opened = openShow(join(folder, 'festival.foldbook'), { firstRows: () => first });
  if (!opened.ok) throw new Error(opened.problem.what);
  const copies = new CopyKeeper(opened.value, new CopyFolders(folder, {}, []));
  const service = new Service(opened.value, 'browser', openLog(join(folder, 'log')), {
    copies,
    chooseFolder: null,
    findDrives: async () => [],
    notice: null,
  });
  const { window, connection } = windowOf(service);
  try {
    const hours: Hour[] = [];
    for (let hour = 0; hour < density.hours; hour++) {
      const { times, processorTimes, calls } = await workOneHour(window, density, hour);
      await copies.makeIfDue();
      window.pushes.length = 0;
      collect();
      const { heapUsed, rss } = process.memoryUsage();
      hours.push({
        editMs: shareOf(times, 0.5),
        slowEditMs: shareOf(times, 0.95),
        editProcessorMs: shareOf(processorTimes, 0.5),
        heapMb: heapUsed / 2 ** 20,
        residentMb: rss / 2 ** 20,
        calls,
      });
    }
    return hours;
  } finally {
    connection.close();
    opened.value.close();
  }
}

/** The time that this share of the times stays under. */
function shareOf(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length * share)] ?? 0;
}

async function workOneHour(window: TestWindow, { edits, recalls, imports, prints }: Density, hour: number) {
  const times: number[] = [];
  const processorTimes: number[] = [];
  let calls = 0;
  const call = async (name: string, input: unknown): Promise<unknown> => {
    calls += 1;
    const reply = await window.call(name, input);
    if (!reply.ok) throw new Error(`${name}: ${reply.problem.what}`);
    return reply.value;
  };
  const every = (count: number, number: number) =>
    count > 0 && number % Math.max(1, Math.floor(edits / count)) === 0;
  for (let number = 0; number < edits; number++) {
    const source = first.sources[number % first.sources.length];
    const act = first.acts[number % first.acts.length];
    if (!source || !act) throw new Error('the festival has acts and sources');
    const started = performance.now();
    const startedUsage = process.cpuUsage();
    await call('show.change', {
      change: {
        label: 'Rename',
        put: [put('sources', { ...source, name: `Line ${hour}.${number}` })],
        remove: [],
      },
    });
    times.push(performance.now() - started);
    const { user, system } = process.cpuUsage(startedUsage);
    processorTimes.push((user + system) / 1000);
    if (number % 10 === 9) await call('show.undo', {});
    const of = { table: 'acts', id: act.id };
    if (every(recalls, number)) {
      const { state } = (await call('states.keep', { of, name: 'Before' })) as { state: { id: string } };
      await call('states.compare', { of, fromId: state.id, toId: null });
      await call('states.restore', { of, stateId: state.id });
    }
    if (every(imports, number)) {
      const { text } = (await call('exchange.export', { actId: act.id })) as { text: string };
      await call('exchange.import', { text, way: { how: 'beside', dayId: act.dayId } });
      await call('show.undo', {});
      const rider = Buffer.from('ch;source;mic\n1;Kick;dyn\n2;Snare;dyn\n3;Hat;cond\n').toString('base64');
      await call('rider.grid', { fileName: 'rider.csv', base64: rider });
    }
    if (every(prints, number))
      await call('paper.make', {
        request: { jobs: [{ sheet: 'line check', ofId: act.id }], file: 'pdf' },
        keep: true,
      });
  }
  return { times, processorTimes, calls };
}
