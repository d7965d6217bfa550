import type { Wish } from '../show/act.ts';
import { lying, sheetOfAct } from './act-heading.ts';
import type { ActView, LineView, MixView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { levelText, shortLevel } from './cell-text.ts';
import { lineFields } from './line-fields.ts';
import type { Cell, Row, Sheet, TablePart } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { copyKey, deviceText, feedText, listenersText } from './words.ts';

/** Sources down, mixes across: which copy, how loud to start. */
export function mixes(view: ActView): Sheet {
  return sheetOfAct('mixes', 'Mixes: wishes and start levels', view, {
    cautions: [cautions.levels],
    page: lying,
    parts: [matrix(view), { is: 'text', heading: null, paragraphs: keyOf(view) }, wishTable(view)],
  });
}

function keyOf(view: ActView): string[] {
  const second =
    view.derived.secondFeeds.length > 0
      ? [' Two entries in a cell: two copies in one mix, see findings.']
      : [];
  return [
    `${copyKey} Levels in dB, pre-fader unless “post” is said; an empty cell is off.${second.join('')}`,
  ];
}

function matrix(view: ActView): TablePart {
  const rowHeads: Field<LineView>[] = [lineFields.line, { ...lineFields.source, grow: 1 }, lineFields.socket];
  const levels = view.mixes.map(
    (mix, at): Field<LineView> => ({
      title: `${mix.number} ${mix.mix.name}`,
      align: 'centre',
      grow: 1,
      always: true,
      of: (line) => feedCell(view, line.line - 1, at),
    }),
  );
  const table = tableOf([...rowHeads, ...levels], view.lines, {
    heading: 'Start levels',
    key: ({ source }) => source.id,
    empty: 'This act has no input yet.',
    repeatedColumns: rowHeads.length,
  });
  return { ...table, rows: [...headRows(view, rowHeads.length), ...table.rows] };
}

/** One row for each thing that is true of a whole mix, above the levels. */
function headRows(view: ActView, headColumns: number): Row[] {
  const lines: [string, (mix: MixView) => string][] = [
    ['For', listenersText],
    ['Heard through', deviceText],
    ['Bus', ({ buses }) => buses],
    ['Output', ({ outputs }) => outputs.map(({ name }) => name).join(' + ')],
    ['All lower by', loweredText],
  ];
  return lines.map(([title, say]) => ({
    key: `of the mix: ${title}`,
    look: 'strong',
    cells: [null, title, ...Array<Cell>(Math.max(0, headColumns - 2)).fill(null), ...view.mixes.map(say)],
  }));
}

function loweredText({ level, mix }: MixView): string {
  if (mix.mixedAt === 'elsewhere') return 'mixed elsewhere';
  return level && level.loweredByDb < 0 ? levelText(level.loweredByDb) : '';
}

function feedCell(view: ActView, sourceAt: number, mixAt: number): string {
  const feed = view.derived.feeds[sourceAt]?.[mixAt];
  if (!feed) return '';
  const all = [
    feed,
    ...view.derived.secondFeeds.filter((it) => it.mixId === feed.mixId && it.sourceId === feed.sourceId),
  ];
  return all
    .flatMap(({ purpose, levelDb, tap }) =>
      purpose === null || levelDb === null
        ? []
        : [feedText(purpose, levelDb) + (tap === 'post-fader' ? ' post' : '')],
    )
    .join(', ');
}

const wishFields: Field<{ wish: Wish; view: ActView }>[] = [
  { title: 'Mix', of: ({ wish, view }) => mixName(view, wish.mixId) },
  { title: 'For', grow: 1, of: ({ wish, view }) => mixOf(view, wish.mixId)?.listeners.join(', ') ?? '' },
  { title: 'Asked for', grow: 1, of: ({ wish, view }) => aimOf(view, wish) },
  {
    title: 'How much',
    of: ({ wish }) => wish.amount ?? (wish.levelDb === null ? 'as it is' : `${shortLevel(wish.levelDb)} dB`),
  },
  { title: 'In their words', grow: 2, of: ({ wish }) => wish.words },
  { title: 'Confirmed', kind: 'tick', of: ({ wish }) => wish.confirmed },
];

function wishTable(view: ActView): TablePart {
  return tableOf(
    wishFields,
    inMixOrder(view).map((wish) => ({ wish, view })),
    { heading: 'Wishes', key: ({ wish }) => wish.id, empty: 'Nobody has asked for anything yet.' },
  );
}

function inMixOrder(view: ActView): Wish[] {
  return view.mixes.flatMap(({ mix }) => view.sheet.wishes.filter((it) => it.mixId === mix.id));
}

function mixOf(view: ActView, mixId: string): MixView | undefined {
  return view.mixes.find((it) => it.mix.id === mixId);
}

function mixName(view: ActView, mixId: string): string {
  const found = mixOf(view, mixId);
  return found ? `${found.number} ${found.mix.name}` : '';
}

function aimOf(view: ActView, wish: Wish): string {
  if (wish.sourceId !== null)
    return view.lines.find((it) => it.source.id === wish.sourceId)?.source.name ?? '';
  if (wish.sameAsMixId !== null) return `the same as mix ${mixName(view, wish.sameAsMixId)}`;
  return wish.group === 'everything' ? 'everything' : `all ${wish.group}`;
}
