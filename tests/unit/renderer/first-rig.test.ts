import { expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { Act, Listener, Mix, Performer, Source, Wish } from '../../../core/show/act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { emptyShow } from '../../../core/show/show.ts';
import { firstRig } from '../../../renderer/rig/first-rig.ts';

const show = applyChange(emptyShow(), firstRig());

test('the small rig of the first start holds together', () => {
  expect(findBrokenReferences(show)).toEqual([]);
});

test.each(['wedge', 'in-ear'] as const)(
  'a singer with a %s gets a device and is heard by the engineer on it',
  (deviceKind) => {
    const dayId = [...show.days.keys()][0] ?? '';
    const played = applyChange(show, {
      label: 'Act',
      remove: [],
      put: [
        put('acts', Act.parse({ id: 'act', dayId, order: 0, name: 'Quiet Harbour' })),
        put('performers', Performer.parse({ id: 'ada', actId: 'act', order: 0, name: 'Ada' })),
        put(
          'sources',
          Source.parse({
            id: 'vocal',
            actId: 'act',
            order: 0,
            name: 'Vocal',
            kind: 'lead vocal',
            performerId: 'ada',
          }),
        ),
        put('mixes', Mix.parse({ id: 'mix', actId: 'act', order: 0, name: 'Mix 1', deviceKind })),
        put('listeners', Listener.parse({ id: 'listens', mixId: 'mix', performerId: 'ada' })),
        put('wishes', Wish.parse({ id: 'wish', mixId: 'mix', sourceId: 'vocal', order: 0, amount: 'lots' })),
      ],
    });
    const sheet = actSheet(played, 'act');
    if (!sheet) throw new Error('the act was just put');
    const { plan, cues, findings } = deriveAct(sheet);
    const [mix] = plan.mixes;
    // A stereo mix leaves on two outputs.
    expect([mix?.deviceIds.length, mix?.outputIds.length]).toEqual([1, deviceKind === 'in-ear' ? 2 : 1]);
    const cue = sheet.cueOutputs.find(({ id }) => id === cues[0]?.cueOutputId);
    expect(cue?.kind).toBe(deviceKind);
    expect(findings.filter(({ severity }) => severity === 'must fix')).toEqual([]);
  },
);
