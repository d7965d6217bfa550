import type { Mark as ChangeMark, Differences, PrintedRow } from '../../../core/sheets/differences.ts';
import { rowId } from '../../../core/sheets/differences.ts';
import type { Paper } from '../../../core/sheets/paper-request.ts';
import type { LabelsPart, Sheet } from '../../../core/sheets/sheet.ts';
import { tableOf } from '../../../core/sheets/table.ts';
import type { TypeCase } from '../fonts/type-case.ts';
import type { Page } from './display-list.ts';
import { pageSize, sizes } from './measures.ts';
import { setDrawing } from './set-drawing.ts';
import { setHead } from './set-head.ts';
import { layLabels, type Shortened } from './set-labels.ts';
import { setTable } from './set-table.ts';
import { setHeading, setMarginMark, setText } from './set-text.ts';
import { SheetFlow } from './sheet-flow.ts';

export type LaidSheet = { sheet: Sheet; orientation: 'portrait' | 'landscape'; pages: Page[] };

type Before = { number: number; madeAt: string } | null;

/** The pages of a sheet on a paper, without their foot: that needs to know how many pages there are. */
export function laySheet(
  sheet: Sheet,
  paper: Paper,
  differences: Differences,
  before: Before,
  typeCase: TypeCase,
): LaidSheet {
  const on = sheet.page.paper ?? paper;
  const lay = (orientation: 'portrait' | 'landscape') => ({
    sheet,
    orientation,
    pages: layPages(sheet, on, orientation, differences, before, typeCase),
  });
  if (sheet.page.orientation !== 'as fits') return lay(sheet.page.orientation);
  const upright = lay('portrait');
  if (upright.pages.length === 1) return upright;
  const lying = lay('landscape');
  return lying.pages.length < upright.pages.length ? lying : upright;
}

function layPages(
  sheet: Sheet,
  paper: Paper,
  orientation: 'portrait' | 'landscape',
  differences: Differences,
  before: Before,
  typeCase: TypeCase,
): Page[] {
  const size = pageSize(paper, orientation);
  const labels = sheet.parts.find((part) => part.is === 'labels');
  if (labels) return layLabelPages(sheet, labels, size, typeCase);
  const flow = new SheetFlow(size, typeCase, sheet);
  setHead(flow, sheet);
  sheet.parts.forEach((part, at) => {
    if (part.is === 'table') setTable(flow, part, at, differences.marks);
    else if (part.is === 'text') {
      if (part.heading !== null) setHeading(flow, part.heading, sizes.body * 2);
      setText(flow, part.paragraphs, (place) => differences.marks.get(rowId(part, at, `${place}`)) ?? null);
    } else if (part.is === 'drawing') {
      const mark = markOfPart(part, at, part.drawing.shapes.length, differences);
      if (mark) setMarginMark(flow, mark, 24);
      setDrawing(flow, part.drawing);
    }
  });
  setChanges(flow, differences, before);
  return flow.pages;
}

function markOfPart(
  part: Sheet['parts'][number],
  at: number,
  rows: number,
  { marks }: Differences,
): ChangeMark | null {
  for (let place = 0; place < rows; place++) if (marks.has(rowId(part, at, `${place}`))) return 'changed';
  return null;
}

/** What the marks in the margin mean, and what stood on the last print and is gone. */
function setChanges(flow: SheetFlow, { marks, gone }: Differences, before: Before): void {
  if (!before || (marks.size === 0 && gone.length === 0)) return;
  const since = `version ${before.number} of ${before.madeAt}`;
  if (marks.size > 0) setText(flow, [`In the margin: N is new, C has changed since ${since}.`]);
  if (gone.length === 0) return;
  setHeading(flow, `Gone since ${since}`, sizes.body * 2);
  setText(flow, gone.map(goneText));
}

function goneText({ texts }: PrintedRow): string {
  return texts.filter((it) => it !== '').join(', ');
}

/** Labels have their pages to themselves; what else there is to say stands on a page after them. */
function layLabelPages(
  sheet: Sheet,
  part: LabelsPart,
  size: { widthPt: number; heightPt: number },
  typeCase: TypeCase,
): Page[] {
  const { pages, shortened, trouble } = layLabels(part, size, typeCase);
  const flow = new SheetFlow(size, typeCase, sheet);
  setHead(flow, sheet);
  const told = [
    part.labels.length === 0
      ? 'There is nothing to label yet.'
      : `${part.labels.length} labels. Print them at 100 %, without fitting to the page.`,
    trouble === null ? '' : `${trouble} Measure again and change the form of the labels.`,
  ].filter((it) => it !== '');
  setText(flow, told);
  if (shortened.length > 0) setTable(flow, shortenedTable(shortened), 0, new Map());
  return [...flow.pages, ...pages];
}

function shortenedTable(shortened: Shortened[]) {
  return tableOf<Shortened>(
    [
      { title: 'Number', kind: 'number', of: ({ number }) => Number(number) },
      { title: 'On the label', of: ({ onLabel }) => onLabel },
      { title: 'Is', grow: 1, of: ({ name }) => name },
    ],
    shortened,
    { heading: 'Names made shorter', key: ({ number, name }) => `${number} ${name}`, empty: '' },
  );
}
