import type { Cell, Column, Row, TablePart } from './sheet.ts';

/** A column of a sheet: its title, its looks, and what it says of one thing. */
export type Field<T> = Partial<Omit<Column, 'title'>> & { title: string; of: (it: T) => Cell };

type TableSettings<T> = {
  heading?: string;
  key: (it: T) => string;
  look?: (it: T) => Row['look'];
  empty: string;
  repeatedColumns?: number;
};

/** A table of things: a column for each field, a row for each thing. */
export function tableOf<T>(
  fields: readonly Field<T>[],
  things: readonly T[],
  settings: TableSettings<T>,
): TablePart {
  return {
    is: 'table',
    heading: settings.heading ?? null,
    columns: fields.map(columnOf),
    rows: things.map((it) => ({
      key: settings.key(it),
      cells: fields.map((field) => field.of(it)),
      look: settings.look?.(it) ?? 'plain',
    })),
    empty: settings.empty,
    repeatedColumns: settings.repeatedColumns ?? 1,
  };
}

function columnOf<T>({
  title,
  kind = 'text',
  align,
  decimals = 0,
  signed = false,
  grow = 0,
  always = false,
}: Field<T>): Column {
  return { title, kind, align: align ?? usualAlign[kind], decimals, signed, grow, always };
}

const usualAlign = { text: 'left', number: 'right', tick: 'centre', write: 'left' } as const;
