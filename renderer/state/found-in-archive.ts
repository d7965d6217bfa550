import { useEffect, useState } from 'react';
import type { FoundInArchive } from '../../core/contract/archive.ts';
import { useHere } from './here.tsx';

export type Found = { text: string; found: FoundInArchive[]; actCount: number };

/**
 * What the archive has for a text (null: nothing is asked); null until the first answer. An answer that a later one
 * overtook is dropped.
 */
export function useFoundInArchive(text: string | null, most: number): Found | null {
  const { connection, standing } = useHere();
  const [found, setFound] = useState<Found | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a write may have put an act into the archive.
  useEffect(() => {
    if (text === null) return;
    let isOvertaken = false;
    void connection.call('archive.find', { text: text.slice(0, 200), most }).then((answer) => {
      if (answer.ok && !isOvertaken) setFound({ text, ...answer.value });
    });
    return () => {
      isOvertaken = true;
    };
  }, [connection, text, most, standing.revision]);
  return found;
}
