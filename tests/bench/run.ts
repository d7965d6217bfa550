import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** `npm run bench [-- NAME]`: every `*.bench.ts` of this folder in turn, each in a process of its own. */
const wanted = process.argv[2] ?? '';
const names = readdirSync(import.meta.dirname).filter(
  (it) => it.endsWith('.bench.ts') && it.includes(wanted),
);

for (const name of names) {
  console.log(`\n${name.replace('.bench.ts', '')}`);
  const { status } = spawnSync(process.execPath, [join(import.meta.dirname, name)], { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
