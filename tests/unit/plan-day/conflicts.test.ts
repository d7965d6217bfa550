import { expect, test } from 'vitest';
import { findConflict } from '../../../core/plan/day/conflicts.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { type TinyBox, type TinyItem, tinyLayer } from '../../helpers/tiny-layer.ts';

const solve = await loadLinearSolver();

type Case = {
  name: string;
  boxes: TinyBox[];
  acts: number;
  items: TinyItem[];
  spare?: Parameters<typeof tinyLayer>[3];
  /** How many demands the smallest set has, and words that must be told. */
  demands: number;
  words: RegExp[];
};

const box: TinyBox = { name: 'A', slots: 2 };

const cases: Case[] = [
  {
    name: 'three lines for two sockets',
    boxes: [box],
    acts: 1,
    items: ['kick', 'bass', 'keys'].map((name) => ({ act: 0, name })),
    demands: 3,
    words: [/Act 1/, /kick needs a place/, /bass/, /keys/],
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
    demands: 1,
    words: [/harp/, /no box in reach/],
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
    demands: 3,
    words: [/keys needs a pair/, /kick is locked to A1/],
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
      /9 lines need places in A, where there are 8; 5 items of Act 2 are to be patched before the changeover/,
    ],
  },
];

test.each(cases)('why there is no patch: $name', ({ boxes, acts, items, spare, demands, words }) => {
  const conflict = findConflict(tinyLayer(boxes, acts, items, spare), solve);
  expect(conflict?.demands).toHaveLength(demands);
  for (const word of words) expect(conflict?.what).toMatch(word);
  expect(conflict?.todo).not.toBe('');
});

test('where there is a patch, nothing collides', () => {
  expect(findConflict(tinyLayer([box], 1, [{ act: 0, name: 'kick' }]), solve)).toBeNull();
});
