import type { FileForm } from '../../core/sheets/sheets.ts';
import { count } from './count.ts';

/** Texts of the Paper screen. The titles of the sheets come from core. */
export const englishPaper = {
  empty: 'There is no act to print yet.',
  emptyTodo: 'Bring in the first rider; its sheets appear here.',
  sheets: 'Sheets',
  ofAct: (name: string) => `Act: ${name}`,
  ofDay: (name: string) => `Day: ${name}`,
  whole: {
    'whole act': 'All sheets of the act',
    'whole day': 'All sheets of the day, with a cover',
  },
  paper: 'Paper',
  size: 'Preview',
  sizes: { width: 'Whole width', larger: 'Larger', largest: 'Largest' },
  print: 'Print',
  save: { pdf: 'Save PDF', xlsx: 'Save XLSX', csv: 'Save CSV' } satisfies Record<FileForm, string>,
  noTable: 'This sheet is no table, so there is no XLSX or CSV of it.',
  preview: (name: string) => `Preview of ${name}`,
  page: (number: number, of: number) => `Page ${number} of ${of}`,
  noPreview: 'The pages cannot be shown here. The file can be saved and opened with another program.',
  noPrint: 'The pages could not be drawn for the printer.',
  noPrintTodo: 'Save the PDF and print it from another program.',
  pages: (n: number) => count(n, 'page'),
  version: (number: number, isNew: boolean) => {
    if (!isNew) return `Version ${number}, the same as last printed or saved`;
    return number === 1
      ? 'Version 1, replaces none'
      : `Version ${number}, replaces version ${number - 1}; what changed is marked in the margin`;
  },
  versions: (fresh: number, all: number) =>
    fresh === 0
      ? `${count(all, 'sheet')}, all the same as last printed or saved`
      : `${count(all, 'sheet')}, ${fresh} of them new or changed since last printed or saved`,
  making: 'Making the sheets',
  preparing: 'getting ready',
  drawing: (done: number, of: number) => `For the printer: page ${done + 1} of ${of}`,
  stop: 'Stop',
  again: 'Make it again',
  saved: (name: string) => `Given to be saved: ${name}`,
  labels: {
    on: 'Labels on',
    forms: { strip: 'a strip of tape', sheet: 'a sheet of sticky labels' },
    fields: {
      pitchMm: 'Channel to channel, mm',
      heightMm: 'Height, mm',
      channelsPerStrip: 'Channels a strip',
      labelWidthMm: 'Label width, mm',
      labelHeightMm: 'Label height, mm',
      columns: 'Across',
      rows: 'Down',
      leftMm: 'From the left, mm',
      topMm: 'From the top, mm',
      gapAcrossMm: 'Gap across, mm',
      gapDownMm: 'Gap down, mm',
      skip: 'Used up already',
    },
    asMany: 'as many as fit',
    colours: 'Line numbers also as colours (IEC 60062)',
  },
  missing: (n: number) => `${count(n, 'sheet')} left out: what they are about is no longer in the show.`,
} as const;
