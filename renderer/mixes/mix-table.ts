import type { Feed, Finding } from '../../core/derive/derived.ts';
import type { PlannedCopy, PlannedMix } from '../../core/plan/plan.ts';
import type { Mix, Source } from '../../core/show/act.ts';
import type { Id } from '../../core/show/rig.ts';
import { socketNames } from '../../core/show/socket-name.ts';
import { factsOfKind } from '../../core/show/source-kinds.ts';
import { folded } from '../parts/folded.ts';
import { whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { type FindingPlaces, findingPlaces } from '../state/finding-places.ts';

export type MixTableRow = {
  source: Source;
  /** Who plays or sings it; empty where nobody is named. */
  player: string;
  copies: PlannedCopy[];
  socket: string | null;
  /** What every mix of the act takes of it, by the place of the mix in the act; told when the row is drawn. */
  feeds: () => readonly Feed[];
  findings: readonly Finding[];
  /** True where the group of sources changes, as a ruled line on a printed list. */
  startsGroup: boolean;
};

export type MixTableColumn = {
  mix: Mix;
  /** The place of the mix in its act, also where others are hidden. */
  place: number;
  who: string;
  planned: PlannedMix | undefined;
  findings: readonly Finding[];
};

export type MixTable = { rows: MixTableRow[]; columns: MixTableColumn[]; places: FindingPlaces };

/** The act as the table of the mixes shows it: sources in channel order down, mixes in their order across. */
export function mixTable(open: ActOnScreen): MixTable {
  const { sheet, derived } = open;
  const places = findingPlaces(open);
  const plannedMixes = new Map(derived.plan.mixes.map((planned) => [planned.mixId, planned]));
  const sockets = socketNames(sheet);
  const patches = new Map(derived.plan.patches.map((patch) => [patch.sourceId, patch]));
  const copies = Map.groupBy(derived.plan.copies, (copy) => copy.sourceId);
  const players = new Map(sheet.performers.map(({ id, name }) => [id, name]));

  const rows = sheet.sources
    .map((source, place): MixTableRow & { firstChannel: number } => {
      const own = copies.get(source.id) ?? [];
      return {
        source,
        player: players.get(source.performerId ?? '') ?? '',
        copies: own,
        firstChannel: Math.min(...own.map((copy) => copy.channel ?? Number.MAX_SAFE_INTEGER)),
        socket: sockets.get(patches.get(source.id)?.socketId ?? '') ?? null,
        feeds: () => derived.feedsOfSource(place),
        findings: places.ofSource.get(source.id) ?? [],
        startsGroup: false,
      };
    })
    .sort((a, b) => a.firstChannel - b.firstChannel || a.source.order - b.source.order);

  const columns = sheet.mixes.map((mix, place): MixTableColumn => {
    const findings = places.ofMix.get(mix.id) ?? [];
    return { mix, place, who: whoHears(sheet, mix), planned: plannedMixes.get(mix.id), findings };
  });
  return { rows: withGroups(rows), columns, places };
}

const groupOf = (source: Source) => factsOfKind(source.kind).group;

function withGroups(rows: readonly MixTableRow[]): MixTableRow[] {
  return rows.map((row, index) => {
    const before = rows[index - 1];
    return { ...row, startsGroup: before !== undefined && groupOf(before.source) !== groupOf(row.source) };
  });
}

/** What of the table is looked at. */
export type MixFilter = {
  /** Letters of a source, its player, its group, its kind, or of a performer who hears a mix. */
  text: string;
  /** Sources and mixes that were hidden by hand. */
  hidden: ReadonlySet<Id>;
  /** Only the sources that this mix takes. */
  heardIn: Id | null;
};

/**
 * The part of the table that the filter leaves. Letters that are found in the heads of mixes and in none of the
 * sources narrow the mixes, otherwise they narrow the sources.
 */
export function filteredTable(table: MixTable, { text, hidden, heardIn }: MixFilter): MixTable {
  const letters = folded(text.trim());
  const heardAt = table.columns.find(({ mix }) => mix.id === heardIn)?.place;
  const seen = table.rows.filter(
    (row) => !hidden.has(row.source.id) && (heardAt === undefined || row.feeds()[heardAt]?.purpose !== null),
  );
  const columns = table.columns.filter(({ mix }) => !hidden.has(mix.id));
  if (letters === '') return { ...table, rows: withGroups(seen), columns };
  const rows = seen.filter(({ source, player }) =>
    folded(`${source.name} ${player} ${groupOf(source)} ${source.kind}`).includes(letters),
  );
  if (rows.length > 0) return { ...table, rows: withGroups(rows), columns };
  const found = columns.filter(({ mix, who }) => folded(`${who} ${mix.name}`).includes(letters));
  return { ...table, rows: found.length > 0 ? withGroups(seen) : [], columns: found };
}
