import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './stage-view.ts';

/** The size of an element, kept up as the window changes; null before it is laid out. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = watched;
      setSize((now) => (now?.width === width && now.height === height ? now : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
