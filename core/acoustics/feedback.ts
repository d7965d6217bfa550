import { dbOfPower } from './decibel.ts';
import { requireCount, requireNotNegative } from './range.ts';
import { type FallDb, fallInTheOpenDb } from './sound-field.ts';

/**
 * Gain before feedback from distances. Sources: Sound System Design Reference Manual, chapter 4; Handbook for
 * Sound Engineers, chapter 34. The manual prints 13.5 and 7.5 dB for its example because it rounds each
 * logarithm; unrounded they are 13.38 and 7.38.
 */

/** Both handbooks stay this far below the point of ringing, in dB. */
export const stabilityMarginDb = 6;

/** What open microphones cost, in dB: 3.0 for each doubling. */
export function openMicrophonesDb(count: number): number {
  requireCount({ count });
  return dbOfPower(count);
}

export type AmplifiedPath = {
  /** From the talker to the farthest listener who is to hear more than the bare voice. */
  talkerToListenerM: number;
  microphoneToLoudspeakerM: number;
  loudspeakerToListenerM: number;
  talkerToMicrophoneM: number;
};

export type FeedbackConditions = {
  openMicrophones: number;
  /** Kept below ringing, in dB; `stabilityMarginDb` unless there is a reason. */
  marginDb: number;
  /** What the microphone hears less of the loudspeaker than of the talker, in dB; 0 for omni. */
  rejectionDb: number;
  /** How sound falls here: in the open or in a room. */
  fallDb: FallDb;
};

const usualConditions: FeedbackConditions = {
  openMicrophones: 1,
  marginDb: stabilityMarginDb,
  rejectionDb: 0,
  fallDb: fallInTheOpenDb,
};

/** Potential acoustic gain: what a listener can get more than unaided before the system is unstable, in dB. */
export function potentialAcousticGainDb(
  path: AmplifiedPath,
  given: Partial<FeedbackConditions> = {},
): number {
  const { openMicrophones, marginDb, rejectionDb, fallDb } = { ...usualConditions, ...given };
  requireNotNegative({ marginDb, rejectionDb });
  return (
    fallDb(path.talkerToListenerM) +
    fallDb(path.microphoneToLoudspeakerM) -
    fallDb(path.loudspeakerToListenerM) -
    fallDb(path.talkerToMicrophoneM) +
    rejectionDb -
    openMicrophonesDb(openMicrophones) -
    marginDb
  );
}

/** Customary distance at which unaided speech is loud enough, 4 feet, in metres. */
export const customaryEquivalentDistanceM = 1.2;

/** Needed acoustic gain: what makes the farthest listener hear as from the equivalent distance, in dB. */
export function neededAcousticGainDb(
  talkerToListenerM: number,
  equivalentDistanceM: number,
  fallDb: FallDb = fallInTheOpenDb,
): number {
  return fallDb(talkerToListenerM) - fallDb(equivalentDistanceM);
}

export type FeedbackEstimate = {
  potentialDb: number;
  neededDb: number;
  /** Potential less needed: below 0 the system is expected to ring before it is loud enough. */
  spareDb: number;
  caution: string;
};

export const feedbackCaution =
  'An estimate from distances and textbook behaviour. Ring out on the day, open outputs from silence, and never open one on a recall.';

/** Both gains against each other, with the caution that stands beside the figures. */
export function feedbackEstimate(
  path: AmplifiedPath,
  equivalentDistanceM: number,
  given: Partial<FeedbackConditions> = {},
): FeedbackEstimate {
  const potentialDb = potentialAcousticGainDb(path, given);
  const neededDb = neededAcousticGainDb(path.talkerToListenerM, equivalentDistanceM, given.fallDb);
  return { potentialDb, neededDb, spareDb: potentialDb - neededDb, caution: feedbackCaution };
}
