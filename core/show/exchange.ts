import { z } from 'zod';
import { findBrokenReferences } from './apply-change.ts';
import { type BringBack, bringBack } from './bring-back.ts';
import { changeLabel } from './change.ts';
import { fieldOf, partOfShow } from './part-of-show.ts';
import { references } from './references.ts';
import type { Id } from './rig.ts';
import { documentFromShow, emptyShow, type Show, ShowDocument, showFromRows, tableNames } from './show.ts';

/** One act as a file for a colleague: the act and all that belongs to it, and nothing of the rig. */
export const ActDocument = z.strictObject({ ...ShowDocument.shape, format: z.literal('foldbook-act') });
export type ActDocument = z.infer<typeof ActDocument>;

/** What an exported file may hold. */
export const ExchangeDocument = z.discriminatedUnion('format', [ShowDocument, ActDocument]);
export type ExchangeDocument = z.infer<typeof ExchangeDocument>;

/**
 * How a file comes in. `beside`: everything under new ids, so that nothing there is touched. `replace`: the show
 * becomes what the file holds.
 */
export type ImportWay = { how: 'beside'; dayId: Id | null } | { how: 'replace' };

/** The act as a document, or null where there is none of that id. */
export function documentOfAct(show: Show, actId: Id): ActDocument | null {
  if (!show.acts.has(actId)) return null;
  return { ...documentFromShow(partOfShow(show, { table: 'acts', id: actId })), format: 'foldbook-act' };
}

/**
 * The change that brings a document in, with new ids from `newId` where it comes in beside. Null where an act was
 * given no day of the show to go to, or is told to replace a whole show.
 */
export function changeOfImport(
  show: Show,
  document: ExchangeDocument,
  way: ImportWay,
  newId: () => Id,
): BringBack | null {
  const given = showFromRows(document);
  if (way.how === 'replace')
    return document.format === 'foldbook-act' ? null : bringBack('Replace the show', show, show, given);
  if (document.format === 'foldbook-show')
    return bringBack('Bring in a show beside', show, emptyShow(), withNewIds(given, newId));
  const day = way.dayId === null ? undefined : show.days.get(way.dayId);
  const [act] = document.acts;
  if (!day || !act || document.acts.length > 1) return null;
  const last = Math.max(
    -1,
    ...[...show.acts.values()].filter((it) => it.dayId === day.id).map((it) => it.order),
  );
  const placed = { ...act, dayId: day.id, order: Math.min(last + 1, 100_000) };
  const rows = withNewIds(showFromRows({ ...document, acts: [placed] }), newId);
  return bringBack(changeLabel(`Bring in ${act.name}`), show, emptyShow(), rows);
}

/** The references of a document that name nothing in it, as a sentence; null where it is whole. */
export function brokenIn(document: ExchangeDocument): string | null {
  if (document.format === 'foldbook-act') return document.acts.length === 1 ? null : 'it holds no single act';
  const broken = findBrokenReferences(showFromRows(document)).length;
  return broken === 0 ? null : `${broken} times a row names something that is not in it`;
}

/** The same rows under ids of their own; references to what is not among them stay as they are. */
function withNewIds(rows: Show, newId: () => Id): Show {
  const ids = new Map<string, Id>();
  for (const table of tableNames) for (const id of rows[table].keys()) ids.set(`${table} ${id}`, newId());
  const anyTable = new Map([...ids].map(([key, id]) => [key.slice(key.indexOf(' ') + 1), id]));
  const renamed = tableNames.map((table) => [
    table,
    [...rows[table].values()].map((row) => {
      const links = references
        .filter((it) => it.table === table)
        .flatMap(({ field, to }) => {
          const id = ids.get(`${to} ${String(fieldOf(row, field))}`);
          return id === undefined ? [] : [[field, id] as const];
        });
      // The key of a task names rows of any table, parted by strokes (core/changeover/task-key.ts).
      const key = 'taskKey' in row ? { taskKey: renamedKey(row.taskKey, anyTable) } : {};
      return { ...row, ...Object.fromEntries(links), ...key, id: ids.get(`${table} ${row.id}`) };
    }),
  ]);
  return showFromRows(Object.fromEntries(renamed));
}

function renamedKey(key: string, ids: ReadonlyMap<string, Id>): string {
  return key
    .split('|')
    .map((part) => ids.get(part) ?? part)
    .join('|');
}
