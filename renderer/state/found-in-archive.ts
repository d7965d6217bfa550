import { useEffect, useState } from 'react';
import type { ArchivedAct, FoundInArchive } from '../../core/contract/archive.ts';
import type { Answer, Connection } from '../connection.ts';
import { useHere, useSaved } from './here.tsx';
import { useReachCount } from './reach-count.ts';

export type Found = {
  text: string;
  found: FoundInArchive[];
  actCount: number;
  /** Acts that were taken out and can be put back. */
  removed: ArchivedAct[];
};

type Asked = { text: string; most: number; answer: Promise<Answer<Omit<Found, 'text'>>> };
let ahead: Asked | null = null;

/**
 * Asks for what `useFoundInArchive` is about to be given: the answer is on its way while the window draws the letters
 * that were typed, and not only then.
 */
export function askArchiveAhead(connection: Connection, text: string, most: number): void {
  if (text.trim() !== '') ahead = { text, most, answer: ask(connection, text, most) };
}

/**
 * What the archive has for a text (null: nothing is asked); null until the first answer. An answer that a later one
 * overtook is dropped. Another `turn` asks again, after something was taken out or put back.
 */
export function useFoundInArchive(text: string | null, most: number, turn = 0): Found | null {
  const { connection, tell } = useHere();
  const { standing } = useSaved();
  const reached = useReachCount();
  const [found, setFound] = useState<Found | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a write may have put an act into the archive, and an answer may have been lost.
  useEffect(() => {
    if (text === null) return;
    let isOvertaken = false;
    const asked = ahead?.text === text && ahead.most === most ? ahead.answer : ask(connection, text, most);
    ahead = null;
    void asked.then((answer) => {
      if (isOvertaken) return;
      if (answer.ok) setFound({ text, ...answer.value });
      else if (!answer.lost) tell(answer.problem);
    });
    return () => {
      isOvertaken = true;
    };
  }, [connection, text, most, turn, standing.revision, reached, tell]);
  return found;
}

const ask = (connection: Connection, text: string, most: number) =>
  connection.call('archive.find', { text: text.slice(0, 200), most });
