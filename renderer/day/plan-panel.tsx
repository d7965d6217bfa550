import type { DayDoubt } from '../../core/plan/day/check-day.ts';
import type { DayPatch } from '../../core/plan/day/day-patch.ts';
import { type LayerName, layerNames, type PlannedLayer } from '../../core/plan/day/day-plan.ts';
import type { Act, Day } from '../../core/show/act.ts';
import type { Severity } from '../../core/show/words.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import type { Planning } from './day-planning.ts';
import type { FoundPlan } from './found-plan.ts';
import { PlanCosts } from './plan-costs.tsx';
import { PlanDifference, Stability } from './plan-difference.tsx';
import type { DayWork } from './use-day-work.ts';
import './plan-panel.css';

type Props = {
  day: Day;
  /** The acts of the day with their plans. */
  open: readonly ActOnScreen[];
  work: DayWork;
  planning: Planning;
  found: FoundPlan | 'stale' | null;
  /** The best patch so far, while the planner runs. */
  soFar: DayPatch | null;
  isTaken: boolean;
  doubts: readonly DayDoubt[];
  canPlan: boolean;
  acts: readonly Act[];
  keepUnlessGain: number | null;
  showsNow: boolean;
  onShowNow: (now: boolean) => void;
  onPlan: () => void;
  onStop: () => void;
  onTake: () => void;
  onLeave: () => void;
};

/** What the day costs, the planner, and what it found. */
export function PlanPanel(props: Props) {
  const { work, planning, found, soFar, isTaken, doubts, canPlan, onPlan, onStop } = props;
  const text = words.day;
  const stops = doubts.find((doubt) => doubt.stops);
  const plan = found && found !== 'stale' ? found : null;
  return (
    <div className="plan-panel">
      <div className="plan-panel-top">
        <PlanCosts
          day={props.day}
          acts={props.open}
          work={work}
          planned={soFar ?? (plan?.hasPatch ? plan.patch : null)}
          proof={plan?.hasPatch ? proofText(plan.plan.layers.sockets) : ''}
          isTaken={isTaken}
        />
        <div className="plan-panel-planner">
          {planning.is === 'running' ? (
            <Running planning={planning} onStop={onStop} />
          ) : (
            <>
              <button
                type="button"
                className={plan && !isTaken ? undefined : 'main'}
                disabled={!canPlan}
                onClick={onPlan}
              >
                {planning.is === 'idle' ? text.planDay : text.planAgain} <kbd>P</kbd>
              </button>
              {!plan && <p className="quiet plan-panel-why">{text.workWhy}</p>}
            </>
          )}
        </div>
      </div>
      <div role="status" className="plan-panel-said">
        <Said {...props} plan={plan} stops={stops} />
      </div>
    </div>
  );
}

function Running({ planning, onStop }: { planning: Planning & { is: 'running' }; onStop: () => void }) {
  const text = words.day;
  const layer = layerNames.findLast((name) => planning.soFar[name]);
  const soFar = layer && planning.soFar[layer];
  const share = shareOf(planning.soFar);
  return (
    <>
      <progress aria-label={text.planning} max={1} value={share > 0 ? share : undefined} />
      <p className="plan-panel-so-far">
        {layer && soFar ? text.soFar(text.layer[layer], soFar.cost, soFar.bound) : text.starting}
      </p>
      <button type="button" disabled={planning.ending} onClick={onStop}>
        {planning.ending ? text.stopping : text.stop} <kbd>Esc</kbd>
      </button>
    </>
  );
}

/** A layer that has begun is over when the next one has; within it, how near the bound has come. */
function shareOf(soFar: (Planning & { is: 'running' })['soFar']): number {
  const shares = layerNames.map((name: LayerName, at) => {
    const here = soFar[name];
    if (layerNames.slice(at + 1).some((later) => soFar[later])) return 1;
    if (!here) return 0;
    return here.cost === 0 ? 1 : here.bound / here.cost;
  });
  return shares.reduce((sum, share) => sum + share, 0) / layerNames.length;
}

function proofText({ proof, gapPercent }: PlannedLayer): string {
  const text = words.day;
  if (proof === 'proven minimal') return text.provenMinimal;
  return proof === 'no plan' ? '' : text.withinGap(`${Math.ceil(gapPercent * 10) / 10}`);
}

function Said({
  planning,
  found,
  plan,
  stops,
  isTaken,
  ...rest
}: Props & { plan: FoundPlan | null; stops: DayDoubt | undefined }) {
  const text = words.day;
  if (stops) return <Trouble what={`${text.cannotPlan} ${stops.what}`} todo={stops.todo} onLeave={null} />;
  if (planning.is === 'refused') return <Trouble {...planning.problem} onLeave={rest.onLeave} />;
  if (planning.is !== 'found') return null;
  if (found === 'stale')
    return <Trouble severity="know this" what={text.stale} todo={text.staleTodo} onLeave={rest.onLeave} />;
  if (!plan) return null;
  if (!plan.hasPatch) {
    const conflict = planning.found.layers.sockets.conflict;
    return (
      <Trouble
        what={conflict?.what ?? (planning.stopped ? text.stoppedEmpty : text.noPlan(text.layer.sockets))}
        todo={conflict?.todo ?? ''}
        more={[...(conflict?.nearest ? [conflict.nearest] : []), ...(conflict?.others ?? [])]}
        onTake={plan.canTake && !isTaken ? rest.onTake : null}
        onLeave={rest.onLeave}
      />
    );
  }
  if (isTaken)
    return (
      <>
        <p className="unseen">{text.holds(proofText(plan.plan.layers.sockets))}</p>
        <Stability plan={plan.plan} least={rest.keepUnlessGain} />
      </>
    );
  return <PlanDifference {...rest} found={plan} stopped={planning.stopped} />;
}

function Trouble({
  severity = 'must fix',
  what,
  todo,
  more = [],
  onTake = null,
  onLeave,
}: {
  severity?: Severity;
  what: string;
  todo: string;
  more?: readonly string[];
  onTake?: (() => void) | null;
  onLeave: (() => void) | null;
}) {
  return (
    <div className={severity === 'must fix' ? 'plan-trouble is-must-fix' : 'plan-trouble'}>
      <SeverityMark severity={severity} />
      <div className="plan-trouble-words">
        <p>
          <strong>{what}</strong> {todo}
        </p>
        {more.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      {onTake && (
        <button type="button" onClick={onTake}>
          {words.day.takeNearest} <kbd>T</kbd>
        </button>
      )}
      {onLeave && (
        <button type="button" className="plain" onClick={onLeave}>
          {words.common.close}
        </button>
      )}
    </div>
  );
}
