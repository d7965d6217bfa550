import type { CopyFile } from './copy-names.ts';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
const dayMs = 24 * hourMs;

/** Which copies stay: of those younger than `youngerThanMs`, the first of every `oneEveryMs` (0: all of them). */
const keptByAge = [
  { youngerThanMs: hourMs, oneEveryMs: 0 },
  { youngerThanMs: dayMs, oneEveryMs: hourMs },
  { youngerThanMs: 30 * dayMs, oneEveryMs: dayMs },
] as const;

/** Copies made for a reason (by hand, before a step that replaces much) all stay this long. */
const reasonedKeptMs = 30 * dayMs;

/**
 * The copies that may go now. The newest stays whatever its age, and one with a time to come (a clock was wrong)
 * stays too.
 */
export function copiesToForget(copies: readonly CopyFile[], nowMs: number): CopyFile[] {
  const oldestFirst = [...copies].sort((a, b) => a.madeAtMs - b.madeAtMs);
  const newest = oldestFirst.at(-1);
  const taken = new Set<string>();
  return oldestFirst.filter((copy) => {
    const ageMs = nowMs - copy.madeAtMs;
    if (copy === newest || ageMs < 0) return false;
    if (copy.reason !== 'by itself') return ageMs >= reasonedKeptMs;
    const rule = keptByAge.find(({ youngerThanMs }) => ageMs < youngerThanMs);
    if (!rule) return true;
    if (rule.oneEveryMs === 0) return false;
    const slot = `${rule.oneEveryMs} ${Math.floor(copy.madeAtMs / rule.oneEveryMs)}`;
    if (taken.has(slot)) return true;
    taken.add(slot);
    return false;
  });
}
