import { asFits } from './act-heading.ts';
import { clockText } from './cell-text.ts';
import type { DayView } from './day-view.ts';
import type { PageWish, Part, Sheet } from './sheet.ts';

type Content = { cautions?: string[]; page?: PageWish; parts: Part[] };

/** A sheet of a whole day, with the facts that every such sheet says at its head. */
export function sheetOfDay(id: string, title: string, { day, rig, acts }: DayView, content: Content): Sheet {
  const starts = acts.map(({ sheet }) => sheet.act.startMinute).filter((it) => it !== null);
  const ends = acts.map(({ sheet }) => sheet.act.endMinute).filter((it) => it !== null);
  const span = starts.length > 0 && ends.length > 0;
  return {
    key: `${id}:${day.id}`,
    title,
    subject: day.name,
    facts: [
      { label: 'Date', value: day.date },
      { label: 'Stage', value: rig.name },
      { label: 'Acts', value: String(acts.length) },
      {
        label: 'From',
        value: span ? `${clockText(Math.min(...starts))} to ${clockText(Math.max(...ends))}` : '',
      },
    ].filter((it) => it.value !== ''),
    cautions: content.cautions ?? [],
    page: content.page ?? asFits,
    parts: content.parts,
  };
}
