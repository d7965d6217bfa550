import { degrees, radians } from './angle.ts';
import { requireFinite } from './range.ts';

/**
 * Points and directions on a stage. Axes as on the plot: x to stage left (the house's right), y upstage, z up,
 * in metres. Where heights do not matter or are not known, give all points the same one.
 */
export type Point = { xM: number; yM: number; zM: number };

/** Bearing: degrees clockwise from upstage, seen from above, 0 to below 360. Tilt: degrees above the floor. */
export type Direction = { bearingDegrees: number; tiltUpDegrees: number };

export function distanceBetweenM(from: Point, to: Point): number {
  return lengthOf(vector(from, to));
}

/** The way from one point to another; null where they are the same. Straight up or down has bearing 0. */
export function directionTo(from: Point, to: Point): Direction | null {
  const way = vector(from, to);
  if (lengthOf(way) === 0) return null;
  return {
    bearingDegrees: wholeTurn(degrees(Math.atan2(way.x, way.y))),
    tiltUpDegrees: degrees(Math.atan2(way.z, Math.hypot(way.x, way.y))),
  };
}

/** The angle between where something looks and where another thing is, 0 to 180; null at the same point. */
export function offAxisDegrees(from: Point, looking: Direction, to: Point): number | null {
  const way = vector(from, to);
  return lengthOf(way) === 0 ? null : angleBetweenDegrees(axisOf(looking), way);
}

/** The smaller angle between two bearings, 0 to 180. */
export function bearingDifferenceDegrees(firstDegrees: number, secondDegrees: number): number {
  requireFinite({ firstDegrees, secondDegrees });
  const turn = wholeTurn(wholeTurn(firstDegrees) - wholeTurn(secondDegrees));
  return Math.min(turn, 360 - turn);
}

type Vector = { x: number; y: number; z: number };

function vector(from: Point, to: Point): Vector {
  const way = { x: to.xM - from.xM, y: to.yM - from.yM, z: to.zM - from.zM };
  requireFinite(way);
  return way;
}

function lengthOf({ x, y, z }: Vector): number {
  return Math.hypot(x, y, z);
}

function axisOf({ bearingDegrees, tiltUpDegrees }: Direction): Vector {
  requireFinite({ bearingDegrees, tiltUpDegrees });
  const level = Math.cos(radians(tiltUpDegrees));
  return {
    x: level * Math.sin(radians(bearingDegrees)),
    y: level * Math.cos(radians(bearingDegrees)),
    z: Math.sin(radians(tiltUpDegrees)),
  };
}

/** By the cross product and atan2, which keeps its digits near 0 and 180 where the arc cosine loses them. */
function angleBetweenDegrees(a: Vector, b: Vector): number {
  const across = Math.hypot(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
  return degrees(Math.atan2(across, a.x * b.x + a.y * b.y + a.z * b.z));
}

function wholeTurn(angleDegrees: number): number {
  const rest = angleDegrees % 360;
  return rest < 0 ? rest + 360 : rest + 0;
}
