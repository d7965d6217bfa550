import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import type { Question } from '../../../core/rider/reading.ts';
import { viewAct } from '../../../core/sheets/act-view.ts';
import { replyMail } from '../../../core/sheets/reply-mail.ts';
import { Listener, Mix, Performer, Source } from '../../../core/show/act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { type Device, StockItem } from '../../../core/show/rig.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const act = { id: 'asked', dayId: 'day', order: 9, name: 'Lantern Row' };

/** The reply to an act of one vocal with these mixes, where the house has only these devices. */
function bodyOf(
  mixes: Partial<Mix>[],
  devices: readonly string[] = ['wedge1', 'pack1'],
  questions: Question[] = [],
) {
  const festival = smallFestival();
  const first = [...festival.acts.values()][0];
  if (!first) throw new Error('the festival has acts');
  const show = applyChange(festival, {
    label: 'x',
    put: [
      put('acts', { ...first, ...act }),
      put('performers', Performer.parse({ id: 'nell', actId: 'asked', name: 'Nell' })),
      put(
        'sources',
        Source.parse({
          id: 's',
          actId: 'asked',
          order: 0,
          name: 'Vocal',
          kind: 'lead vocal',
          broughtBy: 'band',
        }),
      ),
      ...mixes.map((mix, order) =>
        put('mixes', Mix.parse({ id: `m${order}`, actId: 'asked', order, name: `Mix ${order + 1}`, ...mix })),
      ),
      put('listeners', Listener.parse({ id: 'l', mixId: 'm0', performerId: 'nell' })),
    ],
    remove: [...festival.devices.values()]
      .filter(({ id }: Device) => !devices.includes(id))
      .map(({ id }) => ({ table: 'devices' as const, id })),
  });
  const sheet = actSheet(show, 'asked');
  if (!sheet) throw new Error('the act is there');
  return replyMail({ ...viewAct(sheet, deriveAct(sheet)), questions }).body;
}

describe('the reply to the band says', () => {
  test.each<[what: string, mix: Partial<Mix>, said: string]>([
    ['which device of the house it gives', { deviceKind: 'wedge' }, '1. Nell: wedge. From us: Wedge 1.'],
    ['that the band brings its own', { deviceKind: 'in-ear', ownDevice: true }, 'You bring the device.'],
    ['that a device was not named', {}, 'Please tell us what you hear it through.'],
    [
      'that a mix is made elsewhere',
      { deviceKind: 'in-ear', mixedAt: 'elsewhere' },
      'It is mixed on your own desk.',
    ],
    ['that nothing is free', { deviceKind: 'drum fill' }, 'We have nothing free for it yet.'],
    [
      'that there are fewer than asked',
      { deviceKind: 'wedge', deviceCount: 2 },
      'You asked for 2, we can offer 1.',
    ],
  ])('%s', (_what, mix, said) => expect(bodyOf([mix])).toContain(said));

  test('how many mixes and packs were asked for and are given', () => {
    const body = bodyOf([
      { deviceKind: 'in-ear', format: 'stereo' },
      { deviceKind: 'in-ear', ownDevice: true },
      { deviceKind: 'wedge' },
    ]);
    expect(body).toContain(
      'You asked for 3 mixes, and we give you 3 on the house desk. In-ear packs: 1 asked of us, 1 of ours are put aside for you, 1 of your own.',
    );
  });

  test('what they bring, and every open question with what it is taken for', () => {
    const question: Question = {
      key: 'kind@0:1',
      at: null,
      ask: 'What is "Tin can"?',
      options: [
        { value: 'talkback', label: 'talkback' },
        { value: 'other', label: 'another' },
      ],
      freeText: true,
      guessConfidence: 0.4,
      weight: 9,
    };
    const body = bodyOf([{ deviceKind: 'wedge' }], ['wedge1'], [question]);
    expect(body).toContain('By your rider you bring: line 1 Vocal.');
    expect(body).toContain('1. What is "Tin can"? (we take it to be: talkback)');
    expect(bodyOf([])).toContain('We have no open question.');
  });
});

/** The reply to one vocal that asks for a microphone, where the stock holds these. */
function offerOf(asked: Partial<Source>, stock: [name: string, count: number][], lines = 1): string {
  const festival = smallFestival();
  const first = [...festival.acts.values()][0];
  const rig = [...festival.rigs.values()][0];
  if (!first || !rig) throw new Error('the festival has acts and a rig');
  const show = applyChange(festival, {
    label: 'x',
    put: [
      put('acts', { ...first, ...act }),
      ...Array.from({ length: lines }, (_, order) =>
        put(
          'sources',
          Source.parse({
            id: `s${order}`,
            actId: 'asked',
            order,
            name: `Vocal ${order + 1}`,
            kind: 'vocal',
            pickUp: 'mic',
            ...asked,
          }),
        ),
      ),
      ...stock.map(([name, count], order) =>
        put(
          'stockItems',
          StockItem.parse({ id: `k${order}`, rigId: rig.id, order, kind: 'mic', name, count }),
        ),
      ),
    ],
    remove: [...festival.stockItems.values()].map(({ id }) => ({ table: 'stockItems' as const, id })),
  });
  const sheet = actSheet(show, 'asked');
  if (!sheet) throw new Error('the act is there');
  return replyMail({ ...viewAct(sheet, deriveAct(sheet)), questions: [] }).body;
}

describe('of microphones that were asked for, the reply says', () => {
  test('that the house has them', () => {
    expect(offerOf({ pickUpModel: 'dynamic vocal mic' }, [['Dynamic vocal mic', 4]])).toContain(
      'As you asked: line 1.',
    );
  });

  test('what the house has of the same kind instead', () => {
    expect(offerOf({ pickUpModel: 'large condenser B' }, [['small condenser', 2]])).toContain(
      'Line 1: you asked for “large condenser B”, we offer “small condenser”. Please say if it will not do.',
    );
  });

  test('what the rider itself allows before anything that is only alike', () => {
    const asked = { pickUpModel: 'condenser A', pickUpInstead: 'or condenser B; Ribbon  C' };
    expect(
      offerOf(asked, [
        ['condenser D', 2],
        ['ribbon C', 2],
      ]),
    ).toContain('we offer “ribbon C”, as your rider allows.');
  });

  test('that something alike will do where the rider says "or equivalent"', () => {
    const asked = { pickUpModel: 'large condenser B', pickUpInstead: 'or equivalent' };
    expect(offerOf(asked, [['small condenser', 2]])).toContain(
      'we offer “small condenser”, as your rider allows.',
    );
  });

  test('which line gets the last of them, and what the next one gets', () => {
    const body = offerOf({ pickUpModel: 'clip mic' }, [['clip mic', 1]], 2);
    expect(body).toContain('As you asked: line 1.');
    expect(body).toContain(
      'Line 2: you asked for “clip mic”, which we do not have. What may stand in for it?',
    );
  });

  test('nothing where the stock names no microphones', () => {
    expect(offerOf({ pickUpModel: 'clip mic' }, [])).not.toContain('Microphones and DI boxes');
  });

  test('nothing of what the band brings itself', () => {
    expect(offerOf({ pickUpModel: 'clip mic', broughtBy: 'band' }, [['boundary mic', 2]])).not.toContain(
      'Microphones and DI boxes',
    );
  });
});
