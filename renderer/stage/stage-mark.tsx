import { memo } from 'react';
import type { Severity } from '../../core/show/words.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { words } from '../wording/words.ts';
import { keySeparator } from './drawing-preview.ts';
import type { LaidOutMark } from './laid-out.ts';
import { numbersOf, severityLeftPx } from './mark-look.ts';
import { MarkShape } from './mark-shape.tsx';
import type { Mark } from './marks.ts';
import { pathOf, pointAt, polarPoints } from './polar-path.ts';
import { hasAim, type PlacedThing } from './stage-objects.ts';
import { angleOnScreen, type StageView, toScreen } from './stage-view.ts';

const polarPx = 34;
const handlePx = 46;

export type MarkFacts = {
  isChosen: boolean;
  /** The only thing that is chosen, so that it can be turned by hand. */
  isAlone: boolean;
  isListened: boolean;
  canFocus: boolean;
  showsPatterns: boolean;
  /** Of a box; null: not shown. */
  reachM: number | null;
  isOutOfReach: boolean;
  severity: Severity | null;
  findings: number;
};

type Props = {
  mark: LaidOutMark;
  view: StageView;
  facts: MarkFacts;
};

/**
 * One thing on the drawing, or several lines at one spot: what it looks like, and what it is called. Every change
 * of the show makes all marks anew, but all except a few are as they were, and those are not drawn again.
 */
export const StageMark = memo(DrawnMark, (before, now) => {
  const looks = ({ mark, facts }: Props) => JSON.stringify([mark, facts]);
  return before.view === now.view && looks(before) === looks(now);
});

function DrawnMark({ mark, view, facts }: Props) {
  const { x, y } = toScreen(view, mark.at);
  const [thing] = mark.things;
  const { aside } = mark;
  const showsPattern = facts.showsPatterns || facts.isChosen;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot stand in a drawing.
    <g
      role="button"
      tabIndex={facts.canFocus ? 0 : -1}
      data-keys={mark.things.map(({ key }) => key).join(keySeparator)}
      data-mark={mark.key}
      className={classOf(mark, facts)}
      aria-pressed={facts.isChosen}
      aria-label={nameOfMark(mark, facts)}
    >
      <g transform={`translate(${x} ${y})`}>
        {facts.reachM !== null && <circle className="stage-reach" r={facts.reachM * view.pxPerM} />}
        {showsPattern && mark.things.map((it) => <Polar key={it.key} thing={it} view={view} />)}
        <g transform={`translate(${aside.x} ${aside.y})`}>
          <MarkShape mark={mark} view={view} />
          {facts.severity !== null && (
            <svg
              className="stage-severity"
              x={severityLeftPx(mark)}
              y={-21}
              width={15}
              height={15}
              aria-hidden="true"
            >
              <SeverityMark severity={facts.severity} says={false} />
            </svg>
          )}
          {facts.isOutOfReach && (
            <text className="stage-out-of-reach" y="21">
              {words.stage.outOfReach}
            </text>
          )}
        </g>
        {facts.isAlone && hasAim(thing) && <TurnHandle thing={thing} view={view} />}
      </g>
    </g>
  );
}

function classOf({ things: [{ kind }] }: Mark, { isChosen, isListened }: MarkFacts): string {
  return [`stage-mark stage-${kind}`, isChosen && 'is-chosen', isListened && 'is-listened']
    .filter(Boolean)
    .join(' ');
}

function nameOfMark(mark: Mark, { findings, isOutOfReach }: MarkFacts): string {
  const [first, ...others] = mark.things;
  const text = words.stage;
  const where = text.at(first.at.xM, first.at.yM);
  const points = others.length > 0 || first.aimDeg === null ? null : text.aim(first.aimDeg);
  return text.mark(calledOnMark(mark), where, [points, isOutOfReach ? text.outOfReach : null], findings);
}

function calledOnMark(mark: Mark): string {
  const [{ kind, name }, ...others] = mark.things;
  const text = words.stage;
  if (others.length > 0) {
    const names = mark.things.map((it) => it.name).join(', ');
    return text.linesMark(numbersOf(mark), mark.things.length, names);
  }
  if (kind === 'performer') return text.performerMark(name);
  return kind === 'source' ? text.lineMark(name) : name;
}

/** What a microphone picks up from where; a line from its middle where only its aim is known. */
function Polar({ thing, view }: { thing: PlacedThing; view: StageView }) {
  if (thing.kind !== 'source' || thing.aimDeg === null) return null;
  const front = angleOnScreen(view.side, thing.aimDeg);
  const tip = pointAt(front, polarPx + 6);
  return (
    <g data-turns={thing.key} className="stage-polar">
      {thing.pattern !== null && <path d={pathOf(polarPoints(thing.pattern, front, polarPx))} />}
      <line x1={0} y1={0} x2={tip.x} y2={tip.y} />
    </g>
  );
}

function TurnHandle({ thing, view }: { thing: PlacedThing; view: StageView }) {
  const front = angleOnScreen(view.side, thing.aimDeg ?? 0);
  const at = pointAt(front, handlePx);
  const from = pointAt(front, handlePx - 12);
  return (
    <g data-turns={thing.key}>
      <g data-handle={thing.key} className="stage-handle">
        <line x1={from.x * 0.5} y1={from.y * 0.5} x2={from.x} y2={from.y} />
        <circle className="stage-hit" cx={at.x} cy={at.y} r={14} />
        <circle className="stage-knob" cx={at.x} cy={at.y} r={7}>
          <title>{words.stage.turnHandle}</title>
        </circle>
      </g>
    </g>
  );
}
