import type { Rig } from '../../core/show/rig.ts';
import { words } from '../wording/words.ts';
import { type StageView, toScreen } from './stage-view.ts';

/** A measure stands at every second line of the grid. */
const measureEveryM = 2;
const outsidePx = 14;

/** The floor with its metre grid, its measures from the centre line and the front edge, and its sides by name. */
export function StageFloor({ rig, view }: { rig: Rig; view: StageView }) {
  const { stageWidthM: widthM, stageDepthM: depthM } = rig;
  const half = widthM / 2;
  const one = toScreen(view, { xM: -half, yM: 0 });
  const other = toScreen(view, { xM: half, yM: depthM });
  const [left, right] = [Math.min(one.x, other.x), Math.max(one.x, other.x)];
  const [top, bottom] = [Math.min(one.y, other.y), Math.max(one.y, other.y)];
  const x = (xM: number) => toScreen(view, { xM, yM: 0 }).x;
  const y = (yM: number) => toScreen(view, { xM: 0, yM }).y;
  const front = y(0);
  // Everything that is written at the front edge stands outside of it, on whichever side that is.
  const out = front > (top + bottom) / 2 ? 1 : -1;
  const text = words.stage;
  return (
    <svg className="stage-unheard" aria-hidden="true">
      <rect className="stage-floor" x={left} y={top} width={right - left} height={bottom - top} />
      <path className="stage-grid" d={gridPath(view, half, depthM)} />
      <line className="stage-centre" x1={x(0)} x2={x(0)} y1={top} y2={bottom} />
      <line className="stage-front" x1={left} x2={right} y1={front} y2={front} />
      {upTo(half).map((m) => (
        <g key={m} className="stage-measure">
          <text x={x(m)} y={front + out * outsidePx}>
            {m}
          </text>
          {m > 0 && (
            <text x={x(-m)} y={front + out * outsidePx}>
              {m}
            </text>
          )}
        </g>
      ))}
      {upTo(depthM).map((m) => (
        <g key={m} className="stage-measure">
          <text x={left - outsidePx} y={y(m)}>
            {m}
          </text>
        </g>
      ))}
      <g className="stage-side">
        <text x={(left + right) / 2} y={front + out * (outsidePx + 17)}>
          {text.audience}
        </text>
        <text x={x(-half * 0.75)} y={front + out * (outsidePx + 17)}>
          {text.stageRight}
        </text>
        <text x={x(half * 0.75)} y={front + out * (outsidePx + 17)}>
          {text.stageLeft}
        </text>
      </g>
    </svg>
  );
}

/** 0, 2, 4 ... up to a length. */
function upTo(m: number): number[] {
  return Array.from({ length: Math.floor(m / measureEveryM) + 1 }, (_, nth) => nth * measureEveryM);
}

/** A line every metre, counted from the centre line and from the front edge. */
function gridPath(view: StageView, half: number, depthM: number): string {
  const parts: string[] = [];
  const line = (fromX: number, fromY: number, toX: number, toY: number) => {
    const from = toScreen(view, { xM: fromX, yM: fromY });
    const to = toScreen(view, { xM: toX, yM: toY });
    parts.push(`M${from.x} ${from.y}L${to.x} ${to.y}`);
  };
  for (let x = -Math.floor(half); x <= half; x++) line(x, 0, x, depthM);
  for (let y = 1; y < depthM; y++) line(-half, y, half, y);
  return parts.join('');
}
