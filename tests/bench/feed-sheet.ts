import { type CellValue, HyperFormula, type RawCellContent } from 'hyperformula';
import type { Derived } from '../../core/derive/derived.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { processorMs } from './processor-time.ts';

/**
 * The feed matrix of an act as an engineer would build it in a spreadsheet: tables of sources, mixes, wishes and
 * words, and for every source and mix three formulas: start level, copy and channel.
 */

/** `lookup`: every cell finds its wish and its source by name. `direct`: all tables lie aligned, no cell searches. */
export type SheetForm = 'lookup' | 'direct';

type Table = RawCellContent[][];
const words = [
  ['lots', 0],
  ['some', -6],
  ['little', -12],
] as const;

/** The tables of the workbook, with the channels as the plan gave them. */
function tablesOf(sheet: ActSheet, derived: Derived, form: SheetForm): Record<string, Table> {
  const channel = (sourceId: string, purpose: string) =>
    derived.plan.copies.find((copy) => copy.sourceId === sourceId && copy.purpose === purpose)?.channel ?? '';
  const amounts = new Map(sheet.wishes.map((wish) => [`${wish.mixId}|${wish.sourceId}`, wish.amount ?? '']));
  return {
    Sources: sheet.sources.map(({ id }) => [
      id,
      channel(id, 'foh'),
      channel(id, 'monitors'),
      channel(id, 'wedges'),
      channel(id, 'in-ears'),
    ]),
    Mixes: sheet.mixes.map((mix) => [mix.id, mix.deviceKind ?? '']),
    Wishes:
      form === 'lookup'
        ? [...amounts].map(([key, amount]) => [key, amount])
        : sheet.sources.map((source) =>
            sheet.mixes.map((mix) => amounts.get(`${mix.id}|${source.id}`) ?? ''),
          ),
    Words: words.map((row) => [...row]),
    Feeds: sheet.sources.map((_, sourceAt) =>
      sheet.mixes.flatMap((_, mixAt) => formulas(sheet, form, sourceAt + 1, mixAt + 1)),
    ),
  };
}

/** Level, copy and channel of one cell; rows and columns count from 1. */
function formulas(sheet: ActSheet, form: SheetForm, source: number, mix: number): string[] {
  const [sources, mixes, wishes] = [sheet.sources.length, sheet.mixes.length, sheet.wishes.length];
  const level = `${column(mix * 3 - 2)}${source}`;
  const copy = `${column(mix * 3 - 1)}${source}`;
  const sourceRow = `MATCH(Sources!$A$${source},Sources!$A$1:$A$${sources},0)`;
  const of = (letter: string) =>
    form === 'lookup'
      ? `INDEX(Sources!$${letter}$1:$${letter}$${sources},${sourceRow})`
      : `Sources!$${letter}$${source}`;
  const kind =
    form === 'lookup'
      ? `INDEX(Mixes!$B$1:$B$${mixes},MATCH(Mixes!$A$${mix},Mixes!$A$1:$A$${mixes},0))`
      : `Mixes!$B$${mix}`;
  const wish =
    form === 'lookup'
      ? `INDEX(Wishes!$B$1:$B$${wishes},MATCH(Mixes!$A$${mix}&"|"&Sources!$A$${source},Wishes!$A$1:$A$${wishes},0))`
      : `Wishes!${column(mix)}${source}`;
  return [
    `=IFERROR(INDEX(Words!$B$1:$B$3,MATCH(${wish},Words!$A$1:$A$3,0)),"")`,
    `=IF(${level}="","",IF(AND(${kind}="in-ear",${of('E')}<>""),"in-ears",IF(AND(${kind}<>"in-ear",${of('D')}<>""),"wedges",IF(${of('C')}<>"","monitors","foh"))))`,
    `=IF(${copy}="","",IF(${copy}="in-ears",${of('E')},IF(${copy}="wedges",${of('D')},IF(${copy}="monitors",${of('C')},${of('B')}))))`,
  ];
}

/** A spreadsheet's letters for a column that counts from 1. */
function column(number: number): string {
  const rest = (number - 1) % 26;
  const before = Math.floor((number - 1) / 26);
  return (before > 0 ? column(before) : '') + String.fromCharCode(65 + rest);
}

/** Builds the workbook, which computes every formula once; returns the processor time, and the cells that differ from ours. */
export function timedFeedSheet(
  sheet: ActSheet,
  derived: Derived,
  form: SheetForm,
): { ms: number; formulas: number; differing: number } {
  const tables = tablesOf(sheet, derived, form);
  const started = processorMs();
  const engine = HyperFormula.buildFromSheets(tables, { licenseKey: 'gpl-v3', maxColumns: 1000 });
  const values = engine.getSheetValues(engine.getSheetId('Feeds') ?? 0);
  const ms = processorMs() - started;
  engine.destroy();
  const same = (value: CellValue | undefined, ours: string | number | null) => (value ?? '') === (ours ?? '');
  let differing = 0;
  derived.feeds.forEach((row, sourceAt) => {
    row.forEach((feed, mixAt) => {
      const [level, copy, channel] = (values[sourceAt] ?? []).slice(mixAt * 3, mixAt * 3 + 3);
      if (!same(level, feed.levelDb) || !same(copy, feed.purpose) || !same(channel, feed.channel))
        differing++;
    });
  });
  return { ms, formulas: sheet.sources.length * sheet.mixes.length * 3, differing };
}
