import { actsOfDay } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { PaperJob } from './paper-request.ts';
import type { FileForm, SheetId } from './sheets.ts';
import { makerOf, sheetIds } from './sheets.ts';

const idsOf = (of: 'act' | 'day', file: FileForm): SheetId[] =>
  sheetIds.filter((id) => makerOf(id).of === of && makerOf(id).files.includes(file));

/** Every sheet of an act that there is in this form of file. */
export function jobsOfAct(actId: Id, file: FileForm): PaperJob[] {
  return idsOf('act', file).map((sheet) => ({ sheet, ofId: actId }));
}

/** Every sheet of a day: the day's own first, then act by act in running order. */
export function jobsOfDay(show: Show, dayId: Id, file: FileForm): PaperJob[] {
  const own = idsOf('day', file).map((sheet) => ({ sheet, ofId: dayId }));
  return [...own, ...actsOfDay(show, dayId).flatMap(({ id }) => jobsOfAct(id, file))];
}
