import { delayMs } from './delay.ts';
import { type Direction, distanceBetweenM, offAxisDegrees, type Point } from './geometry.ts';
import { responseDb } from './microphone-patterns.ts';

/** A microphone on the plot: where it stands, where its front looks (at the mouth), and its pattern. */
export type PlacedMicrophone = { at: Point; looking: Direction; coefficient: number };

/** How a microphone hears a loudspeaker. */
export type Pickup = {
  distanceM: number;
  offAxisDegrees: number;
  /** Against sound from the front, in dB: 0 or less, -Infinity in the pattern's null. */
  responseDb: number;
  delayMs: number;
  /** What stands beside the figures. */
  caution: string;
};

const caution =
  'A hint from plot positions and the textbook pattern. Reflections, a hand on the grille and the real microphone change it: listen before you rely on it.';

/**
 * How a microphone hears a loudspeaker at a place, both reduced to points, in the open; null where the two are in
 * the same place. Sources: first-order pattern as in `microphone-patterns`, ISO 9613-1 for the delay.
 */
export function pickupOf(
  microphone: PlacedMicrophone,
  loudspeaker: Point,
  airTemperatureC: number,
): Pickup | null {
  const angle = offAxisDegrees(microphone.at, microphone.looking, loudspeaker);
  if (angle === null) return null;
  const distanceM = distanceBetweenM(microphone.at, loudspeaker);
  return {
    distanceM,
    offAxisDegrees: angle,
    responseDb: responseDb(microphone.coefficient, angle),
    delayMs: delayMs(distanceM, airTemperatureC),
    caution,
  };
}

/** Common practice: floor, face and hat fill every null, so no more than this is counted on. */
const mostRejectionDb = 15;

/** The part of a response that a feedback estimate may count on, in dB, 0 to 15. */
export function rejectionToCountOnDb({ responseDb }: Pick<Pickup, 'responseDb'>): number {
  return Math.min(Math.max(0, -responseDb), mostRejectionDb);
}
