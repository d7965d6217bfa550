import { useEffect, useState } from 'react';
import { useHere } from './here.tsx';

/** How often the program has been reached again: a call that was lost while it was away is worth asking anew. */
export function useReachCount(): number {
  const { connection } = useHere();
  const [count, setCount] = useState(0);
  useEffect(() => connection.onReach((reached) => reached && setCount((before) => before + 1)), [connection]);
  return count;
}
