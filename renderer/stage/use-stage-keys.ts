import { type FocusEvent, type KeyboardEvent, type RefObject, useRef } from 'react';
import type { StagePlace } from '../../core/show/stage-place.ts';
import { endPreview, movingMarks, shiftMarks } from './drawing-preview.ts';
import type { LaidOutMark } from './laid-out.ts';
import { arrowWays, nextMark } from './next-mark.ts';
import { type StageActs, toggled } from './stage-acts.ts';
import { type ScreenPoint, toScreen, wayInMetres, wayOnScreen } from './stage-view.ts';

const stepM = 0.1;
const largeStepM = 1;

type Given = {
  svg: RefObject<SVGSVGElement | null>;
  acts: StageActs;
  /** The mark that the keyboard is at. */
  focused: LaidOutMark | undefined;
  cancelPointer: () => boolean;
  takeOff: () => void;
  toPanel: () => void;
};

/**
 * The keys of the drawing. Arrows go from mark to mark; at one that is chosen they move what is chosen. As long as
 * an arrow is held it is one move: it is kept when the key is let go.
 */
export function useStageKeys({ svg, acts, focused, cancelPointer, takeOff, toPanel }: Given) {
  const pending = useRef<StagePlace | null>(null);
  const keep = () => {
    const by = pending.current;
    pending.current = null;
    if (svg.current) endPreview(svg.current);
    if (by) acts.moveBy(by);
  };
  const isChosen = focused?.things.every(({ key }) => acts.chosen.has(key)) ?? false;

  const move = (way: ScreenPoint, step: number) => {
    const by = wayInMetres({ side: acts.view.side, pxPerM: 1 / step }, way);
    pending.current = {
      xM: (pending.current?.xM ?? 0) + by.xM,
      yM: (pending.current?.yM ?? 0) + by.yM,
    };
    if (!svg.current) return;
    shiftMarks(movingMarks(svg.current, acts.moving), wayOnScreen(acts.view, pending.current));
  };
  const walk = (way: ScreenPoint) => {
    keep();
    if (!focused) return;
    const placed = acts.marks.map((mark) => ({ key: mark.key, at: markPoint(acts, mark) }));
    const next = nextMark(placed, markPoint(acts, focused), way);
    if (next !== null) acts.focusOn(next);
  };

  const arrow = (event: KeyboardEvent, way: ScreenPoint) => {
    if (isChosen && !isCtrl(event)) move(way, event.shiftKey ? largeStepM : stepM);
    else walk(way);
  };
  const letGo = () => {
    pending.current = null;
    if (svg.current) endPreview(svg.current);
    if (!cancelPointer()) acts.choose([]);
  };
  const ownKeys = focused?.things.map(({ key }) => key) ?? [];
  const open = () => {
    if (isChosen && acts.chosen.size === ownKeys.length) toPanel();
    else acts.choose(ownKeys);
  };
  const named = new Map([
    ['Escape', letGo],
    [' ', () => acts.choose(toggled(acts.chosen, ownKeys))],
    ['Enter', open],
    ['Delete', () => isChosen && takeOff()],
  ]);

  /** True where the key was one of the drawing's. */
  const press = (event: KeyboardEvent): boolean => {
    const way = arrowWays[event.key];
    const run = named.get(event.key);
    if (event.altKey) return false;
    if (way) arrow(event, way);
    else if (isCtrl(event) && event.key.toLowerCase() === 'a')
      acts.choose(acts.marks.flatMap((mark) => mark.things.map(({ key }) => key)));
    else if (run && !isCtrl(event)) run();
    else return false;
    return true;
  };
  return {
    onKeyDown: (event: KeyboardEvent) => {
      if (press(event)) event.preventDefault();
    },
    onKeyUp: (event: KeyboardEvent) => {
      if (arrowWays[event.key]) keep();
    },
    onBlur: keep,
    onFocus: (event: FocusEvent) => {
      const key = event.target.closest<SVGElement>('[data-mark]')?.dataset.mark;
      if (key !== undefined) acts.focusOn(key);
    },
  };
}

const isCtrl = (event: KeyboardEvent) => event.ctrlKey || event.metaKey;

function markPoint({ view }: StageActs, mark: LaidOutMark): ScreenPoint {
  const at = toScreen(view, mark.at);
  return { x: at.x + mark.aside.x, y: at.y + mark.aside.y };
}
