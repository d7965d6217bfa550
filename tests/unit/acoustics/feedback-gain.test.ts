import { describe, expect, test } from 'vitest';
import { levelAtDistanceDb } from '../../../core/acoustics/distance-law.ts';
import {
  customaryEquivalentDistanceM,
  feedbackEstimate,
  neededAcousticGainDb,
  openMicrophonesDb,
  potentialAcousticGainDb,
  stabilityMarginDb,
} from '../../../core/acoustics/feedback.ts';
import {
  type FallDb,
  fallInRoomDb,
  fallInRoomOfAbsorptionDb,
  fallInTheOpenDb,
} from '../../../core/acoustics/sound-field.ts';
import { loudestWedgeBeforeFeedback } from '../../../core/acoustics/wedge-before-feedback.ts';
import { type Case, checkReference, decimals, num, printedAndExact } from '../../helpers/reference.ts';

const four = { exactDecimals: 4 };

const pathOf = (row: Case) => ({
  talkerToListenerM: num(row.in, 'D0'),
  microphoneToLoudspeakerM: num(row.in, 'D1'),
  loudspeakerToListenerM: num(row.in, 'D2'),
  talkerToMicrophoneM: num(row.in, 'Ds'),
});

function fallOf(row: Case): FallDb {
  if ('Dc' in row.in) return fallInRoomDb(num(row.in, 'Dc'));
  if ('Q' in row.in)
    return fallInRoomOfAbsorptionDb({
      directivity: num(row.in, 'Q'),
      surfaceM2: num(row.in, 'S'),
      absorption: num(row.in, 'alpha'),
    });
  return fallInTheOpenDb;
}

const conditionsOf = (row: Case) => ({
  openMicrophones: num(row.in, 'NOM'),
  marginDb: num(row.in, 'FSM_dB'),
  fallDb: fallOf(row),
});

const pag = (row: Case) =>
  printedAndExact(row, 'dB', potentialAcousticGainDb(pathOf(row), conditionsOf(row)), four);

checkReference('feedback-gain', {
  pag,
  'pag-in-room': pag,
  'pag-step': (row) => {
    if ('D0' in row.in) {
      const known = { levelDb: num(row.in, 'talker_dB_at_1m'), atM: 1, thenAtM: num(row.in, 'D0') };
      return printedAndExact(row, 'unaided_level_dB', levelAtDistanceDb(known), four);
    }
    const known = {
      levelDb: num(row.in, 'level_at_microphone_dB'),
      atM: num(row.in, 'D1'),
      thenAtM: num(row.in, 'D2'),
    };
    return printedAndExact(row, 'amplified_level_dB', levelAtDistanceDb(known), four);
  },
  // The handbook's g(x) = Dc^2 + x^2 is in the fall: x^2 Dc^2 / g(x) as a ratio.
  'pag-in-room-step': (row) => {
    const x = num(row.in, 'x');
    const dc = num(row.in, 'Dc');
    const got = (x * dc) ** 2 / 10 ** (fallInRoomDb(dc)(x) / 10);
    return printedAndExact(row, 'g', got, { exactDecimals: 2 });
  },
  'room-attenuation-step': (row) => printedAndExact(row, 'dB', fallOf(row)(num(row.in, 'x')), four),
  nag: (row) => {
    const needed = neededAcousticGainDb(num(row.in, 'D0'), num(row.in, 'EAD'));
    if (!('compared_with_EAD' in row.in)) return printedAndExact(row, 'dB', needed, four);
    const before = neededAcousticGainDb(num(row.in, 'D0'), num(row.in, 'compared_with_EAD'));
    return printedAndExact(row, 'more_dB', needed - before, four);
  },
  'nag-in-room': (row) =>
    printedAndExact(
      row,
      'dB',
      neededAcousticGainDb(num(row.in, 'D0'), num(row.in, 'EAD'), fallOf(row)),
      four,
    ),
  stable: (row) => {
    const { spareDb } = feedbackEstimate(pathOf(row), num(row.in, 'EAD'), conditionsOf(row));
    return [
      { what: 'spare', got: spareDb, want: row.out.margin_dB, within: decimals(4) },
      { what: 'works', got: spareDb >= 0, want: row.out.works },
    ];
  },
  nom: (row) => {
    if (row.in.open_microphones !== 'each doubling')
      return printedAndExact(row, 'dB', openMicrophonesDb(num(row.in, 'open_microphones')), four);
    return [1, 2, 5, 16].flatMap((count) =>
      printedAndExact(row, 'dB', openMicrophonesDb(2 * count) - openMicrophonesDb(count), four),
    );
  },
  margin: (row) => [{ what: 'kept below ringing', got: stabilityMarginDb, want: row.out.dB }],
  // The same 4 feet, which the notes round to 1.2 m.
  ead: (row) => [
    { what: 'metres', got: customaryEquivalentDistanceM, want: row.out.m },
    { what: 'feet', got: customaryEquivalentDistanceM / 0.3048, want: row.out.ft, within: 0.07 },
  ],
});

describe('the loudest a wedge may bring a voice back', () => {
  const stage = { voiceDbSplAt1M: 74, mouthToMicrophoneM: 0.05, microphoneToWedgeM: 1.5, wedgeToEarM: 1.7 };

  /**
   * Round the loop by hand: what the wedge plays at the ear, traced back to its level at the microphone, against the
   * voice there. At 0 dB the loop rings.
   */
  function loopGainDb(levelAtEarDbSpl: number, rejectionDb: number): number {
    const wedge = { levelDb: levelAtEarDbSpl, atM: stage.wedgeToEarM, thenAtM: stage.microphoneToWedgeM };
    const voice = { levelDb: stage.voiceDbSplAt1M, atM: 1, thenAtM: stage.mouthToMicrophoneM };
    return levelAtDistanceDb(wedge) - rejectionDb - levelAtDistanceDb(voice);
  }

  test.each([0, 5, 12])('leaves 6 dB to a loop gain of one, with %d dB of rejection', (rejectionDb) => {
    const { levelDbSpl } = loudestWedgeBeforeFeedback(stage, { rejectionDb });
    expect(loopGainDb(levelDbSpl, rejectionDb)).toBeCloseTo(-6, 9);
  });

  test('is half the power with every doubling of the open microphones', () => {
    const levelFor = (openMicrophones: number) =>
      loudestWedgeBeforeFeedback(stage, { openMicrophones }).levelDbSpl;
    expect(levelFor(1) - levelFor(4)).toBeCloseTo(6.0206, 4);
  });

  test('is nothing for no voice, and comes with its caution', () => {
    const none = loudestWedgeBeforeFeedback({ ...stage, voiceDbSplAt1M: -Infinity });
    expect(none.levelDbSpl).toBe(-Infinity);
    expect(none.caution).toMatch(/Ring out on the day/);
  });
});

describe('gain before feedback on a stage', () => {
  const singer = {
    talkerToListenerM: 2,
    microphoneToLoudspeakerM: 1.5,
    loudspeakerToListenerM: 1.7,
    talkerToMicrophoneM: 0.05,
  };

  test('grows by what the microphone rejects of the wedge', () => {
    const omni = potentialAcousticGainDb(singer);
    expect(potentialAcousticGainDb(singer, { rejectionDb: 12 }) - omni).toBeCloseTo(12, 9);
  });

  test('keeps 6 dB below ringing and one open microphone where nothing else is said', () => {
    const bare = potentialAcousticGainDb(singer, { openMicrophones: 1, marginDb: 0 });
    expect(bare - potentialAcousticGainDb(singer)).toBeCloseTo(6, 9);
  });

  test('comes with its caution', () => {
    expect(feedbackEstimate(singer, customaryEquivalentDistanceM).caution).toMatch(
      /open outputs from silence/,
    );
  });
});
