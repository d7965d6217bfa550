import { useEffect, useRef } from 'react';
import { isTyping } from './use-keys.ts';

/**
 * Runs the single keys of a moment, wherever in the window the focus is, but not while a text is typed or a dialog
 * is open. `run` answers whether the key was one of its own.
 */
export function useMomentKeys(run: (key: string) => boolean): void {
  const latest = useRef(run);
  latest.current = run;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isTyping(event.target)) return;
      if (document.querySelector('dialog[open]')) return;
      if (latest.current(event.key)) event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
