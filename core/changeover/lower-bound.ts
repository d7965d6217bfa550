import { heads, tails, type Work } from './timetable.ts';

/** What a timetable cannot be shorter than, by the reason for it: the order of things, or one of the resources. */
export type BoundParts = { order: number; resources: number[] };

/** No timetable ends earlier than this. */
export function lowerBound(work: Work, order: readonly number[]): number {
  const parts = boundParts(work, order);
  return Math.max(parts.order, ...parts.resources);
}

/**
 * The longest way of waiting, and for each resource the work that can neither start before some moment nor leave
 * less than some rest after it, divided by what there is of it.
 */
export function boundParts(work: Work, order: readonly number[]): BoundParts {
  const head = heads(work, order);
  const tail = tails(work, order);
  const longestWay = Math.max(
    0,
    ...work.activities.map((activity, index) => (head[index] ?? 0) + activity.duration + (tail[index] ?? 0)),
  );
  const resources = work.capacities.map((capacity, resource) =>
    boundOfResource(
      work.activities.flatMap((activity, index) => {
        const amount = activity.duration * (activity.needs[resource] ?? 0);
        return amount > 0 ? [{ head: head[index] ?? 0, tail: tail[index] ?? 0, amount }] : [];
      }),
      capacity,
    ),
  );
  return { order: longestWay, resources };
}

type Share = { head: number; tail: number; amount: number };

function boundOfResource(shares: Share[], capacity: number): number {
  if (capacity <= 0) return 0;
  let bound = 0;
  const byTail = shares.toSorted((a, b) => b.tail - a.tail);
  for (const from of new Set(shares.map((share) => share.head))) {
    let amount = 0;
    for (const [place, share] of byTail.entries()) {
      if (share.head >= from) amount += share.amount;
      // All with this tail or a longer one are counted once the next one has a shorter tail.
      if (byTail[place + 1]?.tail !== share.tail && amount > 0)
        bound = Math.max(bound, from + Math.ceil(amount / capacity) + share.tail);
    }
  }
  return bound;
}
