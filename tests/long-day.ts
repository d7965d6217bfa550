import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { longDay } from './helpers/long-day.ts';

/**
 * `npm run long-day [-- HOURS]`: fourteen hours of a busy festival, as fast as they go; what is held and how long an
 * edit takes in each. Ends with 1 where memory grew by more than a fifth and 20 MB, or edits became half as slow
 * again by the processor's time. Memory is both what the program holds and what the system counts for the process (resident).
 */
setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const folder = mkdtempSync(join(tmpdir(), 'foldbook-day-'));
const hourCount = Math.max(2, Number(process.argv[2] ?? 14) || 14);
const hours = await longDay(
  folder,
  { hours: hourCount, edits: 240, recalls: 4, imports: 4, prints: 6 },
  collect,
);
rmSync(folder, { recursive: true });

hours.forEach((it, hour) => {
  console.log(
    `hour ${String(hour + 1).padStart(2)}: ${it.calls} calls, edit ${it.editMs.toFixed(1)} ms (95 of 100 under ` +
      `${it.slowEditMs.toFixed(1)} ms, processor ${it.editProcessorMs.toFixed(1)} ms), heap ${it.heapMb.toFixed(1)} MB, resident ${it.residentMb.toFixed(0)} MB`,
  );
});
const [first, last] = [hours[1], hours.at(-1)];
if (!first || !last) throw new Error('The day has no hours.');
const grew = last.heapMb > first.heapMb * 1.2 + 20 || last.residentMb > first.residentMb * 1.2 + 20;
const slower = last.editProcessorMs > first.editProcessorMs * 1.5 + 0.5;
console.log(
  grew ? 'Memory grew.' : 'Memory held flat.',
  slower ? 'Edits became slower.' : 'Edits took the same.',
);
console.log(
  `${hourCount} hours simulated; memory in the second and the last: held ${first.heapMb.toFixed(0)} and ` +
    `${last.heapMb.toFixed(0)} MB, resident ${first.residentMb.toFixed(0)} and ${last.residentMb.toFixed(0)} MB.`,
);
console.log('The second hour is compared with the last: the first one loads the parts of the program.');
if (grew || slower) process.exitCode = 1;
