import { useState } from 'react';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { itemsOnStage, type StageItem } from './stage-items.ts';
import './stage-screen.css';

/** Room around the stage for names, in metres. */
const marginM = 1;

/** The stage to scale with everything that has a place, and a list of what has none yet. */
export function StageScreen() {
  const { open, look } = useHere();
  const [isMirrored, setMirrored] = useState(false);
  const text = words.stage;
  if (!open)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  const { placed, unplaced } = itemsOnStage(open);
  return (
    <section className="stage" aria-label={words.moments.stage}>
      <div className="stage-tools">
        <button
          type="button"
          data-first-focus
          aria-pressed={isMirrored}
          onClick={() => setMirrored(!isMirrored)}
        >
          {isMirrored ? text.fromStage : text.fromAudience}
        </button>
        <span className="quiet">{isMirrored ? text.seenFromAudience : text.seenFromStage}</span>
      </div>
      <StageDrawing open={open} items={placed} isMirrored={isMirrored} />
      <aside className="stage-unplaced" aria-label={text.unplaced}>
        <h2>{text.unplaced}</h2>
        {unplaced.length === 0 ? (
          <p className="quiet">{text.allPlaced}</p>
        ) : (
          <ul>
            {unplaced.map((item) => (
              <li key={item.key}>
                <span className="quiet">{text.kinds[item.kind]}</span> {item.name}
              </li>
            ))}
          </ul>
        )}
      </aside>
    </section>
  );
}

function StageDrawing({
  open,
  items,
  isMirrored,
}: {
  open: ActOnScreen;
  items: readonly StageItem[];
  isMirrored: boolean;
}) {
  const { rig } = open.sheet;
  const { look, view } = useHere();
  const text = words.stage;
  const [width, depth] = [rig.stageWidthM, rig.stageDepthM];
  // Who looks at the audience has the front edge before them and stage left at their left; the audience, the reverse.
  const at = (item: StageItem) =>
    isMirrored ? { x: width / 2 + item.xM, y: depth - item.yM } : { x: width / 2 - item.xM, y: item.yM };
  return (
    <div className="stage-drawing">
      <svg
        viewBox={`${-marginM} ${-marginM} ${width + 2 * marginM} ${depth + 2 * marginM}`}
        role="img"
        aria-label={text.drawing(open.sheet.act.name, items.length)}
      >
        <rect className="stage-floor" x={0} y={0} width={width} height={depth} />
        <text className="stage-side" x={width / 2} y={isMirrored ? depth + 0.7 : -0.35}>
          {text.audience}
        </text>
        {items.map((item) => {
          const { x, y } = at(item);
          const isChosen = item.mixId !== null && item.mixId === view.mixId;
          return (
            // biome-ignore lint/a11y/noStaticElementInteractions: the same choice is made by keyboard on Show and Mixes.
            <g
              key={item.key}
              className={`stage-${item.kind}${isChosen ? ' is-chosen' : ''}`}
              onClick={() => item.mixId !== null && look({ mixId: item.mixId })}
            >
              {item.reachM !== null && <circle className="stage-reach" cx={x} cy={y} r={item.reachM} />}
              {item.kind === 'performer' ? (
                <circle cx={x} cy={y} r={0.28} />
              ) : item.kind === 'box' ? (
                <rect x={x - 0.3} y={y - 0.2} width={0.6} height={0.4} />
              ) : (
                <path
                  d={`M${x - 0.35} ${y + 0.2}L${x - 0.22} ${y - 0.2}H${x + 0.22}L${x + 0.35} ${y + 0.2}Z`}
                />
              )}
              <text x={x} y={y + (item.kind === 'box' ? 0.12 : 0.62)}>
                {item.name}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );
}
