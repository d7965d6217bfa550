import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { longDay } from '../helpers/long-day.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

test('five dense hours of edits, recalls, imports and prints hold no more memory at their end', async () => {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const density = { hours: 5, edits: 30, recalls: 2, imports: 2, prints: 1 };
  const hours = await longDay(temporaryFolder(), density, collect);
  const [, second, , , last] = hours.map(({ heapMb }) => heapMb);
  expect(hours).toHaveLength(5);
  expect(last).toBeLessThan((second ?? 0) + 10);
}, 180_000);
