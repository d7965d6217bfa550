import { useEffect, useState } from 'react';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

const blinkEveryMs = 700;
const blinkForMs = 30_000;

/**
 * The program was started once more and looks for this window. A page may not put itself before other windows; it
 * asks for the focus, says in the window what happened, and its title, which the list of windows shows, blinks until
 * somebody is here. Answers the title of the moment, null for the usual one.
 */
export function useComeForward(): string | null {
  const { connection, tell } = useHere();
  const [sinceMs, setSinceMs] = useState<number | null>(null);
  const [isLit, setIsLit] = useState(false);
  useEffect(
    () =>
      connection.onPush(({ push }) => {
        if (push !== 'come forward') return;
        window.focus();
        tell({ code: 'show in use', what: words.keep.forward.title, todo: words.keep.forward.said });
        setSinceMs(Date.now());
        setIsLit(true);
      }),
    [connection, tell],
  );
  useEffect(() => {
    if (sinceMs === null) return;
    const end = () => {
      setSinceMs(null);
      setIsLit(false);
    };
    const blink = setInterval(() => {
      if (Date.now() - sinceMs > blinkForMs) end();
      else setIsLit((lit) => !lit);
    }, blinkEveryMs);
    const events = ['pointerdown', 'keydown', 'focus'] as const;
    for (const event of events) window.addEventListener(event, end);
    return () => {
      clearInterval(blink);
      for (const event of events) window.removeEventListener(event, end);
    };
  }, [sinceMs]);
  return isLit ? words.keep.forward.title : null;
}
