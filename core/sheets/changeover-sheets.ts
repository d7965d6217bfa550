import type { Changeover, ScheduledTask } from '../changeover/changeover.ts';
import type { Task } from '../changeover/task.ts';
import { sheetOfAct } from './act-heading.ts';
import type { ActView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { tickField } from './line-fields.ts';
import type { Fact, Part, Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

/** What is to be done before an act can play, and who played before it. */
export type ChangeoverView = { fromName: string; changeover: Changeover };

type TaskView = { task: ScheduledTask; at: number; changeover: Changeover };

const at: Field<TaskView> = {
  title: 'At',
  align: 'right',
  of: ({ task, changeover }) => startText(task, changeover),
};
const what: Field<TaskView> = { title: 'What', grow: 3, of: ({ task }) => task.what };
const where: Field<TaskView> = { title: 'Where', grow: 1, of: ({ task }) => task.placeName };
const urgent: Field<TaskView> = {
  title: 'In time',
  of: ({ task }) => (task.isCritical ? 'must not wait' : ''),
};
const who: Field<TaskView> = {
  title: 'Who',
  of: ({ task, changeover }) => {
    const names = task.people.map((it) => changeover.people[it]?.name ?? '');
    return task.desk > 0 ? ['desk', ...names].join(', ') : names.join(', ');
  },
};

const aheadWhat: Field<Task> = { title: 'What', grow: 3, of: (task) => task.what };
const aheadWhere: Field<Task> = { title: 'Where', grow: 1, of: (task) => task.placeName };

/** Each person's tasks in the order they are walked. */
export function changeoverByPerson(view: ActView, before: ChangeoverView | null): Sheet {
  const fields = [at, what, where, urgent, tickField<TaskView>('Done')];
  return changeoverSheet('changeover by person', 'Changeover, by person', view, before, (changeover) => {
    const all = taskViews(changeover);
    const lists = [
      { name: 'Desk', tasks: all.filter(({ task }) => task.desk > 0) },
      ...changeover.people.map(({ name, tasks }) => ({ name, tasks: tasks.flatMap((it) => all[it] ?? []) })),
    ];
    return lists.map(({ name, tasks }) =>
      tableOf(fields, tasks.toSorted(byStart), {
        heading: name,
        key: taskKey,
        look: lookOf,
        empty: 'Nothing to do in this changeover.',
      }),
    );
  });
}

/** What is to be done at each place of the stage. */
export function changeoverByPlace(view: ActView, before: ChangeoverView | null): Sheet {
  const fields = [where, at, who, what, urgent, tickField<TaskView>('Done')];
  return changeoverSheet('changeover by place', 'Changeover, by place', view, before, (changeover) => [
    tableOf(
      fields,
      taskViews(changeover).toSorted(
        (a, b) => collator.compare(a.task.placeName, b.task.placeName) || byStart(a, b),
      ),
      { key: taskKey, look: lookOf, empty: 'Nothing has to be done.' },
    ),
  ]);
}

/** What is plugged while the act before still plays. */
function aheadOf({ fromName, changeover }: ChangeoverView): Part[] {
  if (changeover.ahead.length === 0) return [];
  const fields = [aheadWhat, aheadWhere, tickField<Task>('Done')];
  return [
    tableOf(fields, changeover.ahead, {
      heading: `Ahead, while ${fromName} plays`,
      key: (task) => `ahead ${task.sourceId} ${task.socketId}`,
      empty: 'Nothing is plugged ahead.',
    }),
  ];
}

/** "A2" comes before "A10". */
const collator = new Intl.Collator('en', { numeric: true });

function changeoverSheet(
  id: string,
  title: string,
  view: ActView,
  before: ChangeoverView | null,
  partsOf: (changeover: Changeover) => Part[],
): Sheet {
  const parts: Part[] = before
    ? [...aheadOf(before), ...partsOf(before.changeover)]
    : [
        {
          is: 'text',
          heading: null,
          paragraphs: ['This act opens the day: it is set up in peace, and there is no changeover.'],
        },
      ];
  return sheetOfAct(id, title, view, {
    cautions: before ? [cautions.changeover] : [],
    facts: before ? factsOf(before) : [],
    parts,
  });
}

function factsOf({ fromName, changeover }: ChangeoverView): Fact[] {
  const needed = changeover.secondsNeeded;
  const facts = [
    { label: 'After', value: fromName },
    { label: 'Time there', value: minutesText(changeover.secondsThere) },
    { label: 'Needed', value: needed === null ? (changeover.problem ?? '') : minutesText(needed) },
    { label: 'Limited by', value: needed === null ? '' : changeover.limitedBy },
  ];
  if (needed !== null && needed > changeover.secondsThere)
    facts.push({ label: 'TOO LONG by', value: minutesText(needed - changeover.secondsThere) });
  return facts;
}

/** Minutes and seconds: "4:05 min". */
function minutesText(seconds: number): string {
  return `${clock(seconds)} min`;
}

function clock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(Math.round(seconds) % 60).padStart(2, '0')}`;
}

function startText({ startSeconds }: ScheduledTask, { secondsNeeded }: Changeover): string {
  return secondsNeeded === null ? '' : clock(startSeconds);
}

function taskViews(changeover: Changeover): TaskView[] {
  return changeover.tasks.map((task, place) => ({ task, at: place, changeover }));
}

const byStart = (a: TaskView, b: TaskView) => a.task.startSeconds - b.task.startSeconds || a.at - b.at;
const taskKey = ({ task }: TaskView) => `${task.kind} ${task.what}`;
const lookOf = ({ task }: TaskView) => (task.isCritical ? 'strong' : 'plain');
