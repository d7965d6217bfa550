import { actsOfDay } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import type { PaperJob } from './paper-request.ts';
import type { FileForm, SheetId, SheetMaker } from './sheets.ts';
import { makerOf, sheetIds } from './sheets.ts';

const idsOf = (of: SheetMaker['of'], file: FileForm): SheetId[] =>
  sheetIds.filter((id) => makerOf(id).of === of && makerOf(id).files.includes(file));

/** Every sheet of an act that there is in this form of file, with the changeover before it where there is one. */
export function jobsOfAct(show: Show, actId: Id, file: FileForm): PaperJob[] {
  const dayId = show.acts.get(actId)?.dayId ?? '';
  const isFirst = actsOfDay(show, dayId)[0]?.id === actId;
  const ids = [...(isFirst ? [] : idsOf('changeover', file)), ...idsOf('act', file)];
  return ids.map((sheet) => ({ sheet, ofId: actId }));
}

/** Every sheet of a day: the day's own first, then act by act in running order. */
export function jobsOfDay(show: Show, dayId: Id, file: FileForm): PaperJob[] {
  const own = idsOf('day', file).map((sheet) => ({ sheet, ofId: dayId }));
  return [...own, ...actsOfDay(show, dayId).flatMap(({ id }) => jobsOfAct(show, id, file))];
}
