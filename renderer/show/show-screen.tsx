import { useEffect, useMemo, useState } from 'react';
import { lineResultsOf, nextToCheck } from '../../core/run/line-check.ts';
import { lineFaults } from '../../core/run/line-faults.ts';
import { type CheckOrder, linesToCheck } from '../../core/run/lines-to-check.ts';
import { beginSet, moveFrom, moveOn } from '../../core/run/move-on.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import { LineCheck } from './line-check.tsx';
import { NoteField } from './note-field.tsx';
import { Performers } from './performers.tsx';
import { ShowHead } from './show-head.tsx';
import './show-screen.css';

/** The act that is on: who is on stage, what the chosen one hears, what happened; and the line check before it. */
export function ShowScreen() {
  const { open, look } = useHere();
  const text = words.show;
  if (!open) return <EmptyScreen what={text.noAct} todo={words.changeover.emptyTodo} />;
  if (open.sheet.mixes.length + open.sheet.sources.length === 0)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  return <ActOnShow key={open.sheet.act.id} open={open} />;
}

/** Long enough to read what would happen; nobody finds the act armed who comes back later. */
const armedMs = 15_000;

function ActOnShow({ open }: { open: ActOnScreen }) {
  const { show, acts, change, look } = useHere();
  const { act } = open.sheet;
  const [checks, setChecks] = useState(false);
  const [order, setOrder] = useState<CheckOrder>('by socket');
  const [isArmed, setArmed] = useState(false);
  const [notes, setNotes] = useState(false);
  const lines = useMemo(() => linesToCheck(open.sheet, open.derived.plan, order), [open, order]);
  const results = useMemo(() => lineResultsOf(show, act.id), [show, act.id]);
  const faults = useMemo(() => lineFaults(lines, results), [lines, results]);
  const move = moveFrom(acts, act.id);
  useEffect(() => {
    if (!isArmed) return;
    const timer = setTimeout(() => setArmed(false), armedMs);
    return () => clearTimeout(timer);
  }, [isArmed]);

  const goOn = () => {
    if (!move) return;
    setArmed(false);
    change(moveOn(show, move, new Date().toISOString(), newId));
    if (move.comes) look({ actId: move.comes.id });
  };
  const pressNext = (isHeld: boolean) => {
    if (isHeld) return;
    if (isArmed) goOn();
    else setArmed(move !== null);
  };
  const check = () => {
    // The check goes on where it was left, whatever was chosen meanwhile.
    if (!checks) look({ sourceId: nextToCheck(lines, results, null) });
    setChecks(!checks);
  };
  const begin = () => change(beginSet(show, act, new Date().toISOString(), newId));

  useMomentKeys((key, isHeld) => {
    if (key === 'n') pressNext(isHeld);
    else if (key === 'Escape' && isArmed) setArmed(false);
    else if (key === 'b') begin();
    else if (key === 'l') check();
    else if (key === 't') setNotes(true);
    else return false;
    return true;
  });

  return (
    <div className="show">
      <ShowHead
        open={open}
        move={move}
        isArmed={isArmed}
        checks={checks}
        lines={lines}
        results={results}
        onBegin={begin}
        onCheck={check}
        onNote={() => setNotes(true)}
        onArm={() => setArmed(move !== null)}
        onDisarm={() => setArmed(false)}
        onMoveOn={goOn}
      />
      {notes && <NoteField open={open} ofSource={checks} onClose={() => setNotes(false)} />}
      {checks ? (
        <LineCheck
          open={open}
          lines={lines}
          results={results}
          faults={faults}
          order={order}
          onOrder={setOrder}
          onLeave={() => setChecks(false)}
        />
      ) : (
        <Performers
          open={open}
          faults={faults}
          onFault={(sourceId) => {
            look({ sourceId });
            setChecks(true);
          }}
        />
      )}
    </div>
  );
}
