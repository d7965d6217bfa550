import { useEffect, useRef } from 'react';
import { type BindingId, handledBindings } from './bindings.ts';

export type KeyPress = Pick<KeyboardEvent, 'key' | 'code' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

/** True where the key press is the one that a binding writes, for example `Ctrl+Shift+Z`, `Alt+2` or `?`. */
export function isKey(event: KeyPress, written: string): boolean {
  const parts = written.split('+');
  const key = parts.at(-1) ?? '';
  const needs = (name: string) => parts.slice(0, -1).includes(name);
  if (needs('Ctrl') !== (event.ctrlKey || event.metaKey) || needs('Alt') !== event.altKey) return false;
  // Shift is part of how a sign such as ? is typed, so it only counts where the key has a name or is a letter.
  const isSign = /^[^a-z0-9]$/i.test(key);
  if (!isSign && needs('Shift') !== event.shiftKey) return false;
  // With Alt some keyboards type another sign: the place of the key counts.
  if (/^\d$/.test(key) && needs('Alt')) return event.code === `Digit${key}`;
  return event.key.toLowerCase() === key.toLowerCase();
}

/** Whether keys are text where the focus is. A box to tick and a choice take no text, though they are inputs. */
export const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement &&
  target.matches('input:not([type="checkbox"], [type="radio"]), textarea, select, [contenteditable="true"]');

const isBare = (written: string) => !/^(Ctrl|Alt)\+/.test(written) && !/F\d+$/.test(written);

/** Runs the program's keys for as long as the frame is there. A widget that used a key has prevented its default. */
export function useKeys(run: (id: BindingId) => void): void {
  const latest = useRef(run);
  latest.current = run;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      const binding = handledBindings.find(({ keys }) =>
        keys.some((written) => isKey(event, written) && !(isBare(written) && isTyping(event.target))),
      );
      if (!binding) return;
      // While a field is being edited, undo is the field's own.
      if ((binding.id === 'undo' || binding.id === 'redo') && isTyping(event.target)) return;
      event.preventDefault();
      latest.current(binding.id);
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
