/** One column of a printed table; numbers stand to the right. */
export type TableColumn<Row> = { title: string; right?: boolean; cell(row: Row): string | number | null };

/** Rows as aligned text for a terminal, with a heading; nothing to show is a dash. Empty where there are no rows. */
export function textTable<Row>(columns: readonly TableColumn<Row>[], rows: readonly Row[]): string {
  if (rows.length === 0) return '';
  const cells = rows.map((row) => columns.map((column) => oneLine(column.cell(row))));
  const lines = [columns.map((column) => column.title), ...cells];
  const widths = columns.map((_, place) => Math.max(...lines.map((line) => widthOf(line[place] ?? ''))));
  return lines
    .map((line) =>
      line
        .map((cell, place) => padded(cell, widths[place] ?? 0, columns[place]?.right ?? false))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function oneLine(value: string | number | null): string {
  const text = value === null ? '' : String(value).replace(/\s+/g, ' ').trim();
  return text === '' ? '-' : text;
}

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });
/** Emoji and East Asian letters take two places in a terminal. */
const wide = /\p{Extended_Pictographic}|[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\uff00-\uff60]/u;

/** Places that a text takes in a terminal. */
function widthOf(text: string): number {
  return [...graphemes.segment(text)].reduce((sum, { segment }) => sum + (wide.test(segment) ? 2 : 1), 0);
}

function padded(text: string, width: number, right: boolean): string {
  const blank = ' '.repeat(Math.max(width - widthOf(text), 0));
  return right ? blank + text : text + blank;
}
