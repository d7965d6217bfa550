import type { LabelForm } from '../../../core/sheets/label-form.ts';
import type { Label, LabelsPart } from '../../../core/sheets/sheet.ts';
import { shortName } from '../../../core/sheets/short-name.ts';
import type { TypeCase } from '../fonts/type-case.ts';
import type { Mark, Page } from './display-list.ts';
import { lineFactor, margins, mm, type PageSize, smallestPt } from './measures.ts';
import { setLine, unitWidth } from './set-line.ts';
import { wrapText } from './wrap-text.ts';

/** A label that could not say the whole name, so that the sheet can say it elsewhere. */
export type Shortened = { number: string; name: string; onLabel: string };

export type LaidLabels = {
  pages: Page[];
  shortened: Shortened[];
  /** What of the form does not fit on the paper, in words; null where all does. */
  trouble: string | null;
};

type Cell = { page: number; x: number; y: number; width: number; height: number };

/** Labels at their places, as the form measures them: nothing is scaled, for the paper is already cut. */
export function layLabels(part: LabelsPart, size: PageSize, typeCase: TypeCase): LaidLabels {
  const cells = part.form.is === 'strip' ? stripCells(part, part.form, size) : sheetCells(part, part.form);
  const pages: Page[] = [];
  const shortened: Shortened[] = [];
  part.labels.forEach((label, at) => {
    const cell = cells[at];
    if (!cell) return;
    while (pages.length <= cell.page) pages.push({ ...size, marks: [] });
    const onLabel = drawLabel(label, cell, pages[cell.page]?.marks ?? [], typeCase);
    if (onLabel !== label.name) shortened.push({ number: label.number, name: label.name, onLabel });
  });
  return { pages, shortened, trouble: troubleOf(part.form, size) };
}

function stripCells(
  { labels }: LabelsPart,
  form: Extract<LabelForm, { is: 'strip' }>,
  size: PageSize,
): Cell[] {
  const width = mm(form.pitchMm);
  const height = mm(form.heightMm);
  const room = size.widthPt - margins.left - margins.right;
  const across = Math.max(1, Math.min(form.channelsPerStrip ?? Infinity, Math.floor((room + 0.01) / width)));
  const stripStep = height + mm(6);
  const down = Math.max(1, Math.floor((size.heightPt - 2 * margins.bottom + mm(6)) / stripStep));
  return labels.map((_, at) => {
    const strip = Math.floor(at / across);
    return {
      page: Math.floor(strip / down),
      x: margins.left + (at % across) * width,
      y: margins.bottom + (strip % down) * stripStep,
      width,
      height,
    };
  });
}

function sheetCells({ labels }: LabelsPart, form: Extract<LabelForm, { is: 'sheet' }>): Cell[] {
  const onPage = form.columns * form.rows;
  return labels.map((_, at) => {
    const place = at + form.skip;
    const onThis = place % onPage;
    return {
      page: Math.floor(place / onPage),
      x: mm(form.leftMm + (onThis % form.columns) * (form.labelWidthMm + form.gapAcrossMm)),
      y: mm(form.topMm + Math.floor(onThis / form.columns) * (form.labelHeightMm + form.gapDownMm)),
      width: mm(form.labelWidthMm),
      height: mm(form.labelHeightMm),
    };
  });
}

function troubleOf(form: LabelForm, size: PageSize): string | null {
  if (form.is === 'strip')
    return mm(form.pitchMm) > size.widthPt - margins.left - margins.right
      ? 'One label is wider than the paper.'
      : null;
  const width = form.leftMm + form.columns * form.labelWidthMm + (form.columns - 1) * form.gapAcrossMm;
  const height = form.topMm + form.rows * form.labelHeightMm + (form.rows - 1) * form.gapDownMm;
  const over = [
    mm(width) > size.widthPt + 1 ? `${width} mm wide` : '',
    mm(height) > size.heightPt + 1 ? `${height} mm high` : '',
  ].filter((it) => it !== '');
  return over.length === 0 ? null : `These labels together are ${over.join(' and ')}: more than the paper.`;
}

const pad = 3;
const bandWidth = mm(2.5);

/** Draws a label and answers the name as it stands on it. */
function drawLabel(label: Label, cell: Cell, marks: Mark[], typeCase: TypeCase): string {
  const { x, y, width, height } = cell;
  marks.push({ is: 'rect', x, y, width, height, fill: null, linePt: 0.4 });
  label.digitColours.forEach(({ hex }, at) => {
    marks.push({ is: 'rect', x: x + at * bandWidth, y, width: bandWidth, height, fill: hex, linePt: 0.4 });
  });
  const left = x + pad + label.digitColours.length * bandWidth;
  const room = x + width - pad - left;
  const numberSize = Math.min(14, Math.max(smallestPt, height * 0.34));
  const say = (text: string, at: number, sizePt: number, bold: boolean, toRight = false) => {
    const line = setLine(text, bold ? 'bold' : 'regular', typeCase);
    const shift = toRight ? room - line.unitWidth * sizePt : 0;
    marks.push({ is: 'text', x: left + shift, y: y + at + sizePt, sizePt, line });
  };
  const letters = label.digitColours.map((it) => it.letters).join(' ');
  const aside = [letters, label.below].filter((it) => it !== '').join('  ');
  say(label.number, 1, numberSize, true);
  const asideRoom = room - unitWidth(label.number, 'bold', typeCase) * numberSize - 4;
  const asideText = shortName(aside, (it) => unitWidth(it, 'regular', typeCase) * smallestPt <= asideRoom);
  if (asideText !== '') say(asideText, 2, smallestPt, false, true);
  const under = 1 + numberSize * lineFactor;
  return drawName(label.name, { room, height: height - under - 2, top: under }, say, typeCase);
}

type Say = (text: string, at: number, sizePt: number, bold: boolean) => void;

/** The name as large as it goes in one line, else in two, else shortened at the smallest size. */
function drawName(
  name: string,
  box: { room: number; height: number; top: number },
  say: Say,
  typeCase: TypeCase,
): string {
  const widthOf = (text: string) => unitWidth(text, 'bold', typeCase);
  for (const size of [13, 12, 11, 10, 9]) {
    if (size * 1.05 <= box.height + 2 && widthOf(name) * size <= box.room) {
      say(name, box.top, size, true);
      return name;
    }
  }
  const lines = wrapText(name, box.room, smallestPt, 'bold', typeCase);
  const noWordBroken = name.split(' ').every((word) => widthOf(word) * smallestPt <= box.room);
  if (noWordBroken && lines.length * smallestPt * lineFactor <= box.height) {
    lines.forEach((line, at) => {
      const words = line.runs.map((run) => run.text).join('');
      say(words, box.top + at * smallestPt * lineFactor, smallestPt, true);
    });
    return name;
  }
  const short = shortName(name, (it) => widthOf(it) * smallestPt <= box.room);
  say(short, box.top, smallestPt, true);
  return short;
}
