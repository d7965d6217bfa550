import { actSheet } from '../show/act-sheet.ts';
import { type PartRoot, partOfShow, runTables } from '../show/part-of-show.ts';
import type { Id } from '../show/rig.ts';
import {
  documentFromShow,
  type Show,
  type ShowDocument,
  showFromRows,
  type TableName,
} from '../show/show.ts';

/** What is found in the archive by its name. */
export const archivedKinds = ['act', 'performer', 'source'] as const;
export type ArchivedKind = (typeof archivedKinds)[number];
export type ArchivedName = { kind: ArchivedKind; name: string };

/**
 * An act as a show of its own: the act with all that belongs to it, its day, and the desk, boxes, buses, outputs and
 * devices it was planned on, so that everything derived of it can be derived again years later. Null: no such act.
 */
export function documentOfArchive(show: Show, actId: Id): ShowDocument | null {
  const sheet = actSheet(show, actId);
  if (!sheet) return null;
  const root: PartRoot = { table: 'acts', id: actId };
  const { rig, boxes, sockets, buses, outputs, devices, cueOutputs, day } = sheet;
  return {
    ...documentFromShow(partOfShow(show, root)),
    rigs: [rig],
    boxes,
    sockets,
    buses,
    outputs,
    devices,
    cueOutputs,
    days: [day],
  };
}

/** The same without what happened on the day. */
export function withoutRun(document: ShowDocument): ShowDocument {
  return { ...document, ...Object.fromEntries(runTables.map((table) => [table, []])) };
}

/** The one act of an archived document with its show; null where it is not one act. */
export function actOfArchive(document: ShowDocument): { show: Show; actId: Id } | null {
  const [act] = document.acts;
  return act && document.acts.length === 1 ? { show: showFromRows(document), actId: act.id } : null;
}

/** Every name of an archived act that is searched for. A name that stands in it twice is one. */
export function namesOfArchive(document: ShowDocument): ArchivedName[] {
  const all = (
    [
      ['act', 'acts'],
      ['performer', 'performers'],
      ['source', 'sources'],
    ] as const satisfies readonly [ArchivedKind, TableName][]
  ).flatMap(([kind, table]) => document[table].map(({ name }) => ({ kind, name: name.trim() })));
  const seen = new Set<string>();
  return all.filter(({ kind, name }) => {
    const key = `${kind} ${name}`;
    return name !== '' && !seen.has(key) && seen.add(key) !== undefined;
  });
}
