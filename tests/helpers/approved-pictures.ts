import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright';

/** How unlike two pictures are: the share of their pixels, in all and in the worst square of 64 by 64. */
export type Unlike = { whole: number; worstSquare: number };

const isApproving = process.env.FOLDBOOK_APPROVE === '1';

const addressOf = (png: Uint8Array) => `data:image/png;base64,${Buffer.from(png).toString('base64')}`;

/**
 * Compares a picture with the one of that name in `folder` that somebody has looked at and approved; with
 * FOLDBOOK_APPROVE=1 it becomes the approved one. `painter` is a page made by `openPainter`.
 */
export async function unlikeApproved(
  painter: Page,
  folder: string,
  name: string,
  png: Uint8Array,
): Promise<Unlike> {
  const path = join(folder, `${name}.png`);
  if (isApproving) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path, png);
  }
  if (!existsSync(path)) throw new Error(`There is no approved picture "${name}".`);
  return unlike(painter, png, readFileSync(path));
}

export function unlike(painter: Page, one: Uint8Array, other: Uint8Array): Promise<Unlike> {
  return painter.evaluate(([a, b]) => window.painter.difference(a, b), [
    addressOf(one),
    addressOf(other),
  ] as const);
}
