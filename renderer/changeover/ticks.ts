import type { Task } from '../../core/changeover/task.ts';
import { keyOfTask } from '../../core/changeover/task-key.ts';
import type { Act } from '../../core/show/act.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { changeoverBegan, type Tick } from '../../core/show/tick.ts';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

/** The ticks of the changeover to an act, by task. */
export function ticksOf(show: Show, actId: Id): ReadonlyMap<string, Tick> {
  return new Map(
    [...show.ticks.values()].filter((tick) => tick.actId === actId).map((tick) => [tick.taskKey, tick]),
  );
}

/** Ticks a task, or takes its tick away. */
export function tickTask(ticks: ReadonlyMap<string, Tick>, act: Act, task: Task, now: Date): Change {
  const taskKey = keyOfTask(task);
  const text = words.changeover;
  return toggled(ticks.get(taskKey), act, taskKey, now, {
    on: text.tickLabel(task.what),
    off: text.untickLabel(task.what),
  });
}

/** Starts the clock of a changeover, or clears it. */
export function tickClock(ticks: ReadonlyMap<string, Tick>, act: Act, now: Date): Change {
  const text = words.changeover;
  return toggled(ticks.get(changeoverBegan), act, changeoverBegan, now, {
    on: text.beginLabel(act.name),
    off: text.stopLabel(act.name),
  });
}

function toggled(
  tick: Tick | undefined,
  act: Act,
  taskKey: string,
  now: Date,
  label: { on: string; off: string },
): Change {
  if (tick) return { label: label.off, put: [], remove: [{ table: 'ticks', id: tick.id }] };
  const row: Tick = { id: newId(), actId: act.id, taskKey, doneAt: now.toISOString() };
  return { label: label.on, put: [put('ticks', row)], remove: [] };
}

/** Takes all ticks of tasks away; the clock runs on. */
export function clearTicks(ticks: ReadonlyMap<string, Tick>, act: Act): Change {
  const tasks = [...ticks.values()].filter((tick) => tick.taskKey !== changeoverBegan);
  return {
    label: words.changeover.clearLabel(act.name),
    put: [],
    remove: tasks.map(({ id }) => ({ table: 'ticks', id })),
  };
}
