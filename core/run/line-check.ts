import type { LineResult } from '../show/as-ran.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { CheckLine } from './lines-to-check.ts';

/** What was last found of each source of an act. */
export function lineResultsOf(show: Show, actId: Id): ReadonlyMap<Id, LineResult> {
  const rows = [...show.lineResults.values()].filter((it) => it.actId === actId);
  return new Map(rows.map((it) => [it.sourceId, it]));
}

export type CheckProgress = {
  all: number;
  ok: number;
  /** Silent, noisy or swapped, and not heard well since. */
  notOk: number;
  /** Put off until the end. */
  later: number;
  /** Nobody has listened yet. */
  left: number;
};

export function progressOf(lines: readonly CheckLine[], results: ReadonlyMap<Id, LineResult>): CheckProgress {
  const found = lines.map(({ source }) => results.get(source.id)?.found);
  const count = (wanted: (it: LineResult['found'] | undefined) => boolean) => found.filter(wanted).length;
  return {
    all: lines.length,
    ok: count((it) => it === 'ok'),
    notOk: count((it) => it === 'silent' || it === 'noisy' || it === 'swapped'),
    later: count((it) => it === 'later'),
    left: count((it) => it === undefined),
  };
}

/**
 * The line to listen to after `from` (null: from the start): the next that nobody has listened to, then one before
 * it, then those that were put off, in their order. Null where every line has been listened to.
 */
export function nextToCheck(
  lines: readonly CheckLine[],
  results: ReadonlyMap<Id, Pick<LineResult, 'found'>>,
  from: Id | null,
): Id | null {
  const at = lines.findIndex(({ source }) => source.id === from);
  const round = [...lines.slice(at + 1), ...lines.slice(0, at + 1)];
  const isNew = round.find(({ source }) => !results.has(source.id));
  const isLater = round.find(({ source }) => results.get(source.id)?.found === 'later');
  return (isNew ?? isLater)?.source.id ?? null;
}
