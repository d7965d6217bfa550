import { useMemo, useState } from 'react';
import type { Changeover } from '../../core/changeover/changeover.ts';
import { changeFromDayPlan } from '../../core/plan/day/change-from-day-plan.ts';
import { checkDay } from '../../core/plan/day/check-day.ts';
import { type DayPatch, patchOfAssignment } from '../../core/plan/day/day-patch.ts';
import type { Day } from '../../core/show/act.ts';
import { dayOnScreen, useChangeovers } from '../changeover/changeover-cache.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { cursorAt } from '../parts/grid-cursor.ts';
import { useHere, useSaved } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import { ChosenCell } from './chosen-cell.tsx';
import { type Planning, useDayPlanning } from './day-planning.ts';
import { dayTable } from './day-table.ts';
import { EntryMark, LockMark, MoveMark } from './entry-mark.tsx';
import { foundPlan } from './found-plan.ts';
import { lockToSocket, openLock } from './locks.ts';
import { PatchGrid } from './patch-grid.tsx';
import { PlanPanel } from './plan-panel.tsx';
import { RunningOrderPart } from './running-order-part.tsx';
import { type DayWork, useDayWork } from './use-day-work.ts';
import './day-screen.css';

/** The day at once: its patch with the work in it, the planner, and the running order. */
export function DayScreen() {
  const { acts, look, day } = useHere();
  const text = words.day;
  if (!day || acts.length === 0)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  return <DayParts day={day} />;
}

const parts = ['patch', 'order'] as const;

function DayParts({ day }: { day: Day }) {
  const { show, acts, change, connection } = useHere();
  const { saving } = useSaved();
  const [part, setPart] = useState<(typeof parts)[number]>('patch');
  const [showsNow, setShowsNow] = useState(false);
  const { planning, plan, stop, leave } = useDayPlanning(connection);
  const on = dayOnScreen(show, day, acts);
  const work = useDayWork(show, day.id, on.acts);
  const changeovers = useChangeovers(on);
  const doubts = useMemo(() => checkDay(show, day.id), [show, day.id]);
  const found = useMemo(
    () =>
      planning.is === 'found' && planning.found.dayId === day.id
        ? foundPlan(planning, show, on.acts, work)
        : null,
    [planning, show, on, work, day.id],
  );
  const soFar = useMemo(() => patchSoFar(planning, day, work), [planning, day, work]);
  const ready = found && found !== 'stale' ? found : null;
  const changeToPlan = useMemo(() => ready && changeFromDayPlan(show, ready.plan, newId), [show, ready]);
  const isTaken = changeToPlan !== null && changeToPlan.put.length + changeToPlan.remove.length === 0;
  const planned = soFar ?? (ready?.canTake && !isTaken && !showsNow ? ready.patch : null);

  // The saved show is planned: what waits to be sent again would be missing.
  const canPlan = planning.is !== 'running' && saving !== 'not saved' && !doubts.some((doubt) => doubt.stops);
  const doPlan = () => {
    if (!canPlan) return;
    setShowsNow(false);
    setPart('patch');
    void plan(show, day.id, day.keepUnlessGain);
  };
  const take = () => {
    if (changeToPlan && ready?.canTake && !isTaken) change(changeToPlan);
  };
  useMomentKeys((key) => {
    if (key === 'p') doPlan();
    else if (key === 't') take();
    else if (key === 'Escape') planning.is === 'running' ? stop() : leave();
    else return false;
    return true;
  });

  return (
    <section className="day" aria-label={words.moments.day}>
      <nav className="day-parts" aria-label={words.day.partsLabel}>
        {parts.map((name) => (
          <button key={name} type="button" aria-pressed={name === part} onClick={() => setPart(name)}>
            {words.day.parts[name]}
          </button>
        ))}
        {part === 'patch' && <PatchLegend />}
      </nav>
      {part === 'order' ? (
        <RunningOrderPart
          day={day}
          changeovers={changeovers}
          doubts={doubts}
          broken={work.brokenNow}
          notes={work.notes}
        />
      ) : (
        <>
          <PlanPanel
            day={day}
            open={on.acts}
            work={work}
            planning={planning}
            found={found}
            soFar={soFar}
            isTaken={isTaken}
            doubts={doubts}
            canPlan={canPlan}
            acts={acts}
            keepUnlessGain={day.keepUnlessGain}
            showsNow={showsNow}
            onShowNow={setShowsNow}
            onPlan={doPlan}
            onStop={stop}
            onTake={take}
            onLeave={leave}
          />
          <Patch day={day} work={work} planned={planned} changeovers={changeovers} />
        </>
      )}
    </section>
  );
}

function Patch({
  day,
  work,
  planned,
  changeovers,
}: {
  day: Day;
  work: DayWork;
  planned: DayPatch | null;
  changeovers: readonly (Changeover | null)[];
}) {
  const { show, acts, change, look, open } = useHere();
  const [wanted, setWanted] = useState(cursorAt(0, 0));
  const on = dayOnScreen(show, day, acts);
  const shown = planned ?? work.now;
  const rows = useMemo(() => dayTable(on.acts, shown, work.now), [on, shown, work.now]);
  const cursor = cursorAt(
    Math.max(0, Math.min(wanted.row, rows.length - 1)),
    Math.min(wanted.column, on.acts.length - 1),
  );
  const act = on.acts[cursor.column];
  const row = rows[cursor.row];
  const cell = row?.cells[cursor.column] ?? null;
  const inUse = useMemo(
    () =>
      new Map(
        rows.flatMap(({ socket, cells }) => {
          const there = cells[cursor.column];
          return there ? [[socket.id, there.name] as const] : [];
        }),
      ),
    [rows, cursor.column],
  );
  const toggleLock = () => {
    if (!act || !row || !cell) return;
    change(
      cell.locked
        ? openLock(act.sheet, cell.sourceId)
        : lockToSocket(act.sheet, cell.sourceId, row.socket.id),
    );
  };
  const showSource = () => {
    if (act && cell)
      look({ actId: act.sheet.act.id, moment: 'mixes', sourceId: cell.sourceId, side: 'details' });
  };
  return (
    <>
      <PatchGrid
        label={planned ? words.day.planTable(day.name) : words.day.table(day.name)}
        acts={on.acts}
        rows={rows}
        shown={shown}
        changeovers={changeovers}
        openActId={open?.sheet.act.id ?? null}
        cursor={cursor}
        onMove={setWanted}
        onLock={toggleLock}
        onOpen={showSource}
      />
      {act && row && (
        <ChosenCell
          open={act}
          row={row}
          cell={cell}
          isFirst={cursor.column === 0}
          inUse={inUse}
          onLock={toggleLock}
          onOpen={showSource}
        />
      )}
    </>
  );
}

function PatchLegend() {
  const text = words.day;
  return (
    <ul className="patch-legend" aria-label={text.legend}>
      {(['hot', 'cold', 'kept'] as const).map((entry) => (
        <li key={entry}>
          <EntryMark entry={entry} /> {text.entry[entry]}
        </li>
      ))}
      <li>
        <LockMark /> {text.lockedMark}
      </li>
      <li>
        <MoveMark /> {text.moveMark}
      </li>
    </ul>
  );
}

/** The patch of the best plan so far; null where nothing runs, or where the day has changed under it. */
function patchSoFar(planning: Planning, day: Day, { layers }: DayWork) {
  if (planning.is !== 'running' || planning.dayId !== day.id) return null;
  const assignment = planning.soFar.sockets?.assignment;
  return assignment && assignment.length === layers.sockets.items.length
    ? patchOfAssignment(layers.sockets, assignment)
    : null;
}
