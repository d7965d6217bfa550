import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { documentFromShow, ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { mendShow } from '../../../electron/command-line/mended-show.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { showOf } from '../../helpers/sheet-of.ts';

const document = documentFromShow(showOf(new ActDraft().rows));

describe('a show that was edited by hand: each fault is named, and the rest is used', () => {
  test.each<[string, object, RegExp]>([
    [
      'a number out of range that the rig cannot do without is held at its end',
      { rigs: [{ ...document.rigs[0], channelCount: -1 }] },
      /^rigs, row 1 \(rig\), channelCount: .* held at the end of the range/,
    ],
    [
      'a number out of range that may be unknown is passed over',
      { sources: [{ ...document.sources[0], gainDb: 9999 }, ...document.sources.slice(1)] },
      /^sources, row 1 \(.*\), gainDb: .* passed over/,
    ],
    [
      'a figure so small that nothing could be computed from it is passed over',
      { devices: [{ ...document.devices[0], listeningDistanceM: 1e-300 }, ...document.devices.slice(1)] },
      /^devices, row 1 \(.*\), listeningDistanceM: .* passed over/,
    ],
    [
      'a word that is none of the list is passed over',
      { mixes: [{ ...document.mixes[0], deviceKind: 'horn' }, ...document.mixes.slice(1)] },
      /^mixes, row 1 \(Noor wedge\), deviceKind: .* passed over/,
    ],
    [
      'a text where a number belongs is passed over',
      { sources: [{ ...document.sources[0], xM: 'NaN' }, ...document.sources.slice(1)] },
      /^sources, row 1 \(.*\), xM: .* passed over/,
    ],
    [
      'a field that nobody knows is passed over',
      { sources: [{ ...document.sources[0], colour: 'red' }, ...document.sources.slice(1)] },
      /^sources, row 1 \(.*\), the whole row: .*colour.* passed over/,
    ],
    [
      'a row that asks for nothing is left out',
      { wishes: [{ id: 'w', mixId: 'Tam ears', amount: 'some' }, ...document.wishes] },
      /^wishes, row 1 \(w\), the whole row: .* left out/,
    ],
    [
      'a row that is none is left out',
      { wishes: [null, ...document.wishes] },
      /^wishes, row 1, the whole row: .* left out/,
    ],
    ['a table that is no list is passed over', { wishes: { a: 1 } }, /^wishes is no list of rows/],
    ['a table that nobody knows is passed over', { lamps: [] }, /no “lamps”/],
  ])('%s', (_, edit, says) => {
    const mended = mendShow({ ...document, ...edit });
    expect(mended?.problems.map((problem) => problem.what)).toEqual([expect.stringMatching(says)]);
    expect(ShowDocument.safeParse(mended?.document).success).toBe(true);
    const sheet = mended && actSheet(showFromRows(mended.document), 'act');
    expect(sheet && deriveAct(sheet).plan.copies.length).toBeTruthy();
  });

  test('a show without faults is taken as it is', () => {
    expect(mendShow(document)).toEqual({ document, problems: [] });
  });

  test.each([[null], ['show'], [42], [[]], [{}], [{ format: 'foldbook-show', version: 99 }]])(
    '%j is no show',
    (json) => {
      expect(mendShow(json)).toBeNull();
    },
  );
});
