import type { Feed, Finding } from '../../core/derive/derived.ts';
import type { PlannedCopy, PlannedMix } from '../../core/plan/plan.ts';
import type { Mix, Source } from '../../core/show/act.ts';
import type { Id } from '../../core/show/rig.ts';
import { factsOfKind } from '../../core/show/source-kinds.ts';
import { socketName } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { type FindingPlaces, findingPlaces } from '../state/finding-places.ts';

export type MixTableRow = {
  source: Source;
  copies: PlannedCopy[];
  socket: string | null;
  /** One for each column. */
  feeds: Feed[];
  findings: readonly Finding[];
  /** True where the group of sources changes, as a ruled line on a printed list. */
  startsGroup: boolean;
};

export type MixTableColumn = {
  mix: Mix;
  number: number;
  planned: PlannedMix | undefined;
  findings: readonly Finding[];
};

export type MixTable = { rows: MixTableRow[]; columns: MixTableColumn[]; places: FindingPlaces };

/** The act as the table of the mixes shows it: sources in channel order down, mixes in their order across. */
export function mixTable(open: ActOnScreen): MixTable {
  const { sheet, derived } = open;
  const places = findingPlaces(open);
  const plannedMixes = new Map(derived.plan.mixes.map((planned) => [planned.mixId, planned]));
  const patches = new Map(derived.plan.patches.map((patch) => [patch.sourceId, patch]));
  const copies = Map.groupBy(derived.plan.copies, (copy) => copy.sourceId);

  const rows = sheet.sources
    .map((source, place): MixTableRow & { firstChannel: number } => {
      const own = copies.get(source.id) ?? [];
      return {
        source,
        copies: own,
        firstChannel: Math.min(...own.map((copy) => copy.channel ?? Number.MAX_SAFE_INTEGER)),
        socket: socketName(sheet, patches.get(source.id)?.socketId ?? null),
        feeds: derived.feeds[place] ?? [],
        findings: places.ofSource.get(source.id) ?? [],
        startsGroup: false,
      };
    })
    .sort((a, b) => a.firstChannel - b.firstChannel || a.source.order - b.source.order);
  rows.forEach((row, index) => {
    const before = rows[index - 1];
    row.startsGroup = before !== undefined && groupOf(before.source) !== groupOf(row.source);
  });

  const columns = sheet.mixes.map((mix, index): MixTableColumn => {
    const findings = places.ofMix.get(mix.id) ?? [];
    return { mix, number: index + 1, planned: plannedMixes.get(mix.id), findings };
  });
  return { rows, columns, places };
}

const groupOf = (source: Source) => factsOfKind(source.kind).group;

export const feedKey = (mixId: Id, sourceId: Id): string => `${mixId} ${sourceId}`;
