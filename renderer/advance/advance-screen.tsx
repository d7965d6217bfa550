import { useRef, useState } from 'react';
import type { Grid } from '../../core/rider/grid.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { ridersOfAct } from '../state/reading-cache.ts';
import { useDropped } from '../state/use-dropped.ts';
import { words } from '../wording/words.ts';
import { ActFields } from './act-fields.tsx';
import { ActTables } from './act-tables.tsx';
import { BringIn } from './bring-in.tsx';
import { type Brought, gridOfFile, gridOfText } from './bring-rider.ts';
import { CameAgain } from './came-again.tsx';
import { NameAct } from './name-act.tsx';
import { OwnWords } from './own-words.tsx';
import { RemoveAct } from './remove-act.tsx';
import { RiderAndMeaning } from './rider-and-meaning.tsx';
import { emptyActChange, riderChange, riderOfBand, tellsName } from './rider-changes.ts';
import { useBringMany } from './use-bring-many.ts';
import { WhatCame } from './what-came.tsx';
import './advance-screen.css';

export function AdvanceScreen() {
  const { day, look } = useHere();
  const text = words.advance;
  if (!day)
    return (
      <EmptyScreen
        what={text.noDay}
        todo={text.noDayTodo}
        action={{ label: text.toRig, run: () => look({ moment: 'rig' }) }}
      />
    );
  return <AdvanceOfDay dayId={day.id} />;
}

function AdvanceOfDay({ dayId }: { dayId: string }) {
  const { open, view } = useHere();
  const many = useBringMany(dayId);
  if (many.reading !== null)
    return (
      <p role="status" className="advance-many">
        {many.reading} <progress aria-label={words.advance.reading} />{' '}
        <button type="button" onClick={many.onStop}>
          {words.advance.stop}
        </button>
      </p>
    );
  if (many.came) return <WhatCame came={many.came} onFiles={many.onFiles} onClose={many.onClose} />;
  if (!open || view.newAct) return <NewAct dayId={dayId} onMany={many.onFiles} />;
  return <AdvanceOfAct key={open.sheet.act.id} open={open} onMany={many.onFiles} />;
}

/** Reads what is brought in; what comes back too late, after a stop or a newer rider, is not taken. */
function useBringIn(take: (grid: Grid, isPasted: boolean) => void, onMany: (files: File[]) => void) {
  const { connection, tell } = useHere();
  const [isReading, setReading] = useState(false);
  const turn = useRef(0);
  const read = async (bringing: Promise<Brought>, isPasted: boolean) => {
    const mine = ++turn.current;
    setReading(true);
    const brought = await bringing;
    if (turn.current !== mine) return;
    setReading(false);
    if (brought.ok) take(brought.grid, isPasted);
    else tell(brought.problem);
  };
  const onFiles = (files: File[]) => {
    const [first, ...others] = files;
    if (others.length > 0) onMany(files);
    else if (first) void read(gridOfFile(connection, first), false);
  };
  useDropped(onFiles);
  return {
    isReading,
    onFiles,
    onText: (pasted: string) => void read(gridOfText(connection, pasted), true),
    onStop: () => {
      turn.current++;
      setReading(false);
    },
  };
}

function NewAct({ dayId, onMany }: { dayId: string; onMany: (files: File[]) => void }) {
  const { show, change, look } = useHere();
  const [nameless, setNameless] = useState<Grid | null>(null);
  const [again, setAgain] = useState<{ grid: Grid; old: RiderRecord } | null>(null);
  const add = (grid: Grid, name?: string) => {
    const { change: made, actId } = riderChange(show, { dayId, name }, grid, new Date().toISOString());
    change(made);
    look({ actId, moment: 'advance' });
  };
  const bring = useBringIn((grid, isPasted) => {
    // A file has at least a name of its own to call the act by.
    const old = riderOfBand(show, dayId, grid);
    if (isPasted && !tellsName(grid)) setNameless(grid);
    else if (old) setAgain({ grid, old });
    else add(grid);
  }, onMany);
  if (nameless) return <NameAct onName={(name) => add(nameless, name)} onBack={() => setNameless(null)} />;
  if (again)
    return (
      <CameAgain
        {...again}
        onDone={(riderId) => (riderId ? look({ actId: again.old.actId, moment: 'advance' }) : setAgain(null))}
        onOwnAct={() => add(again.grid)}
      />
    );
  return (
    <div className="advance-new">
      <BringIn title={words.advance.bringInNew} {...bring} />
      <p>
        <button
          type="button"
          onClick={() => {
            const { change: made, actId } = emptyActChange(show, dayId);
            change(made);
            look({ actId, moment: 'advance' });
          }}
        >
          {words.advance.byHand}
        </button>
      </p>
    </div>
  );
}

function AdvanceOfAct({ open, onMany }: { open: ActOnScreen; onMany: (files: File[]) => void }) {
  const { show, change } = useHere();
  const { act } = open.sheet;
  const riders = ridersOfAct(show, act.id);
  const [riderId, setRiderId] = useState<string | null>(null);
  const [isBringing, setBringing] = useState(false);
  const [came, setCame] = useState<Grid | null>(null);
  const rider = riders.find((it) => it.id === riderId) ?? riders.at(-1);
  const current = rider?.replaced ? riders.findLast((it) => !it.replaced) : rider;
  const done = (shown: string | null) => {
    if (shown !== null) setRiderId(shown);
    setCame(null);
    setBringing(false);
  };
  const bring = useBringIn((grid) => {
    if (current) return setCame(grid);
    const made = riderChange(show, { actId: act.id }, grid, new Date().toISOString());
    change(made.change);
    done(made.riderId);
  }, onMany);
  const text = words.advance;

  return (
    <section className="advance" aria-label={words.moments.advance}>
      <div className="advance-head">
        <ActFields act={act} />
        {riders.length > 1 && (
          <span>
            <label htmlFor="which-rider">{text.whichRider}</label>{' '}
            <select id="which-rider" value={rider?.id} onChange={({ target }) => setRiderId(target.value)}>
              {riders.map((it) => (
                <option key={it.id} value={it.id}>
                  {it.replaced ? text.replacedRider(it.fileName) : it.fileName}
                </option>
              ))}
            </select>
          </span>
        )}
        {rider && (
          <button type="button" aria-pressed={isBringing} onClick={() => setBringing(!isBringing)}>
            {text.bringInAnother}
          </button>
        )}
        <OwnWords sheet={open.sheet} />
        <RemoveAct act={act} />
      </div>
      {came && current ? (
        <CameAgain grid={came} old={current} onDone={done} />
      ) : isBringing || !rider ? (
        <div className="advance-two">
          <BringIn title={rider ? text.bringInAnother : text.bringIn} {...bring} />
          <ActTables open={open} />
        </div>
      ) : (
        <RiderAndMeaning key={rider.id} open={open} rider={rider} />
      )}
    </section>
  );
}
