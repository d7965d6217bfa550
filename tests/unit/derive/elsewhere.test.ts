import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { switchAlternates } from '../../../core/plan/switch-alternates.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import type { Show } from '../../../core/show/show.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf, showOf } from '../../helpers/sheet-of.ts';

const derive = (draft: ActDraft) => deriveAct(sheetOf(draft.rows));

describe('alternates', () => {
  const withTracks = () =>
    new ActDraft()
      .add('alternates', { id: 'track 1', sourceId: 'vocal', kind: 'recorded track', name: 'Track 1' })
      .add('alternates', { id: 'track 2', sourceId: 'keys left', kind: 'recorded track', name: 'Track 2' })
      .add('alternates', { id: 'line', sourceId: 'vocal', kind: 'spare line', socketId: 'socket 16' });

  const inputs = (show: Show) => {
    const sheet = actSheet(show, 'act');
    return sheet ? deriveAct(sheet).inputs.map((input) => [input.sourceId, input.from, input.socketId]) : [];
  };
  const switched = (
    show: Show,
    ...args: [Parameters<typeof switchAlternates>[1], Parameters<typeof switchAlternates>[2]]
  ) => {
    const sheet = actSheet(show, 'act');
    return sheet ? applyChange(show, switchAlternates(sheet, ...args)) : show;
  };
  const own = [
    ['vocal', 'own line', 'socket 1'],
    ['spare', 'own line', 'socket 2'],
    ['keys left', 'own line', 'socket 3'],
    ['keys right', 'own line', 'socket 4'],
    ['room', 'own line', 'socket 5'],
  ];

  test('every source is on its own line until somebody switches', () => {
    expect(inputs(showOf(withTracks().rows))).toEqual(own);
  });

  test('all: whatever has a recording plays it, the rest stays', () => {
    expect(inputs(switched(showOf(withTracks().rows), 'all', 'recorded track'))).toEqual([
      ['vocal', 'recorded track', null],
      own[1],
      ['keys left', 'recorded track', null],
      own[3],
      own[4],
    ]);
  });

  test('one: only the vocal goes to its spare line', () => {
    const result = inputs(switched(showOf(withTracks().rows), ['vocal'], 'spare line'));
    expect(result).toEqual([['vocal', 'spare line', 'socket 16'], ...own.slice(1)]);
  });

  test('from one alternate to the other leaves one in use', () => {
    const show = switched(
      switched(showOf(withTracks().rows), 'all', 'recorded track'),
      ['vocal'],
      'spare line',
    );
    expect([...show.alternates.values()].filter((it) => it.inUse).map((it) => it.id)).toEqual([
      'track 2',
      'line',
    ]);
  });

  test('and back: every source is on its own line again', () => {
    const show = switched(switched(showOf(withTracks().rows), 'all', 'recorded track'), 'all', 'own line');
    expect(inputs(show)).toEqual(own);
  });

  test('a switch with nothing to move is no change', () => {
    expect(switchAlternates(sheetOf(withTracks().rows), 'all', 'second desk').put).toEqual([]);
  });

  test('copies, mixes and levels stay as they are: only what they hear changes', () => {
    const before = derive(withTracks());
    const after = derive(withTracks().set('alternates', 'track 1', { inUse: true }));
    expect(after.feeds).toEqual(before.feeds);
    expect(after.inputs[0]?.why).toContain('"Track 1"');
  });
});

describe('mixes from another desk', () => {
  const elsewhere = () => new ActDraft().set('mixes', 'Tam ears', { mixedAt: 'elsewhere' });

  test('the band is owed a split of what its mix asks for', () => {
    expect(derive(elsewhere()).splits.map((split) => split.sourceId)).toEqual([
      'vocal',
      'spare',
      'keys left',
      'keys right',
      'room',
    ]);
  });

  test('without a wish it is owed a split of everything', () => {
    const draft = elsewhere().keepFirst('wishes', 2);
    expect(derive(draft).splits.length).toBe(5);
  });

  test('without such a mix nothing is owed', () => {
    expect(derive(new ActDraft()).splits).toEqual([]);
  });

  test('it takes no bus, and leaves at an output of the house for a pack of the house', () => {
    const planned = derive(elsewhere()).plan.mixes[1];
    expect([planned?.busIds, planned?.outputIds.length, planned?.deviceIds]).toEqual([[], 2, ['pack 1']]);
  });

  test('with the band’s own pack it takes no output of the house either', () => {
    const planned = derive(elsewhere().set('mixes', 'Tam ears', { ownDevice: true })).plan.mixes[1];
    expect([planned?.busIds, planned?.outputIds, planned?.deviceIds]).toEqual([[], [], []]);
  });
});

describe('talkback', () => {
  test('the engineer reaches the mix under check on this desk, and no other desk', () => {
    const draft = new ActDraft().set('mixes', 'Tam ears', { mixedAt: 'elsewhere' });
    expect(derive(draft).talk.map((talk) => talk.engineerReaches)).toEqual([true, false]);
  });

  test('a talk microphone of the band reaches the mixes that ask for it', () => {
    const draft = new ActDraft()
      .add('sources', { id: 'talk', kind: 'talkback', audience: 'monitors only' })
      .add('wishes', { mixId: 'Tam ears', sourceId: 'talk', amount: 'some' });
    expect(derive(draft).talk.map((talk) => talk.talkSourceIds)).toEqual([[], ['talk']]);
  });
});
