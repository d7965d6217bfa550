import { useRef, useState } from 'react';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { type Came, gridsOfFiles, ridersChange } from './bring-many.ts';

/** Brings several files in, each as an act of its own, and keeps what came of them until the window looks elsewhere. */
export function useBringMany(dayId: string) {
  const { connection, show, change, view } = useHere();
  const here = `${view.actId} ${view.newAct}`;
  const [reading, setReading] = useState<string | null>(null);
  const [kept, setKept] = useState<{ at: string; came: Came[] } | null>(null);
  const turn = useRef(0);
  const newest = useRef(show);
  newest.current = show;

  const onFiles = async (files: File[]) => {
    const mine = ++turn.current;
    const riders = await gridsOfFiles(connection, files, (at) => {
      if (turn.current !== mine) return false;
      setReading(words.advance.many.reading(Math.min(at + 1, files.length), files.length));
      return true;
    });
    if (!riders) return;
    setReading(null);
    const { change: made, came } = ridersChange(newest.current, dayId, riders, new Date().toISOString());
    if (made) change(made);
    setKept({ at: here, came });
  };

  return {
    /** How far it is, in words; null while nothing is read. */
    reading,
    came: kept?.at === here ? kept.came : null,
    onFiles: (files: File[]) => void onFiles(files),
    onStop: () => {
      turn.current++;
      setReading(null);
    },
    onClose: () => setKept(null),
  };
}
