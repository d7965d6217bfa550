import {
  boxSideM,
  cueDepthM,
  cueWidthM,
  performerRadiusM,
  rectangleCorners,
  wedgeCorners,
} from '../../core/sheets/plot-geometry.ts';
import type { StagePlace } from '../../core/show/stage-place.ts';
import { leastTargetPx, linesLabel, pillWidthPx } from './mark-look.ts';
import type { Mark } from './marks.ts';
import { pathOf } from './polar-path.ts';
import { type StageView, wayOnScreen } from './stage-view.ts';

const middle: StagePlace = { xM: 0, yM: 0 };
const half = leastTargetPx / 2;

/** The plain shape of a thing to scale, with its text upright, and room to press it. */
export function MarkShape({ mark, view }: { mark: Mark; view: StageView }) {
  const [thing] = mark.things;
  const outline = (corners: readonly StagePlace[]) =>
    pathOf(corners.map((corner) => wayOnScreen(view, corner)));
  const hit = <rect className="stage-hit" x={-half} y={-half} width={leastTargetPx} height={leastTargetPx} />;
  switch (thing.kind) {
    case 'performer': {
      const radius = performerRadiusM * view.pxPerM;
      // The name stands upstage of the circle: in front stand the microphones.
      const behind = Math.sign(wayOnScreen(view, { xM: 0, yM: 1 }).y);
      return (
        <>
          <circle className="stage-hit" r={Math.max(radius, half)} />
          <circle className="stage-shape" r={radius} />
          <text className="stage-name" y={behind * (Math.max(radius, 6) + 11)}>
            {thing.label}
          </text>
        </>
      );
    }
    case 'wedge':
      return (
        <>
          {hit}
          <g data-turns={thing.key}>
            <path className="stage-shape" d={outline(wedgeCorners(middle, thing.aimDeg))} />
          </g>
          <text className="stage-label">{thing.label}</text>
        </>
      );
    case 'box':
      return (
        <>
          {hit}
          <path className="stage-shape" d={outline(rectangleCorners(middle, boxSideM, boxSideM))} />
          <text className="stage-label">{thing.label}</text>
        </>
      );
    case 'cue':
      return (
        <>
          {hit}
          <path className="stage-shape" d={outline(rectangleCorners(middle, cueWidthM, cueDepthM))} />
          <text className="stage-label">{thing.label}</text>
        </>
      );
    case 'source': {
      const width = pillWidthPx(mark);
      const left = -width / 2;
      return (
        <>
          <rect className="stage-hit" x={left} y={-half} width={width} height={leastTargetPx} />
          <rect className="stage-shape" x={left} y={-9} width={width} height={18} rx={9} />
          <text className="stage-label">{linesLabel(mark)}</text>
        </>
      );
    }
  }
}
