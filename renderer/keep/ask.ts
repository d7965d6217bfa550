import { useState } from 'react';
import type { CallInput, CallName, CallOutput } from '../../core/contract/contract.ts';
import type { Problem } from '../../core/contract/problem.ts';
import { useHere } from '../state/here.tsx';

/** Asks the service; null where it refused, and then the dialog shows why. */
export type Ask = <C extends CallName>(call: C, input: CallInput<C>) => Promise<CallOutput<C> | null>;

export type Asking = {
  ask: Ask;
  isWaiting: boolean;
  problem: Problem | null;
  /** Says trouble of the page's own, or that there is none any more. */
  tell: (problem: Problem | null) => void;
};

/** Calls with what a dialog shows of them: that one is on its way, and why the last was refused. */
export function useAsking(): Asking {
  const { connection } = useHere();
  const [waiting, setWaiting] = useState(0);
  const [problem, setProblem] = useState<Problem | null>(null);
  const ask: Ask = async (call, input) => {
    setWaiting((count) => count + 1);
    const answer = await connection.call(call, input);
    setWaiting((count) => count - 1);
    setProblem(answer.ok ? null : answer.problem);
    return answer.ok ? answer.value : null;
  };
  return { ask, isWaiting: waiting > 0, problem, tell: setProblem };
}
