import { useCallback, useEffect, useRef, useState } from 'react';
import type { CallInput, CallOutput } from '../../core/contract/contract.ts';
import type { Answer, Connection } from '../connection.ts';

export type MadePaper = CallOutput<'paper.make'>;
export type MakeCall = CallInput<'paper.make'>;
/** What is being made now; `share` from 0 to 1. */
export type Making = { why: 'preview' | 'file'; share: number; what: string };

/** Making sheets for this window, one set at a time: who asks anew stops what was being made. */
export function usePaperCalls(connection: Connection): {
  making: Making | null;
  /** Null where another set was asked for before this one was ready. */
  make(why: Making['why'], call: MakeCall): Promise<Answer<MadePaper> | null>;
  stop(): void;
} {
  const [making, setMaking] = useState<Making | null>(null);
  const last = useRef({ number: 0, runs: false });
  const stop = useCallback(() => {
    if (last.current.runs) void connection.call('paper.stop', {});
  }, [connection]);
  const make = useCallback(
    async (why: Making['why'], call: MakeCall) => {
      stop();
      const number = last.current.number + 1;
      last.current = { number, runs: true };
      setMaking({ why, share: 0, what: '' });
      const answer = await connection.call('paper.make', call);
      if (number !== last.current.number) return null;
      last.current.runs = false;
      setMaking(null);
      return answer;
    },
    [connection, stop],
  );
  useEffect(
    () =>
      connection.onPush((push) => {
        if (push.push !== 'paper progress') return;
        setMaking((now) => now && { ...now, share: push.share, what: push.what });
      }),
    [connection],
  );
  // Who leaves the screen wants no sheet any more.
  useEffect(() => stop, [stop]);
  return { making, make, stop };
}
