import type { Entry } from '../plan/day/problem.ts';
import type { ActWithPlan } from '../plan/plan-act.ts';
import { switchesOf } from '../plan/plan-phantom.ts';
import type { Source } from '../show/act.ts';
import type { Id } from '../show/rig.ts';

/**
 * How every line of a day enters its socket, act by act, from the plans as they stand: `kept` where the same
 * shared line was the last in the socket, `cold` where nobody played there in the act before, else `hot`. What
 * 48 V would harm waits for the changeover where the switch is on for the act before. Lines without a socket have
 * no entry.
 */
export function entriesOfDay(acts: readonly ActWithPlan[]): Map<Id, Entry> {
  const entries = new Map<Id, Entry>();
  const lastIn = new Map<Id, { act: number; line: string }>();
  acts.forEach(({ sheet, plan }, act) => {
    const isOnBefore = switchesOn(acts[act - 1]);
    const sources = new Map(sheet.sources.map((source) => [source.id, source]));
    const patched = plan.patches.flatMap(({ sourceId, socketId }) => {
      const source = sources.get(sourceId);
      return source && socketId !== null ? [{ source, socketId }] : [];
    });
    for (const { source, socketId } of patched)
      entries.set(source.id, entryOf(source, lastIn.get(socketId), act, isOnBefore(socketId)));
    // A line that plays elsewhere now was pulled out of where it was.
    const playing = new Set(patched.map(({ source }) => lineOf(source)));
    for (const [socketId, last] of lastIn)
      if (playing.has(last.line)) lastIn.set(socketId, { ...last, line: '' });
    for (const { source, socketId } of patched) lastIn.set(socketId, { act, line: lineOf(source) });
  });
  return entries;
}

function entryOf(
  source: Source,
  last: { act: number; line: string } | undefined,
  act: number,
  isOn: boolean,
): Entry {
  if (last?.line === lineOf(source)) return 'kept';
  const isIdle = last === undefined || last.act < act - 1;
  return act === 0 || (isIdle && !(isOn && source.phantom === 'harmful')) ? 'cold' : 'hot';
}

/** Lines of one shared name are one line; every other source is its own. */
function lineOf(source: Source): string {
  const name = source.sharedLine.trim().toLowerCase();
  return name === '' ? `own ${source.id}` : `shared ${name}`;
}

/** Whether the 48 V switch of a socket is on for an act. */
function switchesOn(side: ActWithPlan | undefined): (socketId: Id) => boolean {
  if (!side) return () => false;
  const switchOf = switchesOf(side.sheet);
  const on = new Set(
    side.plan.patches.flatMap(({ socketId, phantomOn }) =>
      phantomOn && socketId !== null ? (switchOf(socketId) ?? []) : [],
    ),
  );
  return (socketId) => {
    const number = switchOf(socketId);
    return number !== undefined && on.has(number);
  };
}
