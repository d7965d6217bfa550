import type { DeviceKind } from '../show/words.ts';

/** Sentences that stand beside every figure of exposure. No figure here clears a day. */
export const exposureAssumptions: readonly string[] = [
  'The levels are what somebody entered, taken as A-weighted averages at the ear; nothing was measured.',
  'Time that is not in the plan, on the way, at home or at the next stage, is not counted.',
  'Peaks are not in it: feedback or a dropped microphone can hurt within a moment at any average.',
];

const inEarCaution =
  'In-ears are not by themselves hearing protection, and their level at the ear is known only by measurement: keep the limiter in the receiver on.';

/** The cautions for somebody who listens through these; the one that matters most first. */
export function exposureCautions(through: readonly (DeviceKind | null)[]): string[] {
  return [
    'An estimate, not a clearance: it does not show that a day does no harm.',
    'Have the level at the ear measured; local regulations and the competent person on site decide.',
    ...(through.includes('in-ear') ? [inEarCaution] : []),
    'Ringing or dull hearing afterwards is a sign of too much, whatever the figures say: see a doctor.',
  ];
}
