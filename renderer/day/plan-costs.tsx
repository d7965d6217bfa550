import type { ReactNode } from 'react';
import { type DayPatch, replugs } from '../../core/plan/day/day-patch.ts';
import { words } from '../wording/words.ts';
import type { DayWork } from './use-day-work.ts';

type Props = {
  work: DayWork;
  /** The plan that was found, or the best so far. */
  planned: DayPatch | null;
  /** What is proven of it, or of the day as it stands, in words. */
  proof: string;
  /** The day already is as planned. */
  isTaken: boolean;
  /** A plan is being looked at: room for it. */
  hidesHabits: boolean;
};

/** What the day costs: as it stands, by habit, and as planned. The bars make it a glance. */
export function PlanCosts({ work, planned, proof, isTaken, hidesHabits }: Props) {
  const text = words.day;
  const all = [work.now, ...work.habits.map(({ patch }) => patch), ...(planned ? [planned] : [])];
  const most = Math.max(1, ...all.map((patch) => patch.work));
  return (
    <table className="plan-costs">
      <caption>{text.costs}</caption>
      <tbody>
        <Cost label={text.now} patch={work.now} most={most} isMain>
          {isTaken ? proof : null}
          {work.brokenNow.length > 0 && (
            <span className="plan-costs-missing"> {text.broken(work.brokenNow.length)}</span>
          )}
        </Cost>
        {planned && !isTaken && (
          <Cost label={text.planned} patch={planned} most={most} isMain>
            {proof}
          </Cost>
        )}
        {!hidesHabits &&
          work.habits.map(({ habit, patch, broken }) => (
            <Cost key={habit} label={text.habit[habit]} patch={patch} most={most}>
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
  most,
  isMain = false,
  children,
}: {
  label: string;
  patch: DayPatch;
  most: number;
  isMain?: boolean;
  children?: ReactNode;
}) {
  const text = words.day;
  return (
    <tr className={isMain ? 'is-main' : undefined}>
      <th scope="row">{label}</th>
      <td className="plan-costs-count">{replugs(patch)}</td>
      <td>
        <svg className="plan-costs-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
          <rect width={(100 * patch.work) / most} height="8" />
        </svg>
      </td>
      <td className="quiet">{text.work(patch.work)}</td>
      <td className="plan-costs-proof">
        {children}
        {patch.withoutSocket > 0 && (
          <strong className="plan-costs-missing"> {text.withoutSocket(patch.withoutSocket)}</strong>
        )}
      </td>
    </tr>
  );
}
