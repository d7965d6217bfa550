import type { ReactNode } from 'react';
import type { ChangeoverTime } from '../../core/changeover/minutes-of-patch.ts';
import { type DayPatch, replugs } from '../../core/plan/day/day-patch.ts';
import type { Day } from '../../core/show/act.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import { useChangeoverTimes } from './use-changeover-times.ts';
import type { DayWork } from './use-day-work.ts';

type Props = {
  day: Day;
  acts: readonly ActOnScreen[];
  work: DayWork;
  /** The plan that was found, or the best so far. */
  planned: DayPatch | null;
  /** What is proven of it, or of the day as it stands, in words. */
  proof: string;
  /** The day already is as planned. */
  isTaken: boolean;
};

/** What the day costs: as it stands, by habit, and as planned. The bars make it a glance. */
export function PlanCosts({ day, acts, work, planned, proof, isTaken }: Props) {
  const text = words.day;
  const all = [work.now, ...work.habits.map(({ patch }) => patch), ...(planned ? [planned] : [])];
  const timeOf = useChangeoverTimes(day, acts, all);
  const most = Math.max(1, ...all.map((patch) => patch.work));
  return (
    <table className="plan-costs">
      <thead>
        <tr>
          <th scope="col">{text.costs}</th>
          <th scope="col">{text.costLines}</th>
          <th scope="col">{text.costMinutes}</th>
          <th scope="col">{text.costHands}</th>
          <th scope="col" colSpan={2}>
            {text.costWork}
          </th>
          <td />
        </tr>
      </thead>
      <tbody>
        <Cost label={text.now} patch={work.now} time={timeOf(work.now)} most={most} isMain>
          {isTaken ? proof : null}
          {work.brokenNow.length > 0 && (
            <span className="plan-costs-missing"> {text.broken(work.brokenNow.length)}</span>
          )}
        </Cost>
        {planned && !isTaken && (
          <Cost label={text.planned} patch={planned} time={timeOf(planned)} most={most} isMain>
            {proof}
          </Cost>
        )}
        {work.habits.map(({ habit, patch, broken }) => (
          <Cost key={habit} label={text.habit[habit]} patch={patch} time={timeOf(patch)} most={most}>
            {broken > 0 && <span className="plan-costs-missing">{text.broken(broken)}</span>}
          </Cost>
        ))}
      </tbody>
    </table>
  );
}

function Cost({
  label,
  patch,
  time,
  most,
  isMain = false,
  children,
}: {
  label: string;
  patch: DayPatch;
  /** null while it is being worked out. */
  time: ChangeoverTime | null;
  most: number;
  isMain?: boolean;
  children?: ReactNode;
}) {
  const text = words.day;
  return (
    <tr className={isMain ? 'is-main' : undefined}>
      <th scope="row">{label}</th>
      <td className="plan-costs-count">{replugs(patch)}</td>
      <td className="plan-costs-count">
        {time === null || time.seconds === null ? words.common.nothing : Math.round(time.seconds / 60)}
      </td>
      <td className="plan-costs-count">
        {time === null ? words.common.nothing : Math.round(time.handSeconds / 60)}
      </td>
      <td className="plan-costs-count">{patch.work}</td>
      <td>
        <svg className="plan-costs-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
          <rect width={(100 * patch.work) / most} height="8" />
        </svg>
      </td>
      <td className="plan-costs-proof">
        {children}
        {time !== null && time.tooLong > 0 && (
          <span className="plan-costs-missing"> {text.changeoversTooLong(time.tooLong)}</span>
        )}
        {patch.withoutSocket > 0 && (
          <strong className="plan-costs-missing"> {text.withoutSocket(patch.withoutSocket)}</strong>
        )}
      </td>
    </tr>
  );
}
