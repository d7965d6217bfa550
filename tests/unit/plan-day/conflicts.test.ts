import { expect, test } from 'vitest';
import { findConflict } from '../../../core/plan/day/conflicts.ts';
import { smallestColliding } from '../../../core/plan/day/smallest-conflict.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { type TinyBox, type TinyDay, tinyLayer } from '../../helpers/tiny-layer.ts';

const solve = await loadLinearSolver();

type Case = TinyDay & {
  name: string;
  /** How many demands the smallest set has, and words that must be told. */
  demands: number;
  words: RegExp[];
  /** Sockets of the first box that the engineer holds back. */
  heldBack?: string[];
  others?: RegExp[];
};

const box: TinyBox = { name: 'A', slots: 2 };

const cases: Case[] = [
  {
    name: 'three lines for two sockets',
    boxes: [box],
    acts: 1,
    items: ['kick', 'bass', 'keys'].map((name) => ({ act: 0, name })),
    demands: 3,
    words: [/Act 1/, /kick needs a place/, /bass/, /keys/, /in A there are 2 sockets/],
  },
  {
    name: 'five lines in reach of one small box, while another has room',
    boxes: [
      { name: 'A', slots: 8 },
      { name: 'B', slots: 2 },
    ],
    acts: 1,
    items: [
      ...['horn 1', 'horn 2', 'horn 3'].map((name) => ({ act: 0, name, reach: ['B'] })),
      { act: 0, name: 'kick', reach: ['A'] },
      { act: 0, name: 'bass' },
    ],
    demands: 6,
    words: [/horn 1 reaches only B/, /horn 2/, /horn 3/, /in B there are 2 sockets/],
  },
  {
    name: 'a line too many only because a socket is held back',
    boxes: [box],
    acts: 1,
    items: ['kick', 'bass', 'keys'].map((name) => ({ act: 0, name })),
    heldBack: ['A3', 'A4'],
    demands: 4,
    words: [/A3, A4 kept for talkback/, /kick needs a place/],
  },
  {
    name: 'many lines too many, and two locks on one socket: the locks are the smaller set',
    boxes: [{ name: 'A', slots: 8 }],
    acts: 1,
    items: [
      ...Array.from({ length: 8 }, (_, index) => ({ act: 0, name: `line ${index}` })),
      { act: 0, name: 'kick', lock: 'A2' },
      { act: 0, name: 'bass', lock: 'A2' },
    ],
    demands: 4,
    words: [/kick is locked to A2; bass is locked to A2/],
  },
  {
    name: 'a smaller set in a later act goes before a large one in the first',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 2,
    items: [
      ...Array.from({ length: 5 }, (_, index) => ({ act: 0, name: `line ${index}` })),
      { act: 1, name: 'harp', reach: [] },
    ],
    demands: 2,
    words: [/^Act 2: .*harp has no box in reach/],
    others: [/^Act 1: .*line 4 needs a place; in A there are 4 sockets/],
  },
  {
    name: 'two locks on one socket',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 1,
    items: [
      { act: 0, name: 'kick', lock: 'A2' },
      { act: 0, name: 'bass', lock: 'A2' },
      { act: 0, name: 'keys' },
    ],
    demands: 4,
    words: [/kick is locked to A2/, /bass is locked to A2/],
  },
  {
    name: 'a line that no box reaches',
    boxes: [box],
    acts: 1,
    items: [
      { act: 0, name: 'harp', reach: [] },
      { act: 0, name: 'bass' },
    ],
    demands: 2,
    words: [/harp has no box in reach/],
  },
  {
    name: 'a riser to be patched early on the socket that still plays',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 2,
    items: [
      { act: 0, name: 'bass', lock: 'A1' },
      { act: 1, name: 'kick', lock: 'A1', ready: true },
      { act: 1, name: 'keys' },
    ],
    demands: 5,
    words: [/Act 1 and Act 2/, /kick is to be patched before the changeover/, /locked to A1/],
  },
  {
    name: 'a ribbon and a condenser on the only bank',
    boxes: [{ name: 'A', slots: 4, bankSize: 4 }],
    acts: 1,
    items: [
      { act: 0, name: 'ribbon', phantom: 'off' },
      { act: 0, name: 'overhead', phantom: 'on' },
    ],
    demands: 4,
    words: [/48 V would harm ribbon/, /overhead needs 48 V/],
  },
  {
    name: 'no socket left for the spare vocal',
    boxes: [box],
    acts: 1,
    items: [
      { act: 0, name: 'vocal' },
      { act: 0, name: 'guitar' },
    ],
    spare: { 0: { count: 1, boxes: ['A'] } },
    demands: 3,
    words: [/spare line near the lead vocal/],
  },
  {
    name: 'a pair and a single that spoils the only pair of sockets',
    boxes: [{ name: 'A', slots: 3 }],
    acts: 1,
    items: [
      { act: 0, name: 'kick', lock: 'A1' },
      { act: 0, name: 'keys', pair: true },
    ],
    demands: 4,
    words: [/keys want them side by side/, /kick is locked to A1/],
  },
  {
    name: 'more early lines than there is room beside the act that plays',
    boxes: [{ name: 'A', slots: 8 }],
    acts: 2,
    items: [
      ...Array.from({ length: 4 }, (_, index) => ({ act: 0, name: `line ${index}` })),
      ...Array.from({ length: 5 }, (_, index) => ({ act: 1, name: `early ${index}`, ready: true as const })),
    ],
    demands: 14,
    words: [
      /^Act 1 and Act 2: /,
      /9 lines need places; in A there are 8 sockets; 5 items of Act 2 are to be patched before the changeover/,
    ],
  },
];

test.each(cases)('why there is no patch: $name', (given) => {
  const layer = tinyLayer(given.boxes, given.acts, given.items, given.spare);
  const first = given.boxes[0]?.slots ?? 0;
  layer.heldBack = (given.heldBack ?? []).map((name, place) => ({
    slot: { group: 0, id: name, number: first + place + 1, name, bank: 900 + place, pairedWith: -1 },
    reservedFor: 'talkback',
  }));
  const conflict = findConflict(layer, solve);
  expect(conflict?.demands.map((it) => it.what)).toHaveLength(given.demands);
  expect(conflict?.isSmallest).toBe(true);
  for (const word of given.words) expect(conflict?.what).toMatch(word);
  expect(conflict?.todo).not.toBe('');
  expect(conflict?.others).toHaveLength(given.others?.length ?? 0);
  given.others?.forEach((word, at) => {
    expect(conflict?.others[at]).toMatch(word);
  });
});

test('where there is a patch, nothing collides', () => {
  expect(findConflict(tinyLayer([box], 1, [{ act: 0, name: 'kick' }]), solve)).toBeNull();
});

/**
 * Sets that collide when all of a list's members are taken: known smallest sets. The second is the usual example of
 * a set in which each member is needed and which is not the smallest (Liffiton and Sakallah, "Algorithms for
 * computing minimal unsatisfiable subsets of constraints", 2008, from memory: overlapping cores).
 */
test.each([
  { name: 'one of three', cores: [[0, 1, 2]], of: 6, fewest: 3 },
  {
    name: 'a pair hidden behind larger sets',
    cores: [
      [0, 1, 2, 3],
      [2, 4, 5],
      [5, 6],
    ],
    of: 9,
    fewest: 2,
  },
  { name: 'one member that can never be had', cores: [[0, 1], [7]], of: 8, fewest: 1 },
  {
    name: 'overlapping sets of one size',
    cores: [
      [0, 1, 2],
      [1, 2, 3],
      [2, 3, 4],
    ],
    of: 5,
    fewest: 3,
  },
])('the smallest colliding set: $name', ({ cores, of, fewest }) => {
  const all = Array.from({ length: of }, (_, member) => member);
  const isPossible = (kept: readonly number[]) =>
    !cores.some((core) => core.every((it) => kept.includes(it)));
  const found = smallestColliding(all, isPossible, solve);
  expect(found?.members).toHaveLength(fewest);
  expect(found?.isSmallest).toBe(true);
  expect(isPossible(found?.members ?? [])).toBe(false);
});

test('a list of which all can be had has no colliding set', () => {
  expect(smallestColliding([1, 2], () => true, solve)).toBeNull();
});
