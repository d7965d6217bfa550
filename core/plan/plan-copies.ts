import type { Copy, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { remembered } from '../show/remember.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { type Purpose, purposes } from '../show/words.ts';
import { doublingUnits } from './doubling-order.ts';
import { NumbersInUse } from './numbers-in-use.ts';
import type { PassedOver, PlannedCopy } from './plan.ts';

type RowsOfSource = Partial<Record<Purpose, Copy>>;

/**
 * What is planned so far: for each purpose the copy of every source, in sheet order; null where it has none. A purpose
 * that no source has is an empty list.
 */
type Layers = Record<Purpose, (PlannedCopy | null)[]>;

/**
 * The channels of an act: what the engineer decided stays, every source gets the channel that it needs, and
 * copies for monitors are proposed down the doubling order as long as channels last. Sources keep the order of
 * the sheet, the sides of a pair lie side by side, copies for monitors follow after all others.
 */
export function planCopies(sheet: ActSheet): { copies: PlannedCopy[]; passedOver: PassedOver[] } {
  const desk = new NumbersInUse(sheet.rig.channelCount);
  const rows = rowsOfCopies(sheet);
  const hasRows = new Set(sheet.copies.map((row) => row.purpose));
  const needed = (purpose: Purpose) =>
    purpose === 'foh' || purpose === 'monitors' || hasRows.has(purpose)
      ? sheet.sources.map((source, at) => neededCopy(source, purpose, rows[at]?.[purpose]))
      : [];
  const layers: Layers = {
    foh: needed('foh'),
    monitors: needed('monitors'),
    wedges: needed('wedges'),
    'in-ears': needed('in-ears'),
    parallel: needed('parallel'),
  };
  if (sheet.copies.length > 0)
    for (const { channel } of inOrder(layers)) if (channel !== null) desk.take(channel);
  // The FOH channel where there is one, for it comes first.
  giveChannels(sheet, desk, (at) => firstCopy(layers, at));
  for (const purpose of hasRows) giveChannels(sheet, desk, (at) => layers[purpose][at] ?? null);
  const passedOver = proposeMonitorCopies(sheet, rows, layers.monitors, desk);
  giveChannels(sheet, desk, (at) => layers.monitors[at] ?? null);
  return { copies: inOrder(layers), passedOver };
}

function firstCopy(layers: Layers, at: number): PlannedCopy | null {
  for (const purpose of purposes) {
    const copy = layers[purpose][at];
    if (copy) return copy;
  }
  return null;
}

/** Source by source, the copies of each in the order of purposes. */
function inOrder(layers: Layers): PlannedCopy[] {
  const copies: PlannedCopy[] = [];
  const used = purposes.map((purpose) => layers[purpose]).filter((layer) => layer.length > 0);
  for (let at = 0; at < layers.foh.length; at++)
    for (const layer of used) {
      const copy = layer[at];
      if (copy) copies.push(copy);
    }
  return copies;
}

const noRows: RowsOfSource = {};

/** What was decided about the copies of each source, in sheet order. Of two rows about one copy the later holds. */
export const rowsOfCopies = remembered((sheet: ActSheet): readonly RowsOfSource[] => {
  const { sourceAt } = indexSheet(sheet);
  const rows: RowsOfSource[] = sheet.sources.map(() => noRows);
  for (const row of sheet.copies) {
    const at = sourceAt.get(row.sourceId);
    if (at !== undefined) rows[at] = { ...rows[at], [row.purpose]: row };
  }
  return rows;
});

/** The copy a source has whatever the desk has room for: by its audience, or by the engineer's row. */
function neededCopy(source: Source, purpose: Purpose, row: Copy | undefined): PlannedCopy | null {
  const why = needOf(source, purpose);
  if (row ? !row.wanted : why === null) return null;
  return {
    sourceId: source.id,
    purpose,
    channel: row?.channel ?? null,
    by: row?.locked ? 'engineer' : 'proposal',
    why: row?.locked ? 'The engineer decided this copy.' : (why ?? 'A proposed copy that was taken.'),
  };
}

function needOf(source: Source, purpose: Purpose): string | null {
  if (purpose === 'foh' && source.audience === 'front of house only') return 'Heard at front of house only.';
  if (purpose === 'foh' && source.audience === 'front of house and monitors')
    return 'Every source has a channel for front of house.';
  if (purpose === 'monitors' && source.audience === 'monitors only')
    return 'Heard in the monitors only, so this is its one channel.';
  return null;
}

/** Channels in source order for one copy of each source; a pair gets two side by side where there are any. */
function giveChannels(
  sheet: ActSheet,
  desk: NumbersInUse,
  copyOf: (sourceAt: number) => PlannedCopy | null,
): void {
  const { sourceAt } = indexSheet(sheet);
  sheet.sources.forEach(({ pairSourceId }, at) => {
    const copy = copyOf(at);
    if (!copy || copy.channel !== null) return;
    const pairAt = pairSourceId === null ? at : (sourceAt.get(pairSourceId) ?? at);
    const other = pairAt === at ? null : copyOf(pairAt);
    if (other && other.channel === null) {
      const channels = desk.takeLowestPair();
      copy.channel = channels?.[0] ?? desk.takeLowest();
      other.channel = channels?.[1] ?? desk.takeLowest();
    } else copy.channel = takeBeside(desk, other?.channel ?? null) ?? desk.takeLowest();
  });
}

/** The other side of a pair that has its channel already: the one after it, or the one before. */
function takeBeside(desk: NumbersInUse, channel: number | null): number | null {
  if (channel === null) return null;
  for (const beside of [channel + 1, channel - 1])
    if (desk.isFree(beside)) {
      desk.take(beside);
      return beside;
    }
  return null;
}

/** Adds copies for monitors, without channels yet, unit by unit while channels last. */
function proposeMonitorCopies(
  sheet: ActSheet,
  rows: readonly RowsOfSource[],
  copies: (PlannedCopy | null)[],
  desk: NumbersInUse,
): PassedOver[] {
  const passedOver: PassedOver[] = [];
  let free = desk.freeCount();
  const isOpen = (at: number) => sheet.sources[at]?.audience === 'front of house and monitors';
  for (const { unit, why } of doublingUnits(sheet)) {
    if (unit.some((at) => isOpen(at) && rows[at]?.monitors?.wanted === false)) continue;
    const missing = unit.filter((at) => isOpen(at) && !copies[at]);
    const fits = missing.length <= free;
    if (fits) free -= missing.length;
    for (const at of missing) {
      const sourceId = sheet.sources[at]?.id ?? '';
      if (fits) copies[at] = { sourceId, purpose: 'monitors', channel: null, by: 'proposal', why };
      else
        passedOver.push({
          sourceId,
          why: `No copy for monitors: the desk has ${free} free channels left.`,
        });
    }
  }
  return passedOver;
}
