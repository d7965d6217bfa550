import { useEffect, useRef } from 'react';
import { isTyping } from './use-keys.ts';

/**
 * Runs the single keys of a moment, wherever in the window the focus is, but not while a text is typed or a dialog
 * is open. `run` answers whether the key was one of its own; `isHeld`: the key was held down and has come again by
 * itself, so it is nothing that somebody did twice.
 */
export function useMomentKeys(run: (key: string, isHeld: boolean) => boolean): void {
  const latest = useRef(run);
  latest.current = run;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isTyping(event.target)) return;
      if (document.querySelector('dialog[open]')) return;
      if (latest.current(event.key, event.repeat)) event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
