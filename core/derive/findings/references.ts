import { references } from '../../show/references.ts';
import type { Id } from '../../show/rig.ts';
import { type ActFacts, sourceOf } from '../facts.ts';
import { type Case, casesOf, type FindingRule } from './rule.ts';
import { aboutSource, quoted } from './say.ts';

/** Rows that name something which is not there. The show's own rules keep this out; a foreign file may not. */
export const referenceFindings: readonly FindingRule[] = [
  {
    code: 'names-what-is-not-there',
    severity: 'must fix',
    when: ['lost references'],
    needs: 'all rows of the act and its rig',
    cause:
      '{row} names {what} "{missing}", which is not in this act or its rig; the plan goes on without it.',
    remedy: 'Enter what is missing, or remove the row that names it.',
    find: (facts) => lostReferences(facts),
  },
  {
    code: 'pair-not-mutual',
    severity: 'look again',
    when: ['pairs'],
    needs: 'stereo pairs',
    cause: '{source} names {other} as the other side of its pair, which names {back}.',
    remedy: 'Make them name each other, or end the pair.',
    find: (facts) =>
      casesOf(facts.sheet.sources, (source) => {
        const other = source.pairSourceId === null ? undefined : sourceOf(facts, source.pairSourceId);
        if (!other || (other.pairSourceId === source.id && other !== source)) return null;
        const backAt = facts.index.sourceAt.get(other.pairSourceId ?? '');
        const back =
          other === source
            ? 'itself'
            : backAt === undefined
              ? 'nothing'
              : quoted(facts.sheet.sources[backAt]);
        return { say: { source, other, back }, about: [aboutSource(source)] };
      }),
  },
];

/** Tables of a sheet and how one of their rows is called. */
const rowNames = {
  boxes: 'a box',
  sockets: 'a socket',
  buses: 'a bus',
  outputs: 'an output',
  devices: 'a device',
  cueOutputs: 'a cue output',
  performers: 'a performer',
  sources: 'a source',
  mixes: 'a mix',
  listeners: 'a listener',
  wishes: 'a wish',
  copies: 'a copy',
  alternates: 'an alternate',
  decisions: 'a decision',
} as const;
type SheetTable = keyof typeof rowNames;

const isSheetTable = (table: string): table is SheetTable => table in rowNames;

function lostReferences(facts: ActFacts): Case[] {
  const cases: Case[] = [];
  const about: Case['about'] = [{ of: 'act', id: facts.sheet.act.id }];
  const idsOf = idsByTable(facts);
  for (const { table, field, to } of references) {
    // Wishes are many, and whoever resolved them has looked already.
    if (!isSheetTable(table) || !isSheetTable(to) || table === 'wishes') continue;
    const rows = facts.sheet[table] as readonly Record<string, unknown>[];
    if (rows.length === 0) continue;
    for (const missing of missingIn(rows, field, idsOf(to)))
      cases.push({ say: { row: rowNames[table], what: rowNames[to], missing }, about });
  }
  for (const wishAt of facts.wishes.lost) {
    const wish = facts.sheet.wishes[wishAt];
    if (!wish) continue;
    const mixIsThere = facts.index.mixAt.has(wish.mixId);
    const missing = mixIsThere ? (wish.sourceId ?? wish.sameAsMixId ?? '') : wish.mixId;
    const what = mixIsThere && wish.sourceId !== null ? rowNames.sources : rowNames.mixes;
    cases.push({ say: { row: rowNames.wishes, what, missing }, about });
  }
  return cases;
}

/**
 * Whether some row names what is not there. Lists that most acts leave empty are not searched for it: where they hold
 * something, the rule has to look.
 */
export function someReferenceIsLost({ sheet, index, people, wishes }: ActFacts): boolean {
  if (people.someAreLost || wishes.lost.length > 0 || index.boxAtOfSocket.includes(-1)) return true;
  if (sheet.copies.length + sheet.alternates.length + sheet.decisions.length > 0) return true;
  const isLost = (id: Id | null, list: IndexedList) => id !== null && !index[list].has(id);
  for (const { boxId } of sheet.outputs) if (isLost(boxId, 'boxAt')) return true;
  for (const { outputId, secondOutputId } of sheet.devices)
    if (isLost(outputId, 'outputAt') || isLost(secondOutputId, 'outputAt')) return true;
  for (const { outputId, secondOutputId, busId, deviceId } of sheet.cueOutputs)
    if (
      isLost(outputId, 'outputAt') ||
      isLost(secondOutputId, 'outputAt') ||
      isLost(busId, 'busAt') ||
      isLost(deviceId, 'deviceAt')
    )
      return true;
  for (const { pairSourceId, returnsMixId, returnsCueOutputId } of sheet.sources)
    if (isLost(pairSourceId, 'sourceAt') || isLost(returnsMixId, 'mixAt') || returnsCueOutputId !== null)
      return true;
  return false;
}

type IndexedList = 'sourceAt' | 'mixAt' | 'boxAt' | 'outputAt' | 'busAt' | 'deviceAt';

type Ids = ReadonlySet<Id>;

function idsByTable({ sheet }: ActFacts): (table: SheetTable) => Ids {
  const known = new Map<SheetTable, Ids>();
  return (table) => {
    const ids = known.get(table) ?? new Set(sheet[table].map((row) => row.id));
    known.set(table, ids);
    return ids;
  };
}

/** What a field of rows names that is not there. */
function missingIn(rows: readonly Record<string, unknown>[], field: string, there: Ids): string[] {
  const missing: string[] = [];
  // Rows of one table mostly name what the row before them names: the same box, the same act.
  let before: unknown = null;
  for (const row of rows) {
    const named = row[field];
    if (named === null || named === before || typeof named !== 'string') continue;
    if (there.has(named)) before = named;
    else missing.push(named);
  }
  return missing;
}
