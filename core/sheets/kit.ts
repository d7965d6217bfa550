import type { StockItem } from '../show/rig.ts';
import { stockKey } from '../show/stock-key.ts';
import { lying } from './act-heading.ts';
import type { ActView, LineView, MixView } from './act-view.ts';
import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import type { Cell, Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

export type KitRow = {
  kind: StockItem['kind'];
  name: string;
  /** How many each act of the day takes from the house, in running order. */
  ofAct: number[];
  /** In stock; null: nobody has counted. */
  stock: number | null;
};

/** What the house has to bring for an act: one entry for each thing, in the words it was asked for. */
function wantedBy({ lines, mixes }: ActView): { kind: StockItem['kind']; name: string }[] {
  return [...lines.flatMap(ofLine), ...mixes.flatMap(ofMix)];
}

/** Lines that stay on stage are counted once in the act that has them, like any other. */
function ofLine({ source }: LineView): { kind: StockItem['kind']; name: string }[] {
  if (source.broughtBy === 'band' || source.returnsMixId !== null || source.returnsCueOutputId !== null)
    return [];
  const wanted: { kind: StockItem['kind']; name: string }[] = [];
  if (source.pickUp === 'mic') wanted.push({ kind: 'mic', name: source.pickUpModel });
  if (source.pickUp === 'di') wanted.push({ kind: 'di', name: source.pickUpModel });
  if (source.stand !== '') wanted.push({ kind: 'stand', name: source.stand });
  return wanted;
}

function ofMix({ mix }: MixView): { kind: StockItem['kind']; name: string }[] {
  if (mix.ownDevice === true || mix.deviceKind === null) return [];
  const kind = mix.deviceKind === 'in-ear' ? 'in-ear pack' : mix.deviceKind === 'wedge' ? 'wedge' : 'fill';
  const name = kind === 'fill' ? mix.deviceKind : '';
  return Array.from({ length: mix.deviceCount }, () => ({ kind, name }));
}

const kindOrder: readonly StockItem['kind'][] = ['mic', 'di', 'stand', 'wedge', 'fill', 'in-ear pack'];

/** The kit of a day: what every act takes, against the stock of the house. */
export function kitOfDay({ acts, stock }: DayView): KitRow[] {
  const rows = new Map<string, KitRow>();
  acts.forEach((act, at) => {
    for (const { kind, name } of wantedBy(act)) {
      const key = kitKey({ kind, name });
      const row = rows.get(key) ?? {
        kind,
        name,
        ofAct: acts.map(() => 0),
        stock: stockOf(stock, kind, name),
      };
      row.ofAct[at] = (row.ofAct[at] ?? 0) + 1;
      rows.set(key, row);
    }
  });
  return [...rows.values()].sort(
    (a, b) => kindOrder.indexOf(a.kind) - kindOrder.indexOf(b.kind) || a.name.localeCompare(b.name, 'en'),
  );
}

function stockOf(stock: readonly StockItem[], kind: string, name: string): number | null {
  const asked = stockKey(name);
  const found = stock.filter((it) => it.kind === kind && stockKey(it.name) === asked);
  return found.length === 0 ? null : found.reduce((sum, it) => sum + it.count, 0);
}

const kitKey = ({ kind, name }: { kind: string; name: string }) => `${kind}: ${stockKey(name)}`;

const kindWords: Record<StockItem['kind'], string> = {
  mic: 'Microphone',
  di: 'DI',
  stand: 'Stand',
  wedge: 'Wedge',
  fill: 'Fill',
  'in-ear pack': 'In-ear pack',
};

const most = ({ ofAct }: KitRow) => Math.max(0, ...ofAct);

/** Two acts one after the other need both lots at once where the second is set up while the first plays. */
function mostInRow({ ofAct }: KitRow): number {
  return Math.max(0, ...ofAct, ...ofAct.slice(1).map((count, at) => count + (ofAct[at] ?? 0)));
}

function missing(row: KitRow): Cell {
  if (row.stock === null) return null;
  return Math.max(0, most(row) - row.stock) || null;
}

/** Microphones, DIs, stands, wedges and packs of the day: what to load, and what is short. */
export function kit(day: DayView): Sheet {
  const fields: Field<KitRow>[] = [
    { title: 'Kind', of: ({ kind }) => kindWords[kind] },
    { title: 'What', grow: 3, of: ({ name }) => name || 'any' },
    { title: 'Most in one act', kind: 'number', of: most },
    { title: 'Two acts in a row', kind: 'number', of: mostInRow },
    { title: 'In stock', kind: 'number', of: ({ stock }) => stock },
    { title: 'Short by', kind: 'number', of: missing },
    ...day.acts.map(
      ({ sheet }, at): Field<KitRow> => ({
        title: sheet.act.name,
        kind: 'number',
        always: true,
        of: ({ ofAct }) => ofAct[at] || null,
      }),
    ),
  ];
  return sheetOfDay('kit', 'Kit needed', day, {
    page: lying,
    parts: [
      tableOf(fields, kitOfDay(day), {
        key: kitKey,
        empty: 'No act needs anything of the house yet.',
        repeatedColumns: 2,
      }),
      {
        is: 'text',
        heading: null,
        paragraphs: [
          'Counted are the things the house brings. “Short by” compares the stock with the act that needs most; where an act is set up while another plays, look at “two acts in a row”. Nothing under “In stock” means that nobody has counted it.',
        ],
      },
    ],
  });
}
