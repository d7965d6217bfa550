import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareReadings } from '../../../core/rider/again/compare-readings.ts';
import { mergeReading } from '../../../core/rider/again/merge-reading.ts';
import { takeConsequences } from '../../../core/rider/again/take-consequences.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { Act, Day } from '../../../core/show/act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { Rig } from '../../../core/show/rig.ts';
import { type Show, showFromRows } from '../../../core/show/show.ts';

const sources = [
  'Kick',
  'Snare top',
  'Hi-hat',
  'Bass',
  'Keys L',
  'Keys R',
  'Violin',
  'Accordion',
  'Lead vocal',
];
const players = ['Nell', 'Bram', 'Ines', ''];
const line = fc.record({
  name: fc.constantFrom(...sources),
  pickUp: fc.constantFrom('mic', 'DI', ''),
  player: fc.constantFrom(...players),
});
const mix = fc.record({
  player: fc.constantFrom('Nell', 'Bram', 'Ines'),
  device: fc.constantFrom('wedge', 'in-ears stereo'),
  wish: fc.constantFrom('kick lots', 'bass some, violin little', 'lead vocal lots'),
});
/** Sources and mixes by name once each: two lines of one name may be told apart either way. */
const rider = fc
  .record({
    lines: fc.uniqueArray(line, { selector: ({ name }) => name, minLength: 1, maxLength: 8 }),
    mixes: fc.uniqueArray(mix, { selector: ({ player }) => player, maxLength: 3 }),
  })
  .map(({ lines, mixes }) =>
    readRider({
      name: 'rider',
      form: 'csv',
      sheets: [
        {
          name: 'Rider',
          rows: [
            ['Ch', 'Source', 'Mic / DI', 'Player'],
            ...lines.map((it, at) => [`${at + 1}`, it.name, it.pickUp, it.player]),
            ...mixes.map((it, at) => [`Mix ${at + 1}`, it.player, it.device, it.wish]),
          ],
        },
      ],
    }),
  );

let made = 0;
const newId = () => `new ${made++}`;
const sheetOf = (show: Show) => {
  const sheet = actSheet(show, 'act');
  if (!sheet) throw new Error('the act is there');
  return sheet;
};
const emptyAct = showFromRows({
  rigs: [Rig.parse({ id: 'rig', name: 'House', channelCount: 32 })],
  days: [Day.parse({ id: 'day', rigId: 'rig', name: 'Day' })],
  acts: [Act.parse({ id: 'act', dayId: 'day', order: 0, name: 'Act' })],
});
const actFrom = (reading: ReturnType<typeof readRider>) =>
  applyChange(emptyAct, { label: 'x', ...mergeReading(sheetOf(emptyAct), null, reading, newId) });

/** What an act holds, without ids and places: names in place of references. */
function held(show: Show) {
  const sheet = sheetOf(show);
  const nameById = new Map(
    [...sheet.performers, ...sheet.sources, ...sheet.mixes].map(({ id, name }) => [id, name] as const),
  );
  const name = (id: string | null) => (id === null ? null : (nameById.get(id) ?? 'nothing'));
  return {
    sources: sheet.sources
      .map((it) =>
        [
          it.riderLine,
          it.name,
          it.kind,
          it.pickUp,
          name(it.pairSourceId),
          name(it.performerId),
          it.notes,
        ].join('|'),
      )
      .sort(),
    mixes: sheet.mixes.map((it) => [it.name, it.deviceKind, it.format, it.deviceCount].join('|')).sort(),
    listeners: sheet.listeners.map((it) => [name(it.mixId), name(it.performerId)].join('|')).sort(),
    wishes: sheet.wishes
      .map((it) =>
        [name(it.mixId), name(it.sourceId), it.group, name(it.sameAsMixId), it.amount, it.levelDb].join('|'),
      )
      .sort(),
  };
}

describe('whatever two versions of a rider say', () => {
  test('taking nothing writes nothing', () => {
    fc.assert(
      fc.property(rider, rider, (before, after) => {
        const sheet = sheetOf(actFrom(before));
        const { consequences } = compareReadings(sheet, before, after, newId);
        expect(takeConsequences(sheet, consequences, new Set())).toEqual({ put: [], remove: [] });
      }),
      { numRuns: 60 },
    );
  });

  test('taking all where the engineer decided nothing makes the act of the later one', () => {
    fc.assert(
      fc.property(rider, rider, (before, after) => {
        const show = actFrom(before);
        const { consequences } = compareReadings(sheetOf(show), before, after, newId);
        expect(consequences.filter(({ overwrites }) => overwrites)).toEqual([]);
        const all = new Set(consequences.map(({ key }) => key));
        const taken = applyChange(show, {
          label: 'x',
          ...takeConsequences(sheetOf(show), consequences, all),
        });
        expect(held(taken)).toEqual(held(actFrom(after)));
      }),
      { numRuns: 60 },
    );
  });

  test('taking some leaves no reference to nothing', () => {
    fc.assert(
      fc.property(rider, rider, fc.infiniteStream(fc.boolean()), (before, after, coins) => {
        const show = actFrom(before);
        const { consequences } = compareReadings(sheetOf(show), before, after, newId);
        const some = consequences.filter(() => coins.next().value === true).map(({ key }) => key);
        const taken = applyChange(show, {
          label: 'x',
          ...takeConsequences(sheetOf(show), consequences, new Set(some)),
        });
        expect(findBrokenReferences(taken)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
