import { useEffect, useState } from 'react';
import { type ChangeoverTime, changeoverTime } from '../../core/changeover/minutes-of-patch.ts';
import type { DayPatch } from '../../core/plan/day/day-patch.ts';
import type { Day } from '../../core/show/act.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';

type Times = { day: Day; acts: readonly ActOnScreen[]; of: ReadonlyMap<DayPatch, ChangeoverTime> };

const restMs = 300;

/**
 * The time that the changeovers take under each of some patches, null until it is worked out: one patch at a time
 * and only once nothing has changed for a moment, so that typing never waits for it.
 */
export function useChangeoverTimes(
  day: Day,
  acts: readonly ActOnScreen[],
  patches: readonly DayPatch[],
): (patch: DayPatch) => ChangeoverTime | null {
  const [times, setTimes] = useState<Times>({ day, acts, of: new Map() });
  const known = times.day === day && times.acts === acts ? times.of : null;
  const next = patches.find((patch) => !known?.has(patch));
  useEffect(() => {
    if (!next) return;
    const work = () => {
      const sides = acts.map(({ sheet, derived }) => ({ sheet, plan: derived.plan }));
      const time = changeoverTime(day, sides, next);
      setTimes((before) => {
        const kept = before.day === day && before.acts === acts ? before.of : [];
        return { day, acts, of: new Map([...kept, [next, time]]) };
      });
    };
    const timer = setTimeout(work, known ? 0 : restMs);
    return () => clearTimeout(timer);
  }, [day, acts, next, known]);
  return (patch) => known?.get(patch) ?? null;
}
