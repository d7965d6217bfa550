import type { Change } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';

/** True where the show already is as the change would make it: it arrived although its answer was lost. */
export function changesNothing(show: Show, change: Change): boolean {
  return (
    change.remove.every(({ table, id }) => !show[table].has(id)) &&
    change.put.every(({ table, row }) => sameRow(show[table].get(row.id), row))
  );
}

function sameRow(one: object | undefined, other: object): boolean {
  return one !== undefined && inOrder(one) === inOrder(other);
}

const inOrder = (row: object): string =>
  JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)));
