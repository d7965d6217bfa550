import { deriveAct } from '../../core/derive/derive-act.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import type { Show } from '../../core/show/show.ts';

/** An act of a show with all that follows from it. Fails the test where there is none of that id. */
export function derivedAct(show: Show, actId: string) {
  const sheet = actSheet(show, actId);
  if (!sheet) throw new Error(`No act ${actId}`);
  return { show, sheet, derived: deriveAct(sheet) };
}
