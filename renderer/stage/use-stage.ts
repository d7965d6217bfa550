import { type RefObject, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { extentOfPlot } from '../../core/sheets/plot-geometry.ts';
import type { StagePlace } from '../../core/show/stage-place.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { aimed, mirrored, moved, placedAt, takenOff, turned } from './arrange.ts';
import { laidOut } from './laid-out.ts';
import { marksOf } from './marks.ts';
import { proposedPlace } from './proposed-place.ts';
import type { StageActs } from './stage-acts.ts';
import { isPlaced, type StageThing, thingsOnStage, withTheirThings } from './stage-objects.ts';
import { useStageSettings } from './stage-settings.ts';
import { fittedView, type Size, type StageView, zoomedView } from './stage-view.ts';

/** What is on the stage of an act, what of it is chosen, and everything that can be done with it. */
export function useStage(open: ActOnScreen, size: Size, svg: RefObject<SVGSVGElement | null>) {
  const { change, look } = useHere();
  const { sheet } = open;
  const { settings, set } = useStageSettings();
  const [chosenKeys, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [focusKey, setFocusKey] = useState<string | null>(null);
  const [zoomed, setZoomed] = useState<Pick<StageView, 'pxPerM' | 'middle'> | null>(null);
  const [said, setSaid] = useState('');
  const wantsFocus = useRef(false);

  const things = useMemo(() => thingsOnStage(sheet), [sheet]);
  // A row that another window removed is not chosen any more.
  const chosen = useMemo(
    () => new Set(things.flatMap(({ key }) => (chosenKeys.has(key) ? [key] : []))),
    [things, chosenKeys],
  );
  const chosenThings = things.filter(({ key }) => chosen.has(key));
  const moving = useMemo(
    () => withTheirThings(things, chosen, settings.takesAlong),
    [things, chosen, settings.takesAlong],
  );
  const { leftM, rightM, frontM, backM } = extentOfPlot(
    sheet.rig,
    things.filter(isPlaced).map(({ at }) => at),
  );
  // The same drawing stays the same view, so that marks that did not move are not drawn again.
  const view = useMemo((): StageView => {
    if (zoomed) return { side: settings.side, size, ...zoomed };
    return fittedView(settings.side, size, { leftM, rightM, frontM, backM });
  }, [zoomed, settings.side, size, leftM, rightM, frontM, backM]);
  const marks = useMemo(() => laidOut(marksOf(things, chosen, moving), view), [things, chosen, moving, view]);
  const focused = marks.find((mark) => mark.things.some(({ key }) => key === focusKey)) ?? marks[0];

  useLayoutEffect(() => {
    if (!wantsFocus.current) return;
    wantsFocus.current = false;
    svg.current?.querySelector<SVGGElement>('[data-mark][tabindex="0"]')?.focus();
  });

  const choose = (keys: Iterable<string>) => {
    const next = new Set(keys);
    setChosen(next);
    const [only, other] = things.filter(({ key }) => next.has(key));
    if (only) setFocusKey(only.key);
    if (only && !other) look(listeningTo(open, only));
  };
  const say = (done: readonly StageThing[], by: StagePlace) => {
    const first = done.find(isPlaced);
    if (first)
      setSaid(words.stage.isAt(first.name, words.stage.at(first.at.xM + by.xM, first.at.yM + by.yM)));
  };
  const going = () => things.filter(({ key }) => moving.has(key));
  const acts: StageActs = {
    view,
    settings,
    things,
    marks,
    chosen,
    moving,
    choose,
    focusOn: (key) => {
      if (focused?.things.some((it) => it.key === key)) return;
      wantsFocus.current = true;
      setFocusKey(key);
    },
    moveBy: (by) => {
      change(moved(sheet, going(), by));
      say(chosenThings, by);
    },
    turnTo: (thing, aimDeg) => change(aimed(sheet, thing, aimDeg)),
    zoomTo: ({ pxPerM, middle }) => setZoomed({ pxPerM, middle }),
  };
  return {
    acts,
    settings,
    set,
    said,
    chosenThings,
    focused,
    mirror: () => change(mirrored(sheet, going())),
    turn: (byDeg: number) => change(turned(sheet, chosenThings, byDeg)),
    takeOff: () => change(takenOff(sheet, chosenThings)),
    putOn: (thing: StageThing) => {
      change(placedAt(sheet, thing, proposedPlace(sheet, thing)));
      wantsFocus.current = true;
      choose([thing.key]);
    },
    fit: () => setZoomed(null),
    zoomBy: (factor: number) => {
      const middle = { x: size.width / 2, y: size.height / 2 };
      acts.zoomTo(zoomedView(view, factor, middle));
    },
    backToDrawing: () => {
      wantsFocus.current = true;
      setSaid('');
      setFocusKey(focused?.key ?? null);
    },
  };
}

/** The listening line follows what is chosen. */
function listeningTo({ sheet }: ActOnScreen, { kind, id }: StageThing) {
  if (kind === 'wedge') return { mixId: id };
  if (kind === 'source') return { sourceId: id };
  const mixId = kind === 'performer' ? sheet.listeners.find((it) => it.performerId === id)?.mixId : undefined;
  return mixId === undefined ? {} : { mixId };
}
