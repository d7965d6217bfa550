import { type ReactNode, type RefObject, useMemo } from 'react';
import type { LineReach } from '../../core/derive/box-reach.ts';
import type { Rig } from '../../core/show/rig.ts';
import { StageFloor } from './stage-floor.tsx';
import { isPlaced, keyOfThing, type StageThing } from './stage-objects.ts';
import { type StageView, toScreen } from './stage-view.ts';

type Props = {
  svg: RefObject<SVGSVGElement | null>;
  label: string;
  rig: Rig;
  view: StageView;
  /** The ways from a chosen box to its lines. */
  ways: readonly LineReach[];
  things: readonly StageThing[];
  handlers: React.SVGProps<SVGSVGElement>;
  children: ReactNode;
};

/** The floor to scale, the things on it, and over them what shows only while something is moved. */
export function StageDrawing({ svg, label, rig, view, ways, things, handlers, children }: Props) {
  const { width, height } = view.size;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be drawn in.
    <svg
      ref={svg}
      className="stage-svg"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="group"
      aria-label={label}
      {...handlers}
    >
      <g data-content>
        <StageFloor rig={rig} view={view} />
        <CableWays ways={ways} things={things} view={view} />
        {children}
      </g>
      <line data-guide="x" className="stage-guide" y1={0} y2={height} />
      <line data-guide="y" className="stage-guide" x1={0} x2={width} />
      <rect data-frame className="stage-frame" />
      <text data-reading className="stage-reading" dx={16} dy={-16} />
    </svg>
  );
}

function CableWays({ ways, things, view }: Pick<Props, 'ways' | 'things' | 'view'>) {
  const places = useMemo(() => new Map(things.filter(isPlaced).map((it) => [it.key, it.at])), [things]);
  return (
    <svg aria-hidden="true" className="stage-unheard stage-ways">
      {ways.map(({ sourceId, boxId, reaches }) => {
        const from = places.get(keyOfThing('box', boxId));
        const to = places.get(keyOfThing('source', sourceId));
        if (!from || !to) return null;
        const [a, b] = [toScreen(view, from), toScreen(view, to)];
        const look = reaches === false ? 'is-too-far' : '';
        return <line key={sourceId} className={look} x1={a.x} y1={a.y} x2={b.x} y2={b.y} />;
      })}
    </svg>
  );
}
