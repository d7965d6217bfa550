import { deriveAct } from '../../core/derive/derive-act.ts';
import type { Derived } from '../../core/derive/derived.ts';
import { type ActSheet, actSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

export type ActOnScreen = { sheet: ActSheet; derived: Derived };

const byShow = new WeakMap<Show, Map<Id, ActOnScreen | null>>();
const newest = new Map<Id, ActOnScreen>();

/**
 * An act's sheet and what follows from it; null: no such act. It is derived again only when a row it follows from
 * has changed, so that an edit of one act costs nothing for the others of the day.
 */
export function actOnScreen(show: Show, actId: Id): ActOnScreen | null {
  const known = byShow.get(show) ?? new Map<Id, ActOnScreen | null>();
  byShow.set(show, known);
  const found = known.get(actId);
  if (found !== undefined) return found;
  const sheet = actSheet(show, actId);
  const before = newest.get(actId);
  const made =
    sheet && (before && isSameSheet(before.sheet, sheet) ? before : { sheet, derived: deriveAct(sheet) });
  if (made) newest.set(actId, made);
  known.set(actId, made);
  return made;
}

/** Rows are never changed in place, so two sheets of the same rows are the same sheet. */
function isSameSheet(one: ActSheet, other: ActSheet): boolean {
  return (Object.keys(one) as (keyof ActSheet)[]).every((part) => isSamePart(one[part], other[part]));
}

function isSamePart(one: unknown, other: unknown): boolean {
  if (!Array.isArray(one) || !Array.isArray(other)) return one === other;
  return one.length === other.length && one.every((row, at) => row === other[at]);
}
