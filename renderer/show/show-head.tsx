import { secondsBetween } from '../../core/changeover/seconds-between.ts';
import { progressOf } from '../../core/run/line-check.ts';
import type { CheckLine } from '../../core/run/lines-to-check.ts';
import { type Move, runOf } from '../../core/run/move-on.ts';
import type { Act } from '../../core/show/act.ts';
import type { LineResult } from '../../core/show/as-ran.ts';
import type { Id } from '../../core/show/rig.ts';
import { changeoverBegan } from '../../core/show/tick.ts';
import { RunningClock } from '../changeover/running-clock.tsx';
import { ticksOf } from '../changeover/ticks.ts';
import { clockText, timeText } from '../parts/format.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './show-head.css';

type Props = {
  open: ActOnScreen;
  move: Move | null;
  isArmed: boolean;
  /** The line check is on. */
  checks: boolean;
  lines: readonly CheckLine[];
  results: ReadonlyMap<Id, LineResult>;
  onBegin: () => void;
  onCheck: () => void;
  onNote: () => void;
  onArm: () => void;
  onDisarm: () => void;
  onMoveOn: () => void;
};

/** Where the act stands, and what can be done with it: the way to the next act takes two presses. */
export function ShowHead({ open, move, isArmed, checks, lines, results, ...on }: Props) {
  const text = words.show;
  const { act } = open.sheet;
  const { all, left, later } = progressOf(lines, results);
  return (
    <header className="show-head">
      <WhereItStands act={act} />
      <div className="show-tools">
        <button type="button" aria-pressed={checks} onClick={on.onCheck}>
          {text.check} <kbd>L</kbd>
          <span className="show-tool-note">{text.checkOf(all - left - later, all)}</span>
        </button>
        <button type="button" onClick={on.onNote}>
          {text.note} <kbd>T</kbd>
        </button>
        {act.state !== 'on stage' && (
          <button type="button" onClick={on.onBegin}>
            {text.begin} <kbd>B</kbd>
          </button>
        )}
        {move && (
          <button type="button" className="show-next" aria-expanded={isArmed} onClick={on.onArm}>
            {move.comes ? text.next(move.comes.name) : text.endOfDay} <kbd>N</kbd>
          </button>
        )}
      </div>
      {isArmed && move && <Armed move={move} onMoveOn={on.onMoveOn} onDisarm={on.onDisarm} />}
    </header>
  );
}

function Armed({ move, onMoveOn, onDisarm }: { move: Move } & Pick<Props, 'onMoveOn' | 'onDisarm'>) {
  const text = words.show;
  return (
    <div className="show-armed" role="alert">
      <p>
        <strong>{text.armed('N')}</strong> {text.ends(move.ends.name)}{' '}
        {move.comes ? text.comes(move.comes.name) : text.noneComes}
      </p>
      <button type="button" className="main" onClick={onMoveOn}>
        {text.moveOn} <kbd>N</kbd>
      </button>
      <button type="button" onClick={onDisarm}>
        {text.notYet} <kbd>Esc</kbd>
      </button>
    </div>
  );
}

function WhereItStands({ act }: { act: Act }) {
  const { show, day, acts } = useHere();
  const text = words.show;
  const run = runOf(show, act.id);
  const ticks = ticksOf(show, act.id);
  const before = acts[acts.findIndex((it) => it.id === act.id) - 1];
  const isChangingOver = act.state !== 'on stage' && act.state !== 'done' && ticks.has(changeoverBegan);
  const when =
    act.state === 'on stage' && run?.beganAt
      ? text.since(clockText(run.beganAt))
      : run?.endedAt
        ? text.from(run.beganAt && clockText(run.beganAt), clockText(run.endedAt))
        : '';
  return (
    <section className="show-now" aria-label={text.now}>
      <p className="show-state">
        <strong>
          {text.state[act.state]} {when}
        </strong>
        {act.startMinute !== null && act.endMinute !== null && (
          <span>{text.planned(timeText(act.startMinute), timeText(act.endMinute))}</span>
        )}
      </p>
      {isChangingOver && day && before && (
        <RunningClock to={act} ticks={ticks} secondsThere={secondsBetween(day, before, act)} />
      )}
    </section>
  );
}
