import type { Mix } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import { remembered } from '../../show/remember.ts';
import type { Id } from '../../show/rig.ts';
import type { ActFacts, MixWithPlan } from '../facts.ts';

/** Whether two sources are plugged into one socket. */
export const socketsAreShared = remembered((facts: ActFacts) =>
  hasRepeats(facts.plan.patches, (patch) => patch.socketId),
);

/** Whether two copies are on one channel. Channels are small numbers, so they are ticked off. */
export function channelsAreShared({ plan }: ActFacts): boolean {
  const taken = new Uint8Array(mostChannels + 1);
  for (const { channel } of plan.copies) {
    if (channel === null) continue;
    if (taken[channel]) return true;
    taken[channel] = 1;
  }
  return false;
}

/** The highest number of a channel that a show may hold; see `Rig.channelCount`. */
const mostChannels = 1024;

/** Whether two rows have the same of something; null is no thing. */
export function hasRepeats<T>(rows: readonly T[], of: (row: T) => Id | number | null): boolean {
  const seen = new Set<Id | number>();
  let count = 0;
  for (const row of rows) {
    const thing = of(row);
    if (thing === null) continue;
    seen.add(thing);
    count++;
  }
  return seen.size < count;
}

/** The mixes behind every bus, output or device of which several mixes name the same. */
export function mixesSharing(
  rows: readonly MixWithPlan[],
  idsOf: (row: MixWithPlan) => readonly Id[],
): [Id, Mix[]][] {
  // Nearly always nothing is shared, and then no lists are made.
  const seen = new Set<Id>();
  let count = 0;
  for (const row of rows)
    for (const id of idsOf(row)) {
      seen.add(id);
      count++;
    }
  if (seen.size === count) return [];
  const using = new Map<Id, Mix[]>();
  for (const row of rows) for (const id of new Set(idsOf(row))) addToList(using, id, row.mix);
  return [...using].filter(([, mixes]) => mixes.length > 1);
}
