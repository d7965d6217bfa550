import type { ActRun } from '../show/as-ran.ts';
import type { Change } from '../show/change.ts';
import { isOfRun } from '../show/part-of-show.ts';
import type { Id } from '../show/rig.ts';
import { changeoverBegan } from '../show/tick.ts';

/** What is known of a show before a change is written to it. */
export type Known = {
  hasAct(actId: Id): boolean;
  /** Whether the archive has the act's plan already. */
  hasPlan(actId: Id): boolean;
  run(runId: Id): ActRun | null;
};

/**
 * The acts that a change puts into the archive. `plan`: how they are planned before the change, when the clock of
 * their changeover starts, and at the latest when the first thing of their run is kept; `run`: how they ran, when
 * they have ended. An act that comes with the change, as from a file, did not happen here and is none of them.
 */
export function whatToArchive({ put }: Change, known: Known): { plan: Id[]; run: Id[] } {
  const plan = new Set<Id>();
  const run = new Set<Id>();
  for (const it of put) {
    if (!('actId' in it.row) || typeof it.row.actId !== 'string') continue;
    const { actId } = it.row;
    if (!known.hasAct(actId)) continue;
    if (it.table === 'ticks' && it.row.taskKey === changeoverBegan) plan.add(actId);
    if (it.table !== 'ticks' && isOfRun(it.table) && !known.hasPlan(actId)) plan.add(actId);
    if (it.table === 'actRuns' && it.row.endedAt !== null && !known.run(it.row.id)?.endedAt) run.add(actId);
  }
  return { plan: [...plan], run: [...run] };
}
