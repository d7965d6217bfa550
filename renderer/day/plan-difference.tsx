import { replugs } from '../../core/plan/day/day-patch.ts';
import { type DayPlan, layerNames } from '../../core/plan/day/day-plan.ts';
import type { Move } from '../../core/plan/day/difference.ts';
import type { Act } from '../../core/show/act.ts';
import { words } from '../wording/words.ts';
import type { FoundPlan } from './found-plan.ts';

type Props = {
  found: FoundPlan;
  acts: readonly Act[];
  keepUnlessGain: number | null;
  stopped: boolean;
  showsNow: boolean;
  onShowNow: (now: boolean) => void;
  onTake: () => void;
  onLeave: () => void;
};

/** What a plan would change, before it is taken. */
export function PlanDifference(props: Props) {
  const { found, acts, keepUnlessGain, stopped, showsNow, onShowNow, onTake, onLeave } = props;
  const text = words.day;
  const { plan, patch, now, moves } = found;
  const counts = layerNames.flatMap((name) =>
    moves[name].length > 0 ? [text.moveCount[name](moves[name].length)] : [],
  );
  const isStill = counts.length === 0;
  return (
    <section className="plan-difference" aria-label={text.difference}>
      <p className="plan-difference-head">
        <strong>{text.replugsSpoken(replugs(now), replugs(patch))}</strong>
        <span>{text.saves(now.work - patch.work)}</span>
        <span>{isStill ? text.nothingMoves : text.moves(counts)}</span>
      </p>
      {stopped && <p>{text.stopped}</p>}
      <Stability plan={plan} least={keepUnlessGain} />
      {layerNames.map((name) =>
        plan.layers[name].proof === 'no plan' ? (
          <p key={name} className="plan-difference-problem">
            {text.noPlan(text.layer[name])} {found.conflicts[name]}
          </p>
        ) : null,
      )}
      <div className="plan-difference-tools">
        <button type="button" className="main" onClick={onTake}>
          {isStill ? text.hold : text.take} <kbd>T</kbd>
        </button>
        <button type="button" onClick={onLeave}>
          {text.leave} <kbd>Esc</kbd>
        </button>
        {!isStill && (
          <fieldset className="plan-difference-view">
            <legend className="unseen">{text.show}</legend>
            <button type="button" aria-pressed={!showsNow} onClick={() => onShowNow(false)}>
              {text.show} {text.showPlan}
            </button>
            <button type="button" aria-pressed={showsNow} onClick={() => onShowNow(true)}>
              {text.show} {text.showNow}
            </button>
          </fieldset>
        )}
      </div>
      {!isStill && <Moves moves={moves} acts={acts} />}
    </section>
  );
}

/** Whether what is patched was kept or given up, and for what gain. */
export function Stability({ plan, least }: { plan: DayPlan; least: number | null }) {
  const text = words.day;
  const { layer, stability } = plan.layers.sockets;
  if (!stability || least === null) return null;
  const { taken, keptCost, newCost, released } = stability;
  const names = released.map((index) => layer.items[index]?.name ?? '').join(', ');
  const gain = (keptCost ?? newCost) - newCost;
  return (
    <p>
      {taken === 'kept' ? text.kept(newCost, gain, least) : keptCost !== null && text.renewed(gain, least)}
      {names !== '' && ` ${text.released(names)}`}
    </p>
  );
}

/** Every move by act: short lines, wrapped. */
function Moves({ moves, acts }: { moves: FoundPlan['moves']; acts: readonly Act[] }) {
  const text = words.day;
  return (
    <details className="plan-moves">
      <summary>{text.whatMoves}</summary>
      {acts.map((act) => {
        const layers = layerNames.flatMap((name) => {
          const ofAct = moves[name].filter((move) => move.actId === act.id);
          return ofAct.length > 0 ? [{ name, ofAct }] : [];
        });
        if (layers.length === 0) return null;
        return (
          <section key={act.id}>
            <h2>{act.name}</h2>
            {layers.map(({ name, ofAct }) => (
              <p key={name}>
                <span className="quiet">{text.layer[name]}: </span>
                {ofAct.map(moveText).join('; ')}
              </p>
            ))}
          </section>
        );
      })}
    </details>
  );
}

const moveText = ({ name, from, to }: Move) => words.day.move(name, from, to);
