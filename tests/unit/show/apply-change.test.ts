import { describe, expect, test } from 'vitest';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { Change, put } from '../../../core/show/change.ts';
import { documentFromShow, emptyShow, ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { smallShow } from '../../helpers/small-show.ts';

const remove = (table: Change['remove'][number]['table'], id: string): Change => ({
  label: 'Remove',
  put: [],
  remove: [{ table, id }],
});

describe('a change to a show', () => {
  test('puts a row and leaves the show it was given as it was', () => {
    const before = smallShow();
    const act = before.acts.get('act');
    if (!act) throw new Error('the small show has an act');
    const after = applyChange(before, {
      label: 'Rename',
      put: [put('acts', { ...act, name: 'Tin Lanterns' })],
      remove: [],
    });
    expect(after.acts.get('act')?.name).toBe('Tin Lanterns');
    expect(before.acts.get('act')?.name).toBe('Paper Herons');
    expect(after.sources, 'a table nobody touched is shared').toBe(before.sources);
  });

  test.each([
    { gone: 'rigs', id: 'rig', left: [] },
    { gone: 'acts', id: 'act', left: ['rigs', 'boxes', 'sockets', 'days'] },
    { gone: 'mixes', id: 'mix', left: ['rigs', 'boxes', 'sockets', 'days', 'acts', 'performers', 'sources'] },
  ] as const)('removing from $gone removes all that hangs on it and nothing else', ({ gone, id, left }) => {
    const after = applyChange(smallShow(), remove(gone, id));
    const filled = Object.entries(after).filter(([, rows]) => rows.size > 0);
    expect(filled.map(([table]) => table)).toEqual(left);
    expect(findBrokenReferences(after)).toEqual([]);
  });

  test('removing a performer leaves their source, without a performer', () => {
    const after = applyChange(smallShow(), remove('performers', 'noor'));
    expect(after.sources.get('vocal')?.performerId).toBeNull();
    expect(after.listeners.size).toBe(0);
  });

  test('removing one side of a pair leaves the other as a single', () => {
    const after = applyChange(smallShow(), remove('sources', 'keys-left'));
    expect(after.sources.get('keys-right')?.pairSourceId).toBeNull();
  });

  test('removing what is not there changes nothing', () => {
    const before = smallShow();
    expect(documentFromShow(applyChange(before, remove('acts', 'nobody')))).toEqual(documentFromShow(before));
  });
});

describe('references that name nothing', () => {
  test('are found with their table, row and field', () => {
    const rows = documentFromShow(smallShow());
    const show = showFromRows({ ...rows, performers: [] });
    expect(findBrokenReferences(show)).toEqual([
      { table: 'sources', id: 'vocal', field: 'performerId', to: 'performers', missing: 'noor' },
      { table: 'listeners', id: 'listener', field: 'performerId', to: 'performers', missing: 'noor' },
    ]);
  });
});

describe('a show as a document', () => {
  test('comes back as the same show', () => {
    const document = documentFromShow(smallShow());
    expect(documentFromShow(showFromRows(ShowDocument.parse(JSON.parse(JSON.stringify(document)))))).toEqual(
      document,
    );
  });

  test('may leave out every table and every field that has a default', () => {
    const parsed = ShowDocument.parse({
      format: 'foldbook-show',
      version: 1,
      rigs: [{ id: 'r', name: 'House', channelCount: 48 }],
    });
    expect(parsed.rigs[0]?.headroomDb).toBe(9);
    expect(documentFromShow(emptyShow()).acts).toEqual([]);
  });

  test.each([
    { wrong: 'a field nobody knows', rig: { id: 'r', name: 'House', channelCount: 48, colour: 'red' } },
    { wrong: 'a start level above unity', rig: { id: 'r', name: 'House', channelCount: 48, lotsDb: 3 } },
    { wrong: 'a channel count that is no number', rig: { id: 'r', name: 'House', channelCount: 'many' } },
  ])('is refused with $wrong', ({ rig }) => {
    expect(ShowDocument.safeParse({ format: 'foldbook-show', version: 1, rigs: [rig] }).success).toBe(false);
  });
});

describe('a wish', () => {
  const wish = { id: 'w', mixId: 'mix' };
  test.each([
    { says: 'a source and an amount', row: { ...wish, sourceId: 's', amount: 'lots' }, fine: true },
    { says: 'a group and a level', row: { ...wish, group: 'drums', levelDb: -3 }, fine: true },
    { says: 'another mix and no amount', row: { ...wish, sameAsMixId: 'm' }, fine: true },
    { says: 'nothing to hear', row: { ...wish, amount: 'lots' }, fine: false },
    {
      says: 'two things to hear',
      row: { ...wish, sourceId: 's', group: 'drums', amount: 'lots' },
      fine: false,
    },
    { says: 'neither an amount nor a level', row: { ...wish, sourceId: 's' }, fine: false },
    {
      says: 'both an amount and a level',
      row: { ...wish, sourceId: 's', amount: 'lots', levelDb: 0 },
      fine: false,
    },
  ])('that gives $says is accepted: $fine', ({ row, fine }) => {
    const change = { label: 'Wish', put: [{ table: 'wishes', row }], remove: [] };
    expect(Change.safeParse(change).success).toBe(fine);
  });
});
