import type { ActView } from './act-view.ts';
import { spanText } from './cell-text.ts';
import type { Fact, PageWish, Part, Sheet } from './sheet.ts';
import { isLong } from './words.ts';

export const asFits: PageWish = { orientation: 'as fits', paper: null };
export const lying: PageWish = { orientation: 'landscape', paper: null };

type Content = { cautions?: string[]; page?: PageWish; facts?: Fact[]; parts: Part[] };

/** A sheet of one act, with the facts that every such sheet says at its head. */
export function sheetOfAct(id: string, title: string, { sheet }: ActView, content: Content): Sheet {
  const { act, day, rig } = sheet;
  const when = [day.name, day.date].filter((it) => it !== '').join(', ');
  const facts: Fact[] = [
    { label: 'Day', value: when },
    { label: 'Stage', value: rig.name },
    { label: 'Set', value: spanText(act.startMinute, act.endMinute) },
    ...(content.facts ?? []),
  ];
  return {
    key: `${id}:${act.id}`,
    title,
    subject: act.name,
    facts: facts.filter((it) => it.value !== ''),
    cautions: content.cautions ?? [],
    page: content.page ?? asFits,
    parts: content.parts,
  };
}

/** Notes too long for their row, in full; nothing where all of them fit. */
export function longNotes({ lines }: ActView): Part[] {
  const long = lines.filter(({ source }) => isLong(source.notes));
  if (long.length === 0) return [];
  const paragraphs = long.map(({ line, source }) => `Line ${line}, ${source.name}: ${source.notes.trim()}`);
  return [{ is: 'text', heading: 'Notes in full', paragraphs }];
}
