import { jobsOfAct, jobsOfDay } from '../../core/sheets/jobs.ts';
import type { PaperJob } from '../../core/sheets/paper-request.ts';
import { type FileForm, fileForms, makerOf, type SheetId } from '../../core/sheets/sheets.ts';
import type { Act, Day } from '../../core/show/act.ts';
import type { Show } from '../../core/show/show.ts';

/** A single sheet, or all that there are of the act or the day. */
export type SheetChoice = SheetId | 'whole act' | 'whole day';
export type Place = { show: Show; act: Act; day: Day };

/** What can be chosen at a place: the act's sheets, the changeover to it among them, and the day's own. */
export function choicesAt({ show, act, day }: Place): { act: SheetChoice[]; day: SheetChoice[] } {
  return {
    act: [...jobsOfAct(show, act.id, 'pdf').map(({ sheet }) => sheet), 'whole act'],
    day: [
      ...jobsOfDay(show, day.id, 'pdf').flatMap(({ sheet }) => (makerOf(sheet).of === 'day' ? [sheet] : [])),
      'whole day',
    ],
  };
}

/** The jobs of a choice in one form of file; none where there is no such file of it. */
export function jobsOfChoice(choice: SheetChoice, { show, act, day }: Place, file: FileForm): PaperJob[] {
  if (choice === 'whole act') return jobsOfAct(show, act.id, file);
  if (choice === 'whole day') return jobsOfDay(show, day.id, file);
  const maker = makerOf(choice);
  return maker.files.includes(file) ? [{ sheet: choice, ofId: maker.of === 'day' ? day.id : act.id }] : [];
}

export function formsOfChoice(choice: SheetChoice): readonly FileForm[] {
  return choice === 'whole act' || choice === 'whole day' ? fileForms : makerOf(choice).files;
}
