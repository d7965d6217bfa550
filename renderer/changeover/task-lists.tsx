import type { KeyboardEvent } from 'react';
import type { ScheduledTask } from '../../core/changeover/changeover.ts';
import { keyOfTask } from '../../core/changeover/task-key.ts';
import { lengthText } from '../day/fit.ts';
import { words } from '../wording/words.ts';
import type { TaskGroup } from './task-groups.ts';
import './task-lists.css';

type Props = {
  groups: readonly TaskGroup[];
  isDone: (task: ScheduledTask) => boolean;
  /** Who does a task, where the list does not say it. */
  whoDoes: ((task: ScheduledTask) => string) | null;
  onTick: (task: ScheduledTask) => void;
};

/**
 * Tasks to tick. The first list, the desk's, is the longest and has a column of its own. Up and down go through a
 * list, left and right to the list beside it.
 */
export function TaskLists({ groups, ...rest }: Props) {
  const [desk, ...others] = groups;
  return (
    <ul className="task-lists" onKeyDown={moveFocus}>
      {desk && <TaskList group={desk} {...rest} />}
      <li>
        <ul className="task-lists-beside">
          {others.map((group) => (
            <TaskList key={group.key} group={group} {...rest} />
          ))}
        </ul>
      </li>
    </ul>
  );
}

function TaskList({ group, isDone, whoDoes, onTick }: Omit<Props, 'groups'> & { group: TaskGroup }) {
  const { head, note, tasks } = group;
  return (
    <li className="task-list">
      <h3>
        {head} <span className="quiet">{note}</span>
      </h3>
      {tasks.length === 0 && <p className="quiet">{words.changeover.nothing}</p>}
      <ol>
        {tasks.map((task) => (
          <TaskLine
            key={keyOfTask(task)}
            task={task}
            done={isDone(task)}
            who={whoDoes?.(task) ?? ''}
            onTick={onTick}
          />
        ))}
      </ol>
    </li>
  );
}

function TaskLine({
  task,
  done,
  who,
  onTick,
}: {
  task: ScheduledTask;
  done: boolean;
  who: string;
  onTick: (task: ScheduledTask) => void;
}) {
  const text = words.changeover;
  const isTimed = task.endSeconds > 0;
  const classes = [
    'task',
    !isTimed && 'is-untimed',
    task.isCritical && 'is-critical',
    done && 'is-done',
  ].filter(Boolean);
  return (
    <li className={classes.join(' ')}>
      <label>
        <input type="checkbox" checked={done} onChange={() => onTick(task)} />
        {isTimed && <span className="task-time">{lengthText(task.startSeconds)}</span>}
        <span className="task-what">
          {task.what}
          {who !== '' && <span className="quiet"> {who}</span>}
          {task.isCritical && (
            <>
              <CriticalMark />
              <span className="unseen"> {text.critical}</span>
            </>
          )}
        </span>
      </label>
    </li>
  );
}

export function CriticalMark() {
  return (
    <svg className="critical-mark" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M2 1.5h2.2v13H2ZM5 2.5h9.5L12 6.2l2.5 3.8H5Z" />
    </svg>
  );
}

function moveFocus(event: KeyboardEvent<HTMLElement>): void {
  const target = event.target as HTMLElement;
  if (!target.matches('input[type="checkbox"]') || event.ctrlKey || event.altKey) return;
  const lists = [...event.currentTarget.querySelectorAll('.task-list')].map((list) => [
    ...list.querySelectorAll<HTMLElement>('input[type="checkbox"]'),
  ]);
  const column = lists.findIndex((list) => list.includes(target));
  const row = lists[column]?.indexOf(target) ?? 0;
  const next = {
    ArrowDown: lists[column]?.[row + 1],
    ArrowUp: lists[column]?.[row - 1],
    ArrowRight: nearest(lists.slice(column + 1), row),
    ArrowLeft: nearest(lists.slice(0, column).reverse(), row),
  }[event.key];
  if (!event.key.startsWith('Arrow')) return;
  event.preventDefault();
  next?.focus();
}

/** The same line, or the last one, of the next list that has any. */
function nearest(lists: readonly HTMLElement[][], row: number): HTMLElement | undefined {
  const list = lists.find((it) => it.length > 0);
  return list?.[Math.min(row, list.length - 1)];
}
