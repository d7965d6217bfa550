import type { ScreenPoint } from './stage-view.ts';

/**
 * What shows while something is being moved, written straight to the drawing: only what moves changes, and nothing
 * is derived or drawn anew until it is let go.
 */

const marksSelector = '[data-keys]';

/** Separates the keys of the things of one mark; ids never hold it. */
export const keySeparator = '\n';

/** The marks of which every thing moves. */
export function movingMarks(svg: SVGSVGElement, keys: ReadonlySet<string>): SVGGElement[] {
  svg.classList.add('is-moving');
  return [...svg.querySelectorAll<SVGGElement>(marksSelector)].filter((mark) =>
    (mark.dataset.keys ?? '').split(keySeparator).every((key) => keys.has(key)),
  );
}

export function shiftMarks(marks: readonly SVGGElement[], way: ScreenPoint): void {
  for (const mark of marks) mark.style.transform = `translate(${way.x}px, ${way.y}px)`;
}

export function showTurned(svg: SVGSVGElement, key: string, byDeg: number): void {
  for (const part of svg.querySelectorAll<SVGGElement>('[data-turns]'))
    if (part.dataset.turns === key) part.style.transform = `rotate(${byDeg}deg)`;
}

export function showPanned(svg: SVGSVGElement, way: ScreenPoint): void {
  const content = svg.querySelector<SVGGElement>('[data-content]');
  if (content) content.style.transform = `translate(${way.x}px, ${way.y}px)`;
}

/** Guides where lines of others were met; null hides them. */
export function showGuides(svg: SVGSVGElement, x: number | null, y: number | null): void {
  const across = svg.querySelector<SVGLineElement>('[data-guide="x"]');
  const along = svg.querySelector<SVGLineElement>('[data-guide="y"]');
  if (across) setLine(across, x, 'x');
  if (along) setLine(along, y, 'y');
}

function setLine(line: SVGLineElement, at: number | null, axis: 'x' | 'y'): void {
  line.style.display = at === null ? 'none' : 'inline';
  if (at === null) return;
  line.setAttribute(`${axis}1`, `${at}`);
  line.setAttribute(`${axis}2`, `${at}`);
}

/** A short text beside what is moved. */
export function showReading(svg: SVGSVGElement, text: string, at: ScreenPoint | null): void {
  const reading = svg.querySelector<SVGTextElement>('[data-reading]');
  if (!reading) return;
  reading.textContent = text;
  reading.style.display = at === null ? 'none' : 'inline';
  if (at === null) return;
  reading.setAttribute('x', `${at.x}`);
  reading.setAttribute('y', `${at.y}`);
}

export function showFrame(svg: SVGSVGElement, from: ScreenPoint, to: ScreenPoint): void {
  const frame = svg.querySelector<SVGRectElement>('[data-frame]');
  if (!frame) return;
  frame.style.display = 'inline';
  frame.setAttribute('x', `${Math.min(from.x, to.x)}`);
  frame.setAttribute('y', `${Math.min(from.y, to.y)}`);
  frame.setAttribute('width', `${Math.abs(to.x - from.x)}`);
  frame.setAttribute('height', `${Math.abs(to.y - from.y)}`);
}

/** Takes everything back that was only shown. */
export function endPreview(svg: SVGSVGElement): void {
  svg.classList.remove('is-moving');
  for (const part of svg.querySelectorAll<SVGElement>('[data-keys], [data-turns], [data-content]'))
    part.style.transform = '';
  for (const part of svg.querySelectorAll<SVGElement>('[data-guide], [data-reading], [data-frame]'))
    part.style.display = 'none';
}
