import { deriveAct } from '../../core/derive/derive-act.ts';
import type { Derived } from '../../core/derive/derived.ts';
import { type ActSheet, actSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

export type ActOnScreen = { sheet: ActSheet; derived: Derived };

const byShow = new WeakMap<Show, Map<Id, ActOnScreen | null>>();

/** An act's sheet and what follows from it; derived once for each state of the show. Null: no such act. */
export function actOnScreen(show: Show, actId: Id): ActOnScreen | null {
  const known = byShow.get(show) ?? new Map<Id, ActOnScreen | null>();
  byShow.set(show, known);
  const found = known.get(actId);
  if (found !== undefined) return found;
  const sheet = actSheet(show, actId);
  const made = sheet && { sheet, derived: deriveAct(sheet) };
  known.set(actId, made);
  return made;
}
