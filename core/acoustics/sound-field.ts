import { dbOfPower } from './decibel.ts';
import { requirePositive } from './range.ts';

/**
 * How much a sound falls over a distance, in dB against a point that does not matter, since only differences are
 * used. Distances in metres, or in any one unit throughout.
 */
export type FallDb = (distanceM: number) => number;

/** In the open: 6.0 dB for each doubling of the distance. Source: inverse square law. */
export const fallInTheOpenDb: FallDb = (distanceM) => {
  requirePositive({ distanceM });
  return 20 * Math.log10(distanceM);
};

/**
 * In a room: like in the open near by, and no further fall well beyond the critical distance, where the
 * reverberation is as loud as the direct sound.
 * Source: Handbook for Sound Engineers, chapter 34, equations 34-21 to 34-24.
 */
export function fallInRoomDb(criticalDistanceM: number): FallDb {
  requirePositive({ criticalDistanceM });
  return (distanceM) => {
    requirePositive({ distanceM });
    // Both terms relative to the nearer of the two distances, so that neither square overflows.
    const near = Math.min(distanceM, criticalDistanceM);
    return 20 * Math.log10(near) - dbOfPower((near / distanceM) ** 2 + (near / criticalDistanceM) ** 2);
  };
}

export type Room = {
  /** Q of the loudspeaker or talker: 1 in all directions alike. */
  directivity: number;
  surfaceM2: number;
  /** Mean absorption of the surfaces, above 0 and up to 1. */
  absorption: number;
};

/** The same from a loudspeaker's Q and a room's absorption. Source: same chapter, equations 34-5 and 34-8. */
export function fallInRoomOfAbsorptionDb({ directivity, surfaceM2, absorption }: Room): FallDb {
  requirePositive({ directivity, surfaceM2, absorption });
  return (distanceM) => {
    requirePositive({ distanceM });
    return -dbOfPower(directivity / (4 * Math.PI) / distanceM / distanceM + 4 / surfaceM2 / absorption);
  };
}
