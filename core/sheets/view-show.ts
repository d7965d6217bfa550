import { deriveAct } from '../derive/derive-act.ts';
import { actSheet, actsOfDay } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import { type ActView, viewAct } from './act-view.ts';
import type { DayView } from './day-view.ts';

/** An act of a show as sheets tell of it, or null where it is not in the show. */
export function viewActOfShow(show: Show, actId: Id): ActView | null {
  const sheet = actSheet(show, actId);
  return sheet && viewAct(sheet, deriveAct(sheet));
}

/** A day of a show with all its acts, or null where it is not in the show. `actOf` may know acts already viewed. */
export function viewDayOfShow(
  show: Show,
  dayId: Id,
  actOf: (actId: Id) => ActView | null = (actId) => viewActOfShow(show, actId),
): DayView | null {
  const day = show.days.get(dayId);
  const rig = day && show.rigs.get(day.rigId);
  if (!day || !rig) return null;
  return {
    day,
    rig,
    stock: [...show.stockItems.values()]
      .filter((it) => it.rigId === rig.id)
      .sort((a, b) => a.order - b.order),
    acts: actsOfDay(show, dayId).flatMap(({ id }) => actOf(id) ?? []),
  };
}
