import { rowsOfReading } from '../../core/rider/again/rows-of-reading.ts';
import type { Reading } from '../../core/rider/reading.ts';
import { Act, Day } from '../../core/show/act.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { put } from '../../core/show/change.ts';
import type { Id, Rig } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

/** A show that holds the given rig and one act: the one the reading says. */
export function showOfReading(
  house: Show,
  rig: Rig,
  reading: Reading,
  actName: string,
): { show: Show; actId: Id } {
  let count = 0;
  const newId = () => `row-${++count}`;
  const day = Day.parse({ id: newId(), rigId: rig.id, name: 'Day' });
  const act = Act.parse({ id: newId(), dayId: day.id, order: 0, name: actName.slice(0, 200) });
  const rows = rowsOfReading(reading, act.id, newId);
  // Acts of the file that the rig came from have no part in this.
  const remove = [...house.days.keys()].map((id) => ({ table: 'days' as const, id }));
  const bare = applyChange(house, { label: 'Leave the days', put: [], remove });
  const show = applyChange(bare, {
    label: 'Read',
    put: [put('days', day), put('acts', act), ...rows],
    remove: [],
  });
  return { show, actId: act.id };
}
