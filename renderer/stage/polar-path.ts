import { patternCoefficients, responseDb } from '../../core/acoustics/microphone-patterns.ts';
import type { MicPattern } from '../../core/show/words.ts';
import type { ScreenPoint } from './stage-view.ts';

const stepDeg = 6;

/**
 * The outline of a microphone's pattern around 0/0, its front at an angle clockwise from straight up: the share of
 * sound it picks up from each side, on the front all of it. It is amplitude, not reach.
 */
export function polarPoints(pattern: MicPattern, frontDeg: number, radiusPx: number): ScreenPoint[] {
  const points: ScreenPoint[] = [];
  for (let offAxisDeg = 0; offAxisDeg < 360; offAxisDeg += stepDeg) {
    const share = 10 ** (responseDb(patternCoefficients[pattern], offAxisDeg) / 20);
    points.push(pointAt(frontDeg + offAxisDeg, radiusPx * share));
  }
  return points;
}

/** A point away from 0/0, at an angle clockwise from straight up. */
export function pointAt(angleDeg: number, farPx: number): ScreenPoint {
  const angle = (angleDeg * Math.PI) / 180;
  return { x: farPx * Math.sin(angle), y: -farPx * Math.cos(angle) };
}

export function pathOf(points: readonly ScreenPoint[]): string {
  return `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`;
}
