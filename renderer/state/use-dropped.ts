import { useEffect } from 'react';
import { useHere } from './here.tsx';

/** Takes the files that were dropped on the window, once. */
export function useDropped(take: (files: File[]) => void): void {
  const { view, look } = useHere();
  useEffect(() => {
    if (!view.dropped) return;
    look({ dropped: null });
    take([...view.dropped]);
  });
}
