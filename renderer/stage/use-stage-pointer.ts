import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { endPreview, keySeparator } from './drawing-preview.ts';
import type { Gesture, Hand } from './gestures.ts';
import { frameGesture, moveGesture, panGesture, pinchGesture, turnGesture } from './gestures.ts';
import { type StageActs, toggled } from './stage-acts.ts';
import { type ScreenPoint, zoomedView } from './stage-view.ts';

const zoomPerWheelPx = 0.0015;

/** Mouse, pen and touch on the drawing. One finger or the mouse moves, turns, pans; two fingers zoom. */
export function useStagePointer(svg: RefObject<SVGSVGElement | null>, acts: StageActs) {
  const latest = useRef(acts);
  latest.current = acts;
  const gesture = useRef<Gesture | null>(null);
  const pointers = useRef(new Map<number, ScreenPoint>());

  useEffect(() => {
    const drawing = svg.current;
    if (!drawing) return;
    // With Ctrl, as two fingers on a pad say it too; without, the wheel is the page's, which may need to scroll.
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      const { view, zoomTo } = latest.current;
      zoomTo(zoomedView(view, Math.exp(-event.deltaY * zoomPerWheelPx), pointOf(drawing, event)));
    };
    // React listens to the wheel passively, and then the page would scroll or zoom too.
    drawing.addEventListener('wheel', wheel, { passive: false });
    return () => drawing.removeEventListener('wheel', wheel);
  }, [svg]);

  const cancel = (): boolean => {
    const wasActive = gesture.current !== null;
    gesture.current = null;
    if (svg.current) endPreview(svg.current);
    return wasActive;
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    const drawing = svg.current;
    if (!drawing || event.button !== 0) return;
    const start = pointOf(drawing, event);
    pointers.current.set(event.pointerId, start);
    drawing.setPointerCapture(event.pointerId);
    const hand: Hand = { svg: drawing, acts: () => latest.current, start };
    const [one, other] = pointers.current.values();
    if (one && other) {
      cancel();
      gesture.current = pinchGesture(hand, pointers.current);
      return;
    }
    gesture.current = begin(hand, event);
  };

  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const drawing = svg.current;
    if (!drawing || !pointers.current.has(event.pointerId)) return;
    const at = pointOf(drawing, event);
    pointers.current.set(event.pointerId, at);
    gesture.current?.move(at, event.altKey || event.ctrlKey || event.metaKey);
  };

  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    pointers.current.delete(event.pointerId);
    const ended = gesture.current;
    gesture.current = null;
    ended?.end();
    if (svg.current) endPreview(svg.current);
  };

  const onPointerCancel = (event: PointerEvent<SVGSVGElement>) => {
    pointers.current.delete(event.pointerId);
    cancel();
  };

  return { cancel, handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel } };
}

function begin(hand: Hand, event: PointerEvent<SVGSVGElement>): Gesture | null {
  const { chosen, choose, focusOn, things } = hand.acts();
  const target = event.target instanceof Element ? event.target : null;
  const handle = target?.closest<SVGElement>('[data-handle]')?.dataset.handle;
  const turning = things.find((it) => it.key === handle);
  if (turning) return turnGesture(hand, turning);
  const keys = target?.closest<SVGElement>('[data-keys]')?.dataset.keys?.split(keySeparator) ?? [];
  const grabbed = things.find((it) => it.key === keys[0]);
  if (!grabbed) return event.shiftKey ? frameGesture(hand) : panGesture(hand);
  focusOn(grabbed.key);
  if (event.shiftKey) {
    choose(toggled(chosen, keys));
    return null;
  }
  const wereChosen = keys.every((key) => chosen.has(key));
  if (!wereChosen) choose(keys);
  return moveGesture(hand, grabbed, () => wereChosen && choose(keys));
}

function pointOf(drawing: SVGSVGElement, event: { clientX: number; clientY: number }): ScreenPoint {
  const { left, top } = drawing.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}
