import { describe, expect, test } from 'vitest';
import { delayMs } from '../../../core/acoustics/delay.ts';
import { cueChange } from '../../../core/derive/cue-change.ts';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { casesOfKind, num } from '../../helpers/reference.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

const derive = (draft: ActDraft) => deriveAct(sheetOf(draft.rows));
const cueOf = (draft: ActDraft, mixId: string) => derive(draft).cues.find((cue) => cue.mixId === mixId);

describe('where the engineer hears a mix', () => {
  test.each<[string, (act: ActDraft) => unknown, string, Record<string, unknown>]>([
    ['in-ears on the cue pack', () => undefined, 'Tam ears', { cueOutputId: 'cue pack' }],
    ['wedges on the cue wedge', () => undefined, 'Noor wedge', { cueOutputId: 'cue wedge' }],
    [
      'a drum fill on the cue wedge',
      (act) => act.set('mixes', 'Noor wedge', { deviceKind: 'drum fill' }),
      'Noor wedge',
      { cueOutputId: 'cue wedge' },
    ],
    ['stereo in-ears in stereo', () => undefined, 'Tam ears', { format: 'stereo' }],
    [
      'mono in-ears in mono',
      (act) => act.set('mixes', 'Tam ears', { format: 'mono' }),
      'Tam ears',
      { format: 'mono' },
    ],
    [
      'stereo in-ears in mono on a mono cue pack',
      (act) => act.set('cueOutputs', 'cue pack', { format: 'mono' }),
      'Tam ears',
      { format: 'mono' },
    ],
    [
      'in-ears on the cue wedge where there is no cue pack',
      (act) => act.remove('cueOutputs', 'cue pack'),
      'Tam ears',
      { cueOutputId: 'cue wedge' },
    ],
    [
      'wedges on the cue pack where there is no cue wedge',
      (act) => act.remove('cueOutputs', 'cue wedge'),
      'Noor wedge',
      { cueOutputId: 'cue pack', delayMs: null },
    ],
    [
      'nowhere where the rig has no cue',
      (act) => act.keepFirst('cueOutputs', 0),
      'Noor wedge',
      { cueOutputId: null, offsetDb: null, delayMs: null },
    ],
    [
      'where it was decided',
      (act) => act.add('decisions', { about: 'cue', mixId: 'Noor wedge', cueOutputId: 'cue pack' }),
      'Noor wedge',
      { cueOutputId: 'cue pack', decided: true },
    ],
  ])('%s', (_, edit, mixId, expected) => {
    const draft = new ActDraft();
    edit(draft);
    expect(cueOf(draft, mixId)).toMatchObject(expected);
  });
});

describe('how loud the cue is against the mix', () => {
  /** The level that a loudspeaker makes, read off the offset against a pack of 0 dB less. */
  test.each(casesOfKind('level-sums', 'loudspeaker-level'))(
    'a wedge of $in.sensitivity_dB_1W_1m dB with $in.watts W at $in.metres m is matched by a pack of $out.dB dB ($from)',
    (row) => {
      const draft = new ActDraft()
        .set('devices', 'wedge 1', {
          sensitivityDbSpl: num(row.in, 'sensitivity_dB_1W_1m'),
          powerW: num(row.in, 'watts'),
          listeningDistanceM: num(row.in, 'metres'),
        })
        .set('devices', 'engineer pack', { sensitivityDbSpl: num(row.out, 'dB') })
        .add('decisions', { about: 'cue', mixId: 'Noor wedge', cueOutputId: 'cue pack' });
      expect(Math.abs(cueOf(draft, 'Noor wedge')?.offsetDb ?? 99)).toBeLessThanOrEqual(
        'tol' in row ? num(row, 'tol') : 5e-5,
      );
    },
  );

  test('two wedges on one mix are 3 dB louder than one', () => {
    const one = cueOf(new ActDraft(), 'Noor wedge')?.offsetDb ?? 0;
    const two =
      cueOf(new ActDraft().set('mixes', 'Noor wedge', { deviceCount: 2 }), 'Noor wedge')?.offsetDb ?? 0;
    expect(two - one).toBeCloseTo(3.0103, 4);
  });

  test('two packs on one mix are no louder than one: each has its own listener', () => {
    expect(cueOf(new ActDraft().set('mixes', 'Tam ears', { deviceCount: 2 }), 'Tam ears')?.offsetDb).toBe(0);
  });

  test.each(['sensitivityDbSpl', 'powerW', 'listeningDistanceM'])(
    'without %s of the wedge nobody knows',
    (figure) => {
      expect(
        cueOf(new ActDraft().set('devices', 'wedge 1', { [figure]: null }), 'Noor wedge')?.offsetDb,
      ).toBeNull();
    },
  );
});

describe('how late the cue wedge is', () => {
  test.each(casesOfKind('sound-speed-and-delay', 'delay'))(
    'at $in.metres m and $in.celsius C it waits $out.ms ms ($from)',
    (row) => {
      const draft = new ActDraft()
        .rig({ airTemperatureC: num(row.in, 'celsius') })
        .set('cueOutputs', 'cue wedge', { distanceFromStageM: num(row.in, 'metres') });
      expect(cueOf(draft, 'Noor wedge')?.delayMs).toBeCloseTo(num(row.out, 'ms'), 2);
    },
  );

  // The middle of a stage 8 m deep is 4 m upstage; a right triangle of 3, 4 and 5 (Euclid).
  test('where nobody measured the way, the place on the plot gives it; a measured way counts before it', () => {
    const placed = new ActDraft()
      .rig({ airTemperatureC: 20, stageDepthM: 8, cueXM: 3, cueYM: 0 })
      .set('cueOutputs', 'cue wedge', { distanceFromStageM: null });
    expect(cueOf(placed, 'Noor wedge')?.delayMs).toBeCloseTo(delayMs(5, 20), 9);
    const measured = placed.set('cueOutputs', 'cue wedge', { distanceFromStageM: 9 });
    expect(cueOf(measured, 'Noor wedge')?.delayMs).toBeCloseTo(delayMs(9, 20), 9);
  });

  test('a cue pack is heard as it is', () => {
    expect(cueOf(new ActDraft(), 'Tam ears')?.delayMs).toBeNull();
  });
});

describe('from one mix under check to the next', () => {
  const change = (draft: ActDraft, from: string, to: string) => {
    const sheet = sheetOf(draft.rows);
    return cueChange(sheet, deriveAct(sheet), from, to);
  };

  test('from in-ears to a wedge the cue pack falls silent and the cue wedge takes over', () => {
    expect(change(new ActDraft(), 'Tam ears', 'Noor wedge')).toMatchObject({
      silentCueOutputId: 'cue pack',
      nextCueOutputId: 'cue wedge',
      formatChanges: true,
      talkReaches: true,
      levelMovesByDb: null,
    });
  });

  test('and back the cue wedge falls silent', () => {
    expect(change(new ActDraft(), 'Noor wedge', 'Tam ears')).toMatchObject({
      silentCueOutputId: 'cue wedge',
      nextCueOutputId: 'cue pack',
      delayMs: null,
    });
  });

  test('between two wedges the same cue goes on, and only its level moves', () => {
    const draft = new ActDraft()
      .add('mixes', { id: 'second', deviceKind: 'wedge', format: 'mono', xM: 2, yM: 1 })
      .set('devices', 'wedge 2', { sensitivityDbSpl: 95 });
    const moved = change(draft, 'Noor wedge', 'second');
    expect(moved).toMatchObject({
      silentCueOutputId: null,
      nextCueOutputId: 'cue wedge',
      formatChanges: false,
    });
    expect(moved?.levelMovesByDb).toBeCloseTo(-3, 6);
  });

  test('a mix of the band’s own desk is not reached by the talk microphone', () => {
    const draft = new ActDraft().set('mixes', 'Tam ears', { mixedAt: 'elsewhere' });
    expect(change(draft, 'Noor wedge', 'Tam ears')).toMatchObject({ talkReaches: false });
  });

  test('a mix that is not in the act has no cue', () => {
    expect(change(new ActDraft(), 'Noor wedge', 'nobody')).toBeNull();
  });
});
