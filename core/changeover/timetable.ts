/**
 * Work that needs hands (or other things of which there are a few) and some order, as plain numbers: durations in
 * slots of time, needs and capacities by resource. Knows nothing of the trade, so that it can be tested against
 * published instances of resource-constrained scheduling.
 */
export type Activity = {
  duration: number;
  /** How much of each resource it holds while it runs. */
  needs: number[];
  /** Activities that must be over before it starts. Smaller indexes need not come first. */
  after: number[];
};

export type Work = { activities: Activity[]; capacities: number[] };

/** Start of each activity and the end of the last one, in slots. */
export type Timetable = { start: number[]; end: number };

/** Activities in an order in which each comes after all it waits for; null where they wait in a circle. */
export function precedenceOrder(work: Work): number[] | null {
  const waiting = work.activities.map((activity) => activity.after.length);
  const next = successors(work.activities);
  const ready = waiting.flatMap((count, index) => (count === 0 ? [index] : []));
  const order: number[] = [];
  for (let index = ready.shift(); index !== undefined; index = ready.shift()) {
    order.push(index);
    for (const follower of next[index] ?? []) {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      if (waiting[follower] === 0) ready.push(follower);
    }
  }
  return order.length === work.activities.length ? order : null;
}

/** For each activity, those that wait for it. */
export function successors(activities: readonly Pick<Activity, 'after'>[]): number[][] {
  const next: number[][] = activities.map(() => []);
  activities.forEach((activity, index) => {
    for (const before of activity.after) next[before]?.push(index);
  });
  return next;
}

/** Work with its direction turned round: what was last comes first. */
export function reversed(work: Work): Work {
  const next = successors(work.activities);
  return {
    capacities: work.capacities,
    activities: work.activities.map((activity, index) => ({ ...activity, after: next[index] ?? [] })),
  };
}

/** The longest way of waiting before each activity starts, were there hands for everything. */
export function heads(work: Work, order: readonly number[]): number[] {
  const head = work.activities.map(() => 0);
  for (const index of order)
    head[index] = Math.max(
      0,
      ...(work.activities[index]?.after ?? []).map(
        (before) => (head[before] ?? 0) + (work.activities[before]?.duration ?? 0),
      ),
    );
  return head;
}

/** The longest way from the end of each activity to the end of all. */
export function tails(work: Work, order: readonly number[]): number[] {
  return heads(reversed(work), order.toReversed());
}

/** Breaks of precedence or capacity in a timetable, in words for a test; an empty list: none. */
export function breaks(work: Work, timetable: Timetable): string[] {
  const { activities, capacities } = work;
  const endOf = (index: number) => (timetable.start[index] ?? 0) + (activities[index]?.duration ?? 0);
  const early = activities.flatMap((activity, index) =>
    activity.after
      .filter((before) => endOf(before) > (timetable.start[index] ?? 0))
      .map((before) => `${index} starts before ${before} is over`),
  );
  const over = [...new Set(timetable.start)].flatMap((time) =>
    capacities.flatMap((capacity, resource) => {
      const used = activities.reduce((sum, activity, index) => {
        const runs = (timetable.start[index] ?? 0) <= time && time < endOf(index);
        return runs ? sum + (activity.needs[resource] ?? 0) : sum;
      }, 0);
      return used > capacity ? [`resource ${resource} is used ${used} of ${capacity} times at ${time}`] : [];
    }),
  );
  return [...early, ...over];
}
