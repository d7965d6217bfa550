import { cueFromMiddleM } from '../../core/show/cue-place.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';

/** How far the engineer listens from the stage, by the drawing and as measured, and which of the two counts. */
export function CueDistance({ open }: { open: ActOnScreen }) {
  const { rig, cueOutputs } = open.sheet;
  const text = words.stage.cue;
  const onPlotM = cueFromMiddleM(rig);
  const measuredM = cueOutputs.find((it) => it.kind === 'wedge')?.distanceFromStageM ?? null;
  if (onPlotM === null) return <p className="quiet">{text.noPlace}</p>;
  return (
    <p>
      {text.onPlot(words.stage.metres(onPlotM))}{' '}
      {measuredM === null ? text.counts : text.measured(words.stage.metres(measuredM))}
    </p>
  );
}
