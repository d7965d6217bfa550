import type { Copy, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { type Purpose, purposes } from '../show/words.ts';
import { doublingUnits } from './doubling-order.ts';
import { NumbersInUse } from './numbers-in-use.ts';
import type { PassedOver, PlannedCopy } from './plan.ts';

type RowsOfSource = Partial<Record<Purpose, Copy>>;

/**
 * The channels of an act: what the engineer decided stays, every source gets the channel that it needs, and
 * copies for monitors are proposed down the doubling order as long as channels last. Sources keep the order of
 * the sheet, the sides of a pair lie side by side, copies for monitors follow after all others.
 */
export function planCopies(sheet: ActSheet): { copies: PlannedCopy[]; passedOver: PassedOver[] } {
  const desk = new NumbersInUse(sheet.rig.channelCount);
  const rows = rowsOfCopies(sheet);
  const copies = new Map<Id, PlannedCopy[]>();
  for (const source of sheet.sources) {
    const needed = neededCopies(source, rows.get(source.id) ?? {});
    for (const { channel } of needed) if (channel !== null) desk.take(channel);
    copies.set(source.id, needed);
  }
  // The FOH channel where there is one, for it comes first.
  giveChannels(sheet, desk, (source) => copies.get(source.id)?.[0]);
  for (const purpose of new Set(sheet.copies.map((row) => row.purpose)))
    giveChannels(sheet, desk, (source) => copyFor(copies.get(source.id), purpose));
  const passedOver = proposeMonitorCopies(sheet, rows, copies, desk);
  giveChannels(sheet, desk, (source) => copyFor(copies.get(source.id), 'monitors'));
  return { copies: sheet.sources.flatMap((source) => copies.get(source.id) ?? []), passedOver };
}

function copyFor(copies: readonly PlannedCopy[] | undefined, purpose: Purpose): PlannedCopy | undefined {
  if (copies) for (const copy of copies) if (copy.purpose === purpose) return copy;
  return undefined;
}

/** What was decided about copies, by source and purpose. Of two rows about one copy the later holds. */
export function rowsOfCopies(sheet: ActSheet): Map<Id, RowsOfSource> {
  const rows = new Map<Id, RowsOfSource>();
  for (const row of sheet.copies) {
    const ofSource = rows.get(row.sourceId) ?? {};
    ofSource[row.purpose] = row;
    rows.set(row.sourceId, ofSource);
  }
  return rows;
}

/** The copies a source has whatever the desk has room for: by its audience, and by the engineer's rows. */
function neededCopies(source: Source, rows: RowsOfSource): PlannedCopy[] {
  const copies: PlannedCopy[] = [];
  for (const purpose of purposes) {
    const row = rows[purpose];
    const why = needOf(source, purpose);
    if (row ? !row.wanted : why === null) continue;
    copies.push({
      sourceId: source.id,
      purpose,
      channel: row?.channel ?? null,
      by: row?.locked ? 'engineer' : 'proposal',
      why: row?.locked ? 'The engineer decided this copy.' : (why ?? 'A proposed copy that was taken.'),
    });
  }
  return copies;
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
  copyOf: (source: Source) => PlannedCopy | undefined,
): void {
  const { sourceAt } = indexSheet(sheet);
  for (const source of sheet.sources) {
    const copy = copyOf(source);
    if (!copy || copy.channel !== null) continue;
    const pair =
      source.pairSourceId === null ? undefined : sheet.sources[sourceAt.get(source.pairSourceId) ?? -1];
    const other = pair && pair !== source ? copyOf(pair) : undefined;
    if (other && other.channel === null) {
      const channels = desk.takeLowestPair();
      copy.channel = channels?.[0] ?? desk.takeLowest();
      other.channel = channels?.[1] ?? desk.takeLowest();
    } else copy.channel = takeBeside(desk, other?.channel ?? null) ?? desk.takeLowest();
  }
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
  rows: ReadonlyMap<Id, RowsOfSource>,
  copies: ReadonlyMap<Id, PlannedCopy[]>,
  desk: NumbersInUse,
): PassedOver[] {
  const passedOver: PassedOver[] = [];
  let free = desk.freeCount();
  for (const unit of doublingUnits(sheet)) {
    const open = unit.sources.filter((source) => source.audience === 'front of house and monitors');
    if (open.some((source) => rows.get(source.id)?.monitors?.wanted === false)) continue;
    const missing = open.filter((source) => !copyFor(copies.get(source.id), 'monitors'));
    if (missing.length === 0) continue;
    if (missing.length > free) {
      for (const { id } of missing)
        passedOver.push({
          sourceId: id,
          why: `No copy for monitors: the desk has ${free} free channels left.`,
        });
      continue;
    }
    free -= missing.length;
    const why = `A copy for monitors: ${unit.why}.`;
    for (const { id } of missing) {
      const ofSource = copies.get(id) ?? [];
      // Behind the FOH channel, so that the copies of a source stay in the order of purposes.
      const place = ofSource.findIndex((copy) => copy.purpose !== 'foh');
      ofSource.splice(place < 0 ? ofSource.length : place, 0, {
        sourceId: id,
        purpose: 'monitors',
        channel: null,
        by: 'proposal',
        why,
      });
    }
  }
  return passedOver;
}
