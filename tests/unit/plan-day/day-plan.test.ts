import { expect, test } from 'vitest';
import { buildLineLayer } from '../../../core/plan/day/build-line-layer.ts';
import { changeFromDayPlan } from '../../../core/plan/day/change-from-day-plan.ts';
import { planDay } from '../../../core/plan/day/day-plan.ts';
import { planAct } from '../../../core/plan/plan-act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { Change } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { festivalDay, withFields } from '../../helpers/festival-day.ts';

const solve = await loadLinearSolver();

const newIds = () => {
  let count = 0;
  return () => `new ${count++}`;
};

function taken(show: Show): Show {
  return applyChange(show, changeFromDayPlan(show, planDay(show, 'day', { solve }), newIds()));
}

function socketOf(show: Show, actId: string, sourceId: string): string | null | undefined {
  const sheet = actSheet(show, actId);
  return sheet && planAct(sheet).patches.find((it) => it.sourceId === sourceId)?.socketId;
}

test('the house kick stays in its socket, and everything else goes where nobody plays: nothing waits for the changeover', () => {
  const plan = planDay(festivalDay(), 'day', { solve });
  const { evaluation, proof } = plan.layers.sockets;
  expect(proof).toBe('proven minimal');
  expect(evaluation.broken).toEqual([]);
  expect(evaluation.beforeAct.map(({ kept, cold, hot }) => ({ kept, cold, hot }))).toEqual([
    { kept: 0, cold: 3, hot: 0 },
    { kept: 1, cold: 3, hot: 0 },
  ]);
});

test('the same role keeps its channel, bus and output over the day', () => {
  const { channels, buses, outputs } = planDay(festivalDay(), 'day', { solve }).layers;
  for (const { layer, plan, proof } of [channels, buses, outputs]) {
    expect(proof).toBe('proven minimal');
    const slotsOfKey = Map.groupBy(layer.items.keys(), (index) => layer.items[index]?.key);
    for (const indexes of slotsOfKey.values())
      expect(new Set(indexes.map((it) => plan.assignment[it])).size).toBe(1);
  }
});

test('channels come in the usual order: kick, bass, keys, vocals', () => {
  const { layer, plan } = planDay(festivalDay(), 'day', { solve }).layers.channels;
  const channelOf = (name: string) => {
    const index = layer.items.findIndex((it) => it.name === name && it.detail === 'foh');
    return layer.slots[plan.assignment[index] ?? -1]?.number;
  };
  const order = ['Kick', 'Bass', 'Keys L + Keys R', 'Noor'].map(channelOf);
  expect(order).toEqual([...order].sort((a, b) => (a ?? 0) - (b ?? 0)));
  expect((channelOf('Keys L + Keys R') ?? 0) % 2).toBe(1);
});

test('a plan that is taken is what the act then shows, and planning again changes nothing', () => {
  const show = taken(festivalDay());
  const kick = socketOf(show, 'herons', 'h kick');
  expect(kick).not.toBeNull();
  expect(socketOf(show, 'choir', 'c kick')).toBe(kick);
  const again = changeFromDayPlan(show, planDay(show, 'day', { solve, keepUnlessGain: 0 }), newIds());
  expect({ put: again.put, remove: again.remove }).toEqual({ put: [], remove: [] });
});

test('the change of a plan is a change that the database takes', () => {
  const show = festivalDay();
  const change = changeFromDayPlan(show, planDay(show, 'day', { solve }), newIds());
  expect(Change.safeParse(change).success).toBe(true);
});

test('the nearest plan can be taken: of two locks on one socket one is opened, and then the day has a plan', () => {
  const lock = (sourceId: string) => ({
    id: `lock ${sourceId}`,
    actId: 'herons',
    about: 'socket',
    sourceId,
    socketId: 'a3',
    locked: true,
  });
  const show = festivalDay({ decisions: [lock('h kick'), lock('h bass')] });
  expect(planDay(show, 'day', { solve }).layers.sockets.proof).toBe('no plan');
  const after = taken(show);
  const locks = [...after.decisions.values()].filter((it) => it.locked);
  expect(locks).toHaveLength(1);
  expect(planDay(after, 'day', { solve }).layers.sockets.proof).toBe('proven minimal');
});

test('what the nearest plan leaves out loses the socket that a plan before gave it', () => {
  const sockets = ['a', 'b'].map((box) => ({ id: `${box}1`, boxId: box, number: 1 }));
  const before = {
    id: 'd',
    actId: 'choir',
    about: 'socket',
    sourceId: 'c keys l',
    socketId: 'a1',
    locked: false,
  };
  const after = taken(festivalDay({ sockets, decisions: [before] }));
  const subjects = [...after.decisions.values()].flatMap((it) => (it.about === 'socket' ? it.sourceId : []));
  expect(subjects).not.toContain('c keys l');
  expect(new Set(subjects).size).toBe(subjects.length);
});

test('outputs that are held back are among what collides where mixes find no output', () => {
  const outputs = [1, 2].map((number) => ({
    id: `out${number}`,
    rigId: 'rig',
    place: 'desk',
    number,
    name: `Out ${number}`,
    reservedFor: 'side fills',
  }));
  const { conflict } = planDay(festivalDay({ outputs }), 'day', { solve }).layers.outputs;
  expect(conflict?.what).toMatch(/Out 1, Out 2 kept for side fills/);
  expect(conflict?.todo).toMatch(/held back/);
});

test('what the engineer locked is not touched by a plan', () => {
  const lock = {
    id: 'lock',
    actId: 'choir',
    about: 'socket',
    sourceId: 'c voc',
    socketId: 'b4',
    locked: true,
  };
  const show = festivalDay({ decisions: [lock] });
  expect(socketOf(taken(show), 'choir', 'c voc')).toBe('b4');
  expect(taken(show).decisions.get('lock')).toEqual({ ...lock });
});

test('the same day gives the same plan', () => {
  const once = planDay(festivalDay(), 'day', { solve });
  expect(planDay(festivalDay(), 'day', { solve })).toEqual(once);
});

test('progress tells of better patches and never of a worse one', () => {
  const costs: number[] = [];
  planDay(festivalDay(), 'day', { solve, only: ['sockets'], onProgress: ({ cost }) => costs.push(cost) });
  expect(costs.length).toBeGreaterThan(0);
  expect(costs).toEqual([...costs].sort((a, b) => b - a));
});

const plain = festivalDay();
const lock = (sourceId: string, socketId: string) => ({
  id: `lock ${sourceId}`,
  actId: 'choir',
  about: 'socket',
  sourceId,
  socketId,
  locked: true,
});

test.each([
  {
    name: 'a pair that is locked onto no pair of sockets is two lines, and that is said',
    tables: { decisions: [lock('c keys l', 'a2'), lock('c keys r', 'a3')] },
    note: /Keys L and Keys R are a pair, but their locks/,
    items: 7,
  },
  {
    name: 'a shared line that is a pair in one act and single in another is not shared, and that is said',
    tables: { sources: withFields(plain, 'sources', 'c keys l', { sharedLine: 'House kick' }) },
    note: /two sources use the shared line|one line in one act and a pair/,
    items: 6,
  },
  {
    name: 'a lock on a reserved socket holds, for the line it was reserved for',
    tables: {
      sockets: withFields(plain, 'sockets', 'b4', { reservedFor: 'Ada' }),
      decisions: [lock('c voc', 'b4')],
    },
    note: null,
    items: 6,
  },
])('$name', ({ tables, note, items }) => {
  const { layer, notes } = buildLineLayer(festivalDay(tables), 'day');
  expect(layer.items).toHaveLength(items);
  if (note) expect(notes.join(' ')).toMatch(note);
  else expect(notes).toEqual([]);
});

test('what has been played stays where it was, and the rest of the day is planned around it', () => {
  const show = festivalDay({
    acts: withFields(plain, 'acts', 'herons', { state: 'done' }),
    decisions: [
      { id: 'd', actId: 'herons', about: 'socket', sourceId: 'h kick', socketId: 'a3', locked: false },
    ],
  });
  const after = taken(show);
  expect(socketOf(after, 'herons', 'h kick')).toBe('a3');
  expect(socketOf(after, 'choir', 'c kick')).toBe('a3');
});
