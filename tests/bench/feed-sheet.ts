import type { Derived } from '../../core/derive/derived.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { indexSheet } from '../../core/show/sheet-index.ts';

/**
 * The feed matrix of an act as an engineer would build it in a spreadsheet: tables of sources, mixes, wishes and words;
 * for every source and mix four formulas, which give start level, copy, channel and reason; and for every mix its sum,
 * what it starts lower by, its cue output and the cue's level. What the plan gave (channels, devices) is given.
 */

/** `lookup`: every cell finds its wish and its source by name. `direct`: all tables lie aligned, no cell searches. */
export const sheetForms = ['direct', 'lookup'] as const;
export type SheetForm = (typeof sheetForms)[number];

export type Cell = string | number;
/** Worksheets by name. A text that begins with = is a formula in the notation that all spreadsheets read. */
export type FeedWorkbook = Record<
  'Sources' | 'Mixes' | 'Wishes' | 'Words' | 'Rig' | 'Feeds' | 'Levels',
  Cell[][]
>;

/** Columns of a mix on the sheet of feeds. */
const columnsOfMix = 4;

export function feedWorkbook(sheet: ActSheet, derived: Derived, form: SheetForm): FeedWorkbook {
  const channel = (sourceId: string, purpose: string) =>
    derived.plan.copies.find((copy) => copy.sourceId === sourceId && copy.purpose === purpose)?.channel ?? '';
  const amounts = new Map(sheet.wishes.map((wish) => [`${wish.mixId}|${wish.sourceId}`, wish.amount ?? '']));
  const { rig, cueOutputs } = sheet;
  const index = indexSheet(sheet);
  const cue = cueOutputs[0];
  return {
    Sources: sheet.sources.map(({ id }) => [
      id,
      channel(id, 'foh'),
      channel(id, 'monitors'),
      channel(id, 'wedges'),
      channel(id, 'in-ears'),
    ]),
    Mixes: sheet.mixes.map((mix, at) => {
      const device = index.device(derived.plan.mixes[at]?.deviceIds[0] ?? '');
      const { sensitivityDbSpl = null, powerW = null, listeningDistanceM = null } = device ?? {};
      return [mix.id, mix.deviceKind ?? '', sensitivityDbSpl ?? '', powerW ?? '', listeningDistanceM ?? ''];
    }),
    Wishes:
      form === 'lookup'
        ? [...amounts].map(([key, amount]) => [key, amount])
        : sheet.sources.map((source) =>
            sheet.mixes.map((mix) => amounts.get(`${mix.id}|${source.id}`) ?? ''),
          ),
    // Each word with its level and that level as a power.
    Words: (['lots', 'some', 'little'] as const).map((word, at) => [
      word,
      rig[`${word}Db`],
      `=10^(B${at + 1}/10)`,
    ]),
    Rig: [
      [rig.targetLevelDbfs, rig.headroomDb],
      ...cueOutputs.map(({ id, kind }) => [id, kind]),
      [index.device(cue?.deviceId ?? '')?.sensitivityDbSpl ?? '', ''],
    ],
    Feeds: sheet.sources.map((_, sourceAt) =>
      sheet.mixes.flatMap((_, mixAt) => feedFormulas(sheet, form, sourceAt + 1, mixAt + 1)),
    ),
    Levels: sheet.mixes.map((_, mixAt) => levelFormulas(sheet, mixAt + 1)),
  };
}

export function formulasIn(workbook: FeedWorkbook): number {
  const isFormula = (cell: Cell) => String(cell).startsWith('=');
  return Object.values(workbook).flat(2).filter(isFormula).length;
}

/** Level, copy, channel and reason of one cell; rows and columns count from 1. */
function feedFormulas(sheet: ActSheet, form: SheetForm, source: number, mix: number): string[] {
  const [sources, mixes, wishes] = [sheet.sources.length, sheet.mixes.length, sheet.wishes.length];
  const first = (mix - 1) * columnsOfMix + 1;
  const level = `${column(first)}${source}`;
  const copy = `${column(first + 1)}${source}`;
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
    `=IF(${copy}="","no wish",IF(${copy}="foh","foh channel",IF(${copy}="monitors","monitor copy","copy for this kind of device")))`,
  ];
}

/** Sum, lowering, cue output and cue level of one mix. */
function levelFormulas(sheet: ActSheet, mix: number): string[] {
  const letter = column((mix - 1) * columnsOfMix + 1);
  const levels = `Feeds!$${letter}$1:$${letter}$${sheet.sources.length}`;
  const powers = [1, 2, 3].map((row) => `COUNTIF(${levels},Words!$B$${row})*Words!$C$${row}`).join('+');
  const last = sheet.cueOutputs.length + 1;
  const wanted = `IF(Mixes!$B$${mix}="in-ear","in-ear","wedge")`;
  const loud = `Mixes!$C$${mix}+IF(Mixes!$B$${mix}="in-ear",0,10*LOG10(Mixes!$D$${mix})-20*LOG10(Mixes!$E$${mix}))`;
  return [
    `=IF(COUNT(${levels})=0,"",10*LOG10(${powers}))`,
    `=IF(A${mix}="",0,MIN(0,-Rig!$B$1-(Rig!$A$1+A${mix})))`,
    `=IFERROR(INDEX(Rig!$A$2:$A$${last},MATCH(${wanted},Rig!$B$2:$B$${last},0)),Rig!$A$2)`,
    `=${loud}-Rig!$A$${last + 1}`,
  ];
}

/** A spreadsheet's letters for a column that counts from 1. */
function column(number: number): string {
  const rest = (number - 1) % 26;
  const before = Math.floor((number - 1) / 26);
  return (before > 0 ? column(before) : '') + String.fromCharCode(65 + rest);
}

/** What a program made of the sheets of feeds and levels. */
export type Computed = { feeds: readonly (readonly unknown[])[]; levels: readonly (readonly unknown[])[] };

/** How many feeds and mixes a program computed otherwise than we did. */
export function differences({ feeds, levels }: Computed, derived: Derived): number {
  let differing = 0;
  derived.feeds.forEach((row, sourceAt) => {
    row.forEach((feed, mixAt) => {
      const cells = (feeds[sourceAt] ?? []).slice(mixAt * columnsOfMix, (mixAt + 1) * columnsOfMix);
      if (!alike(cells, [feed.levelDb, feed.purpose, feed.channel, feed.step])) differing++;
    });
  });
  derived.levels.forEach(({ sumDb, loweredByDb }, mixAt) => {
    const cue = derived.cues[mixAt];
    const ours = [sumDb, loweredByDb, cue?.cueOutputId ?? null, cue?.offsetDb ?? null];
    if (!alike(levels[mixAt] ?? [], ours)) differing++;
  });
  return differing;
}

/** Two programs may differ in the last digits of a logarithm, and in nothing else. */
function alike(cells: readonly unknown[], ours: readonly (string | number | null)[]): boolean {
  return ours.every((our, at) => {
    const cell = cells[at] ?? '';
    if (typeof our !== 'number') return cell === (our ?? '');
    return typeof cell === 'number' && Math.abs(cell - our) < 1e-9;
  });
}
