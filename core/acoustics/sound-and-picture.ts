import { requireFinite } from './range.ts';

/**
 * Sound against the picture on a screen beside the stage, in milliseconds.
 * Source: Recommendation ITU-R BT.1359-1 (1998), thresholds of detectability and of acceptability.
 */
export const soundAgainstPicture = {
  noticed: { earlyMs: 45, lateMs: 125 },
  'not accepted': { earlyMs: 90, lateMs: 185 },
} as const;

/** How a delay of the sound after the picture was judged; negative where the sound comes first. */
export function judgeSoundAfterPicture(
  soundLateMs: number,
): 'not noticed' | keyof typeof soundAgainstPicture {
  requireFinite({ soundLateMs });
  const beyond = ({ earlyMs, lateMs }: { earlyMs: number; lateMs: number }) =>
    soundLateMs > lateMs || soundLateMs < -earlyMs;
  if (beyond(soundAgainstPicture['not accepted'])) return 'not accepted';
  return beyond(soundAgainstPicture.noticed) ? 'noticed' : 'not noticed';
}
