import { startTransition, useEffect, useState } from 'react';

/** A few frames: longer than it takes to paint what was done and to hear that it is on the disk. */
const laterMs = 60;

/**
 * The value as it was a moment ago. What may follow what was just typed or opened, such as what lies below the fold
 * or the numbers of other acts, is drawn by it: a transition alone would run before the frame that everybody waits for.
 */
export function useLater<T>(value: T): T {
  const [shown, setShown] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setShown(value)), laterMs);
    return () => clearTimeout(timer);
  }, [value]);
  return shown;
}
