import { useEffect, useRef, useState } from 'react';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;

/**
 * Files may be dropped anywhere on the window: Advance takes them as riders, unless something below the pointer did.
 * Without this the browser would show a dropped file in place of the program. Answers what would become of files
 * that are held over the window now, or null.
 */
export function useFileDrop(): string | null {
  const here = useHere();
  const newest = useRef(here);
  newest.current = here;
  const [isOver, setOver] = useState(false);

  useEffect(() => {
    const over = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(newest.current.view.open === 'nothing');
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      setOver(false);
      if (event.defaultPrevented || !holdsFiles(event)) return;
      event.preventDefault();
      takeFiles(newest.current, [...(event.dataTransfer?.files ?? [])]);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);

  const { view, open, day } = here;
  const text = words.advance.dropping;
  if (!isOver) return null;
  if (!day) return words.advance.noDay;
  return view.moment === 'advance' && open && !view.newAct ? text.forAct(open.sheet.act.name) : text.forNew;
}

function takeFiles({ view, day, look, tell }: ReturnType<typeof useHere>, dropped: File[]): void {
  const text = words.advance;
  // Beside the place of a dialog that takes files, nothing is meant for Advance.
  if (view.open !== 'nothing') return;
  const newAct = view.moment === 'advance' ? view.newAct : true;
  if (!day) tell({ code: 'not there', what: text.noDay, todo: text.noDayTodo });
  else if (dropped.length > 0) look({ moment: 'advance', newAct, dropped });
}
