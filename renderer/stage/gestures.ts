import { directionTo } from '../../core/acoustics/geometry.ts';
import type { StagePlace } from '../../core/show/stage-place.ts';
import { words } from '../wording/words.ts';
import { withinHalfTurn } from './arrange.ts';
import {
  endPreview,
  movingMarks,
  shiftMarks,
  showFrame,
  showGuides,
  showPanned,
  showReading,
  showTurned,
} from './drawing-preview.ts';
import { linesOfOthers, snapped, unsnapped } from './snap.ts';
import type { StageActs } from './stage-acts.ts';
import { isPlaced, type StageThing } from './stage-objects.ts';
import {
  pannedView,
  type ScreenPoint,
  toMetres,
  toScreen,
  wayInMetres,
  wayOnScreen,
  zoomedView,
} from './stage-view.ts';

/** A pointer that went down on the drawing: where, and what it can do. */
export type Hand = { svg: SVGSVGElement; acts: () => StageActs; start: ScreenPoint };
/** `isFree`: a key suspends snapping. `end` keeps what was done; without it nothing was. */
export type Gesture = { move(at: ScreenPoint, isFree: boolean): void; end(): void };

/** A hand is not steady: a shorter way is a press. */
const pressPx = 5;
const snapReachPx = 8;
const aimStepDeg = 15;

const between = (from: ScreenPoint, to: ScreenPoint): ScreenPoint => ({ x: to.x - from.x, y: to.y - from.y });
const length = ({ x, y }: ScreenPoint) => Math.hypot(x, y);

/** Moves what is chosen; `onPress` runs where it was only pressed. */
export function moveGesture({ svg, acts, start }: Hand, grabbed: StageThing, onPress: () => void): Gesture {
  let going: { marks: SVGGElement[]; lines: ReturnType<typeof linesOfOthers> } | null = null;
  let by: StagePlace | null = null;
  return {
    move(at, isFree) {
      const { things, moving, settings, view } = acts();
      if (!grabbed.at || (!going && length(between(start, at)) < pressPx)) return;
      if (!going) {
        going = { marks: movingMarks(svg, moving), lines: linesOfOthers(things.filter(isPlaced), moving) };
      }
      const way = wayInMetres(view, between(start, at));
      const wanted = { xM: grabbed.at.xM + way.xM, yM: grabbed.at.yM + way.yM };
      const found =
        isFree || !settings.snaps
          ? unsnapped(wanted)
          : snapped(wanted, going.lines, snapReachPx / view.pxPerM);
      by = { xM: found.at.xM - grabbed.at.xM, yM: found.at.yM - grabbed.at.yM };
      shiftMarks(going.marks, wayOnScreen(view, by));
      const onScreen = toScreen(view, found.at);
      showGuides(svg, found.alongX === null ? null : onScreen.x, found.alongY === null ? null : onScreen.y);
      showReading(svg, words.stage.at(found.at.xM, found.at.yM), at);
    },
    end() {
      if (by) acts().moveBy(by);
      else onPress();
    },
  };
}

/** Turns the front of a wedge or a microphone towards the pointer. */
export function turnGesture({ svg, acts, start }: Hand, thing: StageThing): Gesture {
  let aimDeg: number | null = null;
  return {
    move(at, isFree) {
      if (!thing.at || (aimDeg === null && length(between(start, at)) < pressPx)) return;
      const pointed = directionTo({ ...thing.at, zM: 0 }, { ...toMetres(acts().view, at), zM: 0 });
      if (!pointed) return;
      const step = isFree ? 1 : aimStepDeg;
      aimDeg = withinHalfTurn(Math.round(pointed.bearingDegrees / step) * step);
      showTurned(svg, thing.key, aimDeg - (thing.aimDeg ?? 0));
      showReading(svg, words.stage.degrees(aimDeg), at);
    },
    end() {
      if (aimDeg !== null) acts().turnTo(thing, aimDeg);
    },
  };
}

/** Pushes the drawing; a press on the bare floor lets go of everything. */
export function panGesture({ svg, acts, start }: Hand): Gesture {
  let way: ScreenPoint | null = null;
  return {
    move(at) {
      const pushed = between(start, at);
      if (!way && length(pushed) < pressPx) return;
      way = pushed;
      showPanned(svg, way);
    },
    end() {
      const { view, zoomTo, choose } = acts();
      if (way) zoomTo(pannedView(view, way));
      else choose([]);
    },
  };
}

/** A frame that is drawn open chooses what stands in it, besides what was chosen. */
export function frameGesture({ svg, acts, start }: Hand): Gesture {
  let end = start;
  return {
    move(at) {
      end = at;
      showFrame(svg, start, end);
    },
    end() {
      const { things, view, chosen, choose } = acts();
      const inside = things.filter(isPlaced).filter((it) => {
        const { x, y } = toScreen(view, it.at);
        return isBetween(x, start.x, end.x) && isBetween(y, start.y, end.y);
      });
      choose([...chosen, ...inside.map(({ key }) => key)]);
    },
  };
}

const isBetween = (value: number, one: number, other: number) =>
  value >= Math.min(one, other) && value <= Math.max(one, other);

/** Two fingers: nearer or farther, and pushed with their middle. */
export function pinchGesture({ svg, acts }: Hand, pointers: ReadonlyMap<number, ScreenPoint>): Gesture {
  const { view } = acts();
  const began = spread(pointers);
  endPreview(svg);
  return {
    move() {
      const now = spread(pointers);
      if (!began || !now || began.apart === 0) return;
      const zoomed = zoomedView(view, now.apart / began.apart, began.middle);
      acts().zoomTo(pannedView(zoomed, between(began.middle, now.middle)));
    },
    end: () => undefined,
  };
}

function spread(pointers: ReadonlyMap<number, ScreenPoint>) {
  const [one, other] = pointers.values();
  if (!one || !other) return null;
  return {
    apart: length(between(one, other)),
    middle: { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 },
  };
}
