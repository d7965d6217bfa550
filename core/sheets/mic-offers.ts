import type { StockItem } from '../show/rig.ts';
import { stockKey } from '../show/stock-key.ts';
import type { ActView, LineView } from './act-view.ts';
import { numbersText } from './plot-clusters.ts';

/** What the house gives where a microphone or DI box was asked for by name. */
type Offer = {
  /** As the rider asks for it. */
  asked: string;
  /** The name in the stock; null where the house has nothing like it. */
  offered: string | null;
  is: 'as asked' | 'named by the band' | 'alike' | 'none';
  lines: number[];
};

/** Words that tell how a microphone works or where it sits: two that share one may stand in for one another. */
const typeWords =
  /\b(dynamic|condenser|ribbon|clip|boundary|shotgun|lavalier|headset|omni|handheld|wireless|radio|active|passive)\b/g;
const typesOf = (text: string): Set<string> => new Set(stockKey(text).match(typeWords) ?? []);

/** What the band says may stand in. */
const standIns = ({ source }: LineView): string[] => source.pickUpInstead.split(';').map(stockKey);

/** "or equivalent": the band takes whatever is alike. */
const takesAlike = (line: LineView): boolean => standIns(line).some((text) => alikeWords.test(text));
const alikeWords =
  /\b(?:similar|equivalent|equal|comparable|alike|vergleichbar\w*|gleichwertig\w*|ähnlich\w*|équivalent\w*|similaire\w*|equivalente\w*|simil\w*|vergelijkbaar|gelijkwaardig)\b/u;

/**
 * Offers for the lines whose pick-up is asked for by name and not brought by the band. Empty where the stock names no
 * microphones and no DI boxes: then nothing is known and nothing is promised.
 */
function micOffers({ lines, sheet }: Pick<ActView, 'lines' | 'sheet'>): Offer[] {
  const stock = sheet.stockItems.filter(
    (item) => (item.kind === 'mic' || item.kind === 'di') && item.name !== '',
  );
  if (stock.length === 0) return [];
  const left = new Map(stock.map((item) => [item.id, item.count]));
  const offers: Offer[] = [];
  for (const line of lines) {
    const { source } = line;
    if (source.pickUpModel === '' || source.broughtBy === 'band' || source.pickUp === 'line') continue;
    const found = offerFor(line, stock, left);
    if (found.item) left.set(found.item.id, (left.get(found.item.id) ?? 0) - 1);
    const offered = found.item?.name ?? null;
    const known = offers.find(
      (it) => it.asked === source.pickUpModel && it.offered === offered && it.is === found.is,
    );
    if (known) known.lines.push(line.line);
    else offers.push({ asked: source.pickUpModel, offered, is: found.is, lines: [line.line] });
  }
  return offers;
}

function offerFor(
  line: LineView,
  stock: readonly StockItem[],
  left: ReadonlyMap<string, number>,
): { item: StockItem | null; is: Offer['is'] } {
  const kind = line.source.pickUp === 'di' ? 'di' : 'mic';
  const free = stock.filter((item) => item.kind === kind && (left.get(item.id) ?? 0) > 0);
  const asked = stockKey(line.source.pickUpModel);
  const named = (text: string) => free.find((item) => text === stockKey(item.name)) ?? null;
  const same = named(asked);
  if (same) return { item: same, is: 'as asked' };
  for (const other of standIns(line)) {
    const item = named(other);
    if (item) return { item, is: 'named by the band' };
  }
  const types = typesOf(asked);
  const [alike] = free
    .map((item) => ({ item, shared: [...typesOf(item.name)].filter((type) => types.has(type)).length }))
    .filter(({ shared }) => shared > 0)
    .sort((a, b) => b.shared - a.shared || a.item.order - b.item.order);
  return alike
    ? { item: alike.item, is: takesAlike(line) ? 'named by the band' : 'alike' }
    : { item: null, is: 'none' };
}

/** The offers as sentences to the band: what it gets instead, and what it has to say. */
export function micOfferTexts(view: Pick<ActView, 'lines' | 'sheet'>): string[] {
  const offers = micOffers(view);
  const asAsked = offers.filter(({ is }) => is === 'as asked').flatMap(({ lines }) => lines);
  return [
    ...(asAsked.length > 0 ? [`As you asked: ${linesText(asAsked)}.`] : []),
    ...offers.flatMap((offer) => textOf(offer) ?? []),
  ];
}

const linesText = (lines: readonly number[]) =>
  `${lines.length === 1 ? 'line' : 'lines'} ${numbersText(lines)}`;

function textOf({ asked, offered, is, lines }: Offer): string | null {
  const where = linesText(lines).replace(/^l/, 'L');
  if (is === 'as asked') return null;
  if (is === 'none')
    return `${where}: you asked for “${asked}”, which we do not have. What may stand in for it?`;
  const instead = `${where}: you asked for “${asked}”, we offer “${offered}”`;
  return is === 'named by the band'
    ? `${instead}, as your rider allows.`
    : `${instead}. Please say if it will not do.`;
}
