import type { Act } from '../show/act.ts';
import type { ActRun } from '../show/as-ran.ts';
import { type Change, changeLabel, type Put, put } from '../show/change.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import { changeoverBegan } from '../show/tick.ts';

/** When an act really played, or null where nobody has said anything of it. */
export function runOf(show: Show, actId: Id): ActRun | null {
  return [...show.actRuns.values()].findLast((run) => run.actId === actId) ?? null;
}

/** Which act ends and which comes when the show moves on. */
export type Move = { ends: Act; comes: Act | null };

/**
 * What moving on means now: the open act ends if it is on stage or none is, else the one that is on stage; the one
 * after it in the running order comes. Null on a day without acts.
 */
export function moveFrom(acts: readonly Act[], openId: Id): Move | null {
  const open = acts.find((act) => act.id === openId);
  const onStage = acts.findLast((act) => act.state === 'on stage');
  const ends = open?.state === 'on stage' ? open : (onStage ?? open);
  return ends ? { ends, comes: acts[acts.indexOf(ends) + 1] ?? null } : null;
}

/** Ends one act and starts the changeover to the next, whose clock runs from now. What stands already stays. */
export function moveOn(show: Show, { ends, comes }: Move, at: string, newId: () => Id): Change {
  const run = runOf(show, ends.id);
  const puts: Put[] = [];
  if (ends.state !== 'done') puts.push(put('acts', { ...ends, state: 'done' }));
  if (!run?.endedAt)
    puts.push(
      put(
        'actRuns',
        run ? { ...run, endedAt: at } : { id: newId(), actId: ends.id, beganAt: null, endedAt: at },
      ),
    );
  if (comes && !['on stage', 'done', 'next'].includes(comes.state))
    puts.push(put('acts', { ...comes, state: 'next' }));
  const clock = comes && [...show.ticks.values()].find((it) => isClockOf(it, comes.id));
  if (comes && !clock)
    puts.push(put('ticks', { id: newId(), actId: comes.id, taskKey: changeoverBegan, doneAt: at }));
  const label = comes ? `${ends.name} is done, ${comes.name} comes` : `${ends.name} is done`;
  return { label: changeLabel(label), put: puts, remove: [] };
}

const isClockOf = (tick: { actId: Id; taskKey: string }, actId: Id) =>
  tick.actId === actId && tick.taskKey === changeoverBegan;

/** The set begins: the act is on stage from now. A change without a row where it is already. */
export function beginSet(show: Show, act: Act, at: string, newId: () => Id): Change {
  const run = runOf(show, act.id);
  const puts: Put[] = [];
  if (act.state !== 'on stage') puts.push(put('acts', { ...act, state: 'on stage' }));
  if (!run?.beganAt || run.endedAt)
    puts.push(
      put('actRuns', { id: run?.id ?? newId(), actId: act.id, beganAt: run?.beganAt ?? at, endedAt: null }),
    );
  return { label: changeLabel(`${act.name} begins`), put: puts, remove: [] };
}
