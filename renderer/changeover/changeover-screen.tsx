import { useMemo, useState } from 'react';
import {
  type Changeover,
  type ScheduledTask,
  scheduleTasks,
  usualTries,
} from '../../core/changeover/changeover.ts';
import { keyOfTask, tasksLeft } from '../../core/changeover/task-key.ts';
import { cautions } from '../../core/changeover/task-kinds.ts';
import { findStockCollisions } from '../../core/plan/day/stock.ts';
import type { Day } from '../../core/show/act.ts';
import { changeoverBegan } from '../../core/show/tick.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { SeverityMark } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { changeoverTo, dayOnScreen } from './changeover-cache.ts';
import { ChangeoverClock } from './changeover-clock.tsx';
import { DeviceTable } from './device-table.tsx';
import { groupAhead, groupsByPerson, groupsByPlace } from './task-groups.ts';
import { CriticalMark, TaskLists } from './task-lists.tsx';
import { clearTicks, tickClock, ticksOf, tickTask } from './ticks.ts';
import './changeover-screen.css';

/** From the act before to the open one: the time, the tasks in their order, the devices. */
export function ChangeoverScreen() {
  const { show, acts, open, day } = useHere();
  const text = words.changeover;
  if (!open || !day) return <EmptyScreen what={text.empty} todo={text.emptyTodo} />;
  const on = dayOnScreen(show, day, acts);
  const place = acts.findIndex((act) => act.id === open.sheet.act.id);
  const from = on.acts[place - 1];
  const changeover = changeoverTo(on, place);
  if (!from || !changeover)
    return (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
      <section className="changeover" aria-label={words.moments.changeover} tabIndex={0}>
        <h2>{text.first(open.sheet.act.name)}</h2>
        <p>{text.firstTodo}</p>
        <DeviceTable from={null} to={open} />
      </section>
    );
  return <Between key={open.sheet.act.id} day={day} from={from} to={open} changeover={changeover} />;
}

const views = ['people', 'places'] as const;

type BetweenProps = { day: Day; from: ActOnScreen; to: ActOnScreen; changeover: Changeover };

function Between({ day, from, to, changeover }: BetweenProps) {
  const { show, change } = useHere();
  const [view, setView] = useState<(typeof views)[number]>('people');
  const text = words.changeover;
  const { act } = to.sheet;
  const ticks = useMemo(() => ticksOf(show, act.id), [show, act.id]);
  const isDone = (task: ScheduledTask) => ticks.has(keyOfTask(task));
  const done = changeover.tasks.filter(isDone).length;
  const aheadDone = changeover.ahead.filter((task) => ticks.has(keyOfTask(task))).length;
  const secondsLeft = useMemo(() => secondsOfRest(changeover, day.crewSize, ticks), [changeover, day, ticks]);
  const groups = useMemo(() => {
    const all = view === 'people' ? groupsByPerson(changeover) : groupsByPlace(changeover, to.sheet);
    return [...all.slice(0, 1), ...groupAhead(changeover, from.sheet.act.name), ...all.slice(1)];
  }, [view, changeover, from, to]);
  const nameOf = (task: ScheduledTask) =>
    task.people.map((person) => changeover.people[person]?.name ?? '').join(', ');
  useMomentKeys((key) => {
    if (key === 'b' && !ticks.has(changeoverBegan)) change(tickClock(ticks, act, new Date()));
    else if (key === 'v') setView(view === 'people' ? 'places' : 'people');
    else return false;
    return true;
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="changeover" aria-label={words.moments.changeover} tabIndex={0}>
      <h2>{text.fromTo(from.sheet.act.name, act.name)}</h2>
      <ChangeoverClock
        day={day}
        from={from.sheet.act}
        to={act}
        changeover={changeover}
        secondsLeft={secondsLeft}
        done={done}
        ticks={ticks}
      />
      <FirstOfAll changeover={changeover} />
      <div className="changeover-tools">
        <fieldset className="changeover-views">
          <legend className="unseen">{text.view}</legend>
          {views.map((name) => (
            <button key={name} type="button" aria-pressed={name === view} onClick={() => setView(name)}>
              {text.views[name]}
            </button>
          ))}
        </fieldset>
        <kbd>V</kbd>
        <span className="quiet">
          <CriticalMark /> {text.criticalWhy}
        </span>
        {done + aheadDone > 0 && (
          <button type="button" className="plain" onClick={() => change(clearTicks(ticks, act))}>
            {text.clear}
          </button>
        )}
      </div>
      <TaskLists
        groups={groups}
        isDone={isDone}
        whoDoes={view === 'places' ? nameOf : null}
        onTick={(task) => change(tickTask(ticks, act, task, new Date()))}
      />
      <div className="changeover-below">
        <DeviceTable from={from} to={to} />
        <Kit day={day} names={[from.sheet.act.name, act.name]} />
      </div>
    </section>
  );
}

/** What has to be off before anybody touches a line. */
function FirstOfAll({ changeover }: { changeover: Changeover }) {
  const text = words.changeover;
  const first = changeover.tasks.filter((task) => task.kind === 'mute' || task.kind === 'phantom off');
  return (
    <section className="changeover-first" aria-label={text.offFirst}>
      <h3>{text.offFirst}</h3>
      <ul>
        {first.map((task) => (
          <li key={keyOfTask(task)}>
            <strong>{task.what}</strong> {cautions[task.kind]}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Kit that this changeover lacks because another act still holds it, with the fewest further items. */
function Kit({ day, names }: { day: Day; names: readonly string[] }) {
  const { show } = useHere();
  const text = words.changeover;
  const found = useMemo(
    () =>
      findStockCollisions(show, day.id).collisions.filter((it) =>
        names.some((name) => it.acts.includes(name)),
      ),
    [show, day.id, names],
  );
  const isListed = [...show.stockItems.values()].some((item) => item.rigId === day.rigId);
  return (
    <section className="changeover-kit">
      <h3>{text.kit}</h3>
      {found.length === 0 && <p>{isListed ? text.kitFits : words.day.noStockListed}</p>}
      <ul>
        {found.map(({ stockId, what }) => (
          <li key={stockId}>
            <SeverityMark severity="must fix" /> {what}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** How long the tasks without a tick take the same people; null where there is no schedule. */
function secondsOfRest(
  changeover: Changeover,
  crewSize: number,
  ticks: ReturnType<typeof ticksOf>,
): number | null {
  if (changeover.secondsNeeded === null) return null;
  const left = tasksLeft(changeover.tasks, (task) => ticks.has(keyOfTask(task)));
  if (left.length === changeover.tasks.length) return changeover.secondsNeeded;
  return scheduleTasks(left, crewSize, usualTries, changeover).secondsNeeded;
}
