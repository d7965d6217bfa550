import { changeoverBetween } from '../changeover/changeover.ts';
import { entriesOfDay } from '../changeover/entries.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { ActView } from './act-view.ts';
import type { ChangeoverView } from './changeover-sheets.ts';
import type { DayView } from './day-view.ts';
import { openQuestions } from './open-questions.ts';
import type { PaperJob } from './paper-request.ts';
import type { Sheet } from './sheet.ts';
import { makerOf, type SheetOptions } from './sheets.ts';
import { viewActOfShow, viewDayOfShow } from './view-show.ts';

/**
 * Makes the sheets of a show. Acts and days are derived once, however many sheets tell of them. A job for what is
 * not in the show gives null.
 */
export function sheetMaker(show: Show, options: SheetOptions): (job: PaperJob) => Sheet | null {
  const acts = new Map<Id, ActView | null>();
  const days = new Map<Id, DayView | null>();
  const changeovers = new Map<Id, ChangeoverView | null>();
  const actOf = (id: Id) => once(acts, id, () => viewActOfShow(show, id));
  const dayOf = (id: Id) => once(days, id, () => viewDayOfShow(show, id, actOf));
  return ({ sheet, ofId }) => {
    const maker = makerOf(sheet);
    if (maker.of === 'act') {
      const act = actOf(ofId);
      if (!act) return null;
      const view = maker.readsRider ? { ...act, questions: openQuestions(show, act.sheet) } : act;
      return maker.make(view, options);
    }
    if (maker.of === 'changeover') {
      const act = actOf(ofId);
      const day = act && dayOf(act.sheet.day.id);
      return (
        day &&
        maker.make(
          act,
          once(changeovers, ofId, () => changeoverTo(ofId, day)),
        )
      );
    }
    const day = dayOf(ofId);
    return day && maker.make(day, options);
  };
}

/** The changeover before an act; null for the first of the day. */
function changeoverTo(actId: Id, { day, acts }: DayView): ChangeoverView | null {
  const place = acts.findIndex(({ sheet }) => sheet.act.id === actId);
  const [from, to] = [acts[place - 1], acts[place]];
  if (!from || !to) return null;
  const entries = entriesOfDay(acts.map(({ sheet, derived }) => ({ sheet, plan: derived.plan })));
  const patch = ({ sheet, derived }: ActView) => ({
    sheet,
    plan: derived.plan,
    entryOf: (sourceId: Id) => entries.get(sourceId) ?? 'hot',
  });
  return { fromName: from.sheet.act.name, changeover: changeoverBetween(day, patch(from), patch(to)) };
}

function once<T>(known: Map<Id, T>, id: Id, make: () => T): T {
  const found = known.get(id);
  if (found !== undefined) return found;
  const made = make();
  known.set(id, made);
  return made;
}
