import { useLayoutEffect, useMemo, useRef } from 'react';
import { lineReaches } from '../../core/derive/box-reach.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { worstOf } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { placeOfFinding } from '../state/finding-places.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { findingsOfThings } from './findings-of-things.ts';
import { ManyPanel } from './many-panel.tsx';
import type { Mark } from './marks.ts';
import { PlotList } from './plot-list.tsx';
import { StageDrawing } from './stage-drawing.tsx';
import { type MarkFacts, StageMark } from './stage-mark.tsx';
import { isPlaced, keyOfThing } from './stage-objects.ts';
import { StageTools, zoomStep } from './stage-tools.tsx';
import type { Size } from './stage-view.ts';
import { ThingPanel } from './thing-panel.tsx';
import { useSize } from './use-size.ts';
import { useStage } from './use-stage.ts';
import { useStageKeys } from './use-stage-keys.ts';
import { useStagePointer } from './use-stage-pointer.ts';

const beforeLaidOut: Size = { width: 800, height: 500 };

export function StageOfAct({ open }: { open: ActOnScreen }) {
  const { look, view: window } = useHere();
  const room = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const panel = useRef<HTMLElement>(null);
  const size = useSize(room);
  const stage = useStage(open, size ?? beforeLaidOut, svg);
  const { acts, settings, chosenThings, focused } = stage;
  const { things, marks, chosen, view, choose } = acts;
  const pointer = useStagePointer(svg, acts);
  const keys = useStageKeys({
    svg,
    acts,
    focused,
    cancelPointer: pointer.cancel,
    takeOff: stage.takeOff,
    toPanel: () => panel.current?.querySelector('input')?.focus(),
  });
  const toPaper = () => look({ moment: 'paper', sheet: 'stage plot' });
  useMomentKeys((key) => {
    if (key === 'p') toPaper();
    else return pressed(stage, key);
    return true;
  });

  const chosenName = [...chosen].join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is chosen anew is read from its top.
  useLayoutEffect(() => {
    if (panel.current) panel.current.scrollTop = 0;
  }, [chosenName]);

  const findings = useMemo(() => findingsOfThings(open, things), [open, things]);
  const reaches = useMemo(() => lineReaches(open.sheet, open.derived.plan), [open]);
  const ways = reaches.filter((it) => chosen.has(keyOfThing('box', it.boxId)));
  const shownReaches = settings.showsReach ? reaches : ways;
  const text = words.stage;
  const [alone] = chosenThings.length === 1 ? chosenThings : [];
  const factsOf = (mark: Mark): MarkFacts => {
    const [thing] = mark.things;
    const isChosen = mark.things.every((it) => chosen.has(it.key));
    const found = [...new Set(mark.things.flatMap((it) => findings.get(it.key) ?? []))];
    const box = thing.kind === 'box' && open.sheet.boxes.find((it) => it.id === thing.id);
    return {
      isChosen,
      isAlone: alone !== undefined && isChosen,
      isListened: thing.kind === 'wedge' && thing.id === window.mixId,
      canFocus: mark === focused,
      showsPatterns: settings.showsPatterns,
      reachM: box && (isChosen || settings.showsReach) ? box.reachM : null,
      isOutOfReach: shownReaches.some(
        (it) =>
          it.reaches === false && mark.things.some(({ kind, id }) => kind === 'source' && id === it.sourceId),
      ),
      severity: worstOf(found),
      findings: found.length,
    };
  };
  return (
    <section className="stage" aria-label={words.moments.stage}>
      <StageTools
        settings={settings}
        onSet={stage.set}
        canMirror={chosenThings.some(isPlaced)}
        onMirror={stage.mirror}
        onZoom={stage.zoomBy}
        onFit={stage.fit}
      />
      <div className="stage-room" data-region="drawing">
        <div ref={room} className="stage-drawing">
          {size && (
            <StageDrawing
              svg={svg}
              label={text.drawing(open.sheet.act.name, text.seen[settings.side])}
              rig={open.sheet.rig}
              view={view}
              ways={ways}
              things={things}
              handlers={{ ...pointer.handlers, ...keys }}
            >
              {marks.map((mark) => (
                <StageMark key={mark.key} mark={mark} view={view} facts={factsOf(mark)} />
              ))}
            </StageDrawing>
          )}
        </div>
        <div className="stage-said">
          <p className="quiet">
            {text.measure(open.sheet.rig.stageWidthM, open.sheet.rig.stageDepthM)}{' '}
            <span role="status">{stage.said}</span>
          </p>
          <button type="button" className="plain" title={text.paperNote} onClick={toPaper}>
            {text.paper}
          </button>
        </div>
      </div>
      <aside
        ref={panel}
        className="stage-panel"
        aria-label={text.panel}
        data-region="side"
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || event.defaultPrevented) return;
          event.preventDefault();
          stage.backToDrawing();
        }}
      >
        {chosenThings.length > 0 && (
          <button type="button" onClick={() => choose([])}>
            {text.back}
          </button>
        )}
        {chosenThings.length === 0 && (
          <PlotList
            rig={open.sheet.rig}
            things={things}
            onChoose={(key) => choose([key])}
            onPutOn={stage.putOn}
          />
        )}
        {alone && (
          <ThingPanel
            key={alone.key}
            open={open}
            thing={alone}
            findings={findings.get(alone.key) ?? []}
            onTurn={stage.turn}
            onAim={(aimDeg) => acts.turnTo(alone, aimDeg)}
            onTakeOff={stage.takeOff}
            onChoose={(key) => choose([key])}
            onFinding={(finding) =>
              look({
                mixId: null,
                sourceId: null,
                ...placeOfFinding(open, finding),
                side: 'details',
                moment: 'mixes',
              })
            }
          />
        )}
        {chosenThings.length > 1 && (
          <ManyPanel
            things={chosenThings}
            onMove={acts.moveBy}
            onMirror={stage.mirror}
            onTakeOff={stage.takeOff}
            onChoose={(key) => choose([key])}
          />
        )}
      </aside>
    </section>
  );
}

const aimStepDeg = 15;

/** Does what a single key of the moment says; false where it is none of them. */
function pressed(stage: ReturnType<typeof useStage>, key: string): boolean {
  const { settings, set } = stage;
  switch (key) {
    case 'v':
      set({ side: settings.side === 'engineer' ? 'audience' : 'engineer' });
      break;
    case 'g':
      set({ snaps: !settings.snaps });
      break;
    case 'm':
      stage.mirror();
      break;
    case 'r':
      stage.turn(aimStepDeg);
      break;
    case 'R':
      stage.turn(-aimStepDeg);
      break;
    case '+':
      stage.zoomBy(zoomStep);
      break;
    case '-':
      stage.zoomBy(1 / zoomStep);
      break;
    case '0':
      stage.fit();
      break;
    default:
      return false;
  }
  return true;
}
