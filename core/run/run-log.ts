import type { LineResult, RanLevel, RunNote } from '../show/as-ran.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import { runOf } from './move-on.ts';

/** Something of an act's run, at an ISO 8601 time. */
export type RunEvent =
  | { is: 'began' | 'ended'; at: string }
  | { is: 'result'; at: string; result: LineResult }
  | { is: 'level'; at: string; level: RanLevel }
  | { is: 'note'; at: string; note: RunNote };

/** Everything that was kept of an act's run, the newest first. */
export function runLog(show: Show, actId: Id): RunEvent[] {
  const run = runOf(show, actId);
  const ofAct = <T extends { actId: Id }>(rows: ReadonlyMap<Id, T>) =>
    [...rows.values()].filter((it) => it.actId === actId);
  const events: RunEvent[] = [
    ...(run?.beganAt ? [{ is: 'began', at: run.beganAt } as const] : []),
    ...ofAct(show.lineResults).map((result) => ({ is: 'result', at: result.foundAt, result }) as const),
    ...ofAct(show.ranLevels).map((level) => ({ is: 'level', at: level.changedAt, level }) as const),
    ...ofAct(show.runNotes).map((note) => ({ is: 'note', at: note.notedAt, note }) as const),
    ...(run?.endedAt ? [{ is: 'ended', at: run.endedAt } as const] : []),
  ];
  // Of two at the same moment the later in the list is the newer one.
  return events
    .map((event, place) => ({ event, place }))
    .sort((a, b) => (a.event.at < b.event.at ? 1 : a.event.at > b.event.at ? -1 : b.place - a.place))
    .map(({ event }) => event);
}
