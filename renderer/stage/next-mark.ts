import type { ScreenPoint } from './stage-view.ts';

/** Ways over the screen by arrow key. */
export const arrowWays: Readonly<Record<string, ScreenPoint>> = {
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
};

/** What lies aside counts this many times its way, so that an arrow goes straight on where it can. */
const asideWeight = 2;

/** The key of the nearest mark in a direction from where one is; null: none lies there. */
export function nextMark(
  marks: readonly { key: string; at: ScreenPoint }[],
  from: ScreenPoint,
  way: ScreenPoint,
): string | null {
  let best: { key: string; far: number } | null = null;
  for (const { key, at } of marks) {
    const by = { x: at.x - from.x, y: at.y - from.y };
    const ahead = by.x * way.x + by.y * way.y;
    if (ahead <= 0.5) continue;
    const far = ahead + asideWeight * Math.abs(by.x * way.y - by.y * way.x);
    if (!best || far < best.far) best = { key, far };
  }
  return best?.key ?? null;
}
