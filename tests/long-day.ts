import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { longDay } from './helpers/long-day.ts';

/**
 * `npm run long-day`: fourteen hours of a busy festival, as fast as they go; what is held and how long an edit takes
 * in each. Ends with 1 where memory grew by more than a fifth and 20 MB, or edits became half as slow again.
 */
setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const folder = mkdtempSync(join(tmpdir(), 'foldbook-day-'));
const hours = await longDay(folder, { hours: 14, edits: 240, recalls: 4, imports: 4, prints: 6 }, collect);
rmSync(folder, { recursive: true });

hours.forEach((it, hour) => {
  console.log(
    `hour ${String(hour + 1).padStart(2)}: ${it.calls} calls, edit ${it.editMs.toFixed(1)} ms (95 of 100 under ` +
      `${it.slowEditMs.toFixed(1)} ms), heap ${it.heapMb.toFixed(1)} MB, resident ${it.residentMb.toFixed(0)} MB`,
  );
});
const [first, last] = [hours[1], hours.at(-1)];
if (!first || !last) throw new Error('The day has no hours.');
const grew = last.heapMb > first.heapMb * 1.2 + 20;
const slower = last.editMs > first.editMs * 1.5 + 0.5;
console.log(
  grew ? 'Memory grew.' : 'Memory held flat.',
  slower ? 'Edits became slower.' : 'Edits took the same.',
);
console.log('The second hour is compared with the last: the first one loads the parts of the program.');
if (grew || slower) process.exitCode = 1;
