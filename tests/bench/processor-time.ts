import { median } from './median.ts';

/**
 * Processor time of this process so far, in milliseconds, all its threads together: that of collecting garbage counts,
 * and what else runs on the machine does not.
 */
export function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * The processor time of one piece of work, from rounds of several pieces, once it is warm: the median of the rounds,
 * and the fastest, which a busy machine (its caches are shared) disturbs least.
 */
export function processorMsOfRounds<T>(
  pieces: readonly T[],
  work: (piece: T) => unknown,
  rounds: number,
): { fastest: number; median: number } {
  const round = () => {
    const started = processorMs();
    for (const piece of pieces) work(piece);
    return (processorMs() - started) / pieces.length;
  };
  for (let at = 0; at < rounds; at++) round();
  const taken = Array.from({ length: rounds }, round);
  return { fastest: Math.min(...taken), median: median(taken) };
}
