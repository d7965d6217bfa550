import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { type Reporter, startVitest, type TestCase } from 'vitest/node';

/**
 * `npm run figures [-- KILLS DAMAGES HOURS]`: how much the show and the shell were tried with, and what came of it.
 * Every figure is counted in the run itself. Without other words 200 kills, 500 damaged files and 14 hours, which takes
 * a quarter of an hour or so. Ends with 1 where anything failed.
 */
const root = resolve(import.meta.dirname, '..');
const [kills = 200, damages = 500, hours = 14] = process.argv.slice(2).map(Number);
process.env.FOLDBOOK_KILLS = String(kills);
process.env.FOLDBOOK_DAMAGES = String(damages);

const kinds = {
  kill: 'tests/contract/kill.test.ts',
  damage: 'tests/unit/copies/damaged-shows.test.ts',
  unfit: 'tests/unit/database/open-show.test.ts',
  hostile: 'tests/contract/hostile-files.test.ts',
  bad: 'tests/unit/documents/bad-files.test.ts',
  attack: 'tests/contract/attacks.test.ts',
} as const;
type Kind = keyof typeof kinds;

/** Counts how the tests of each kind ended, and keeps what they said of their own figures. */
class Figures implements Reporter {
  readonly passed = new Map<string, number>();
  readonly said: string[] = [];
  failed = 0;

  onTestCaseResult(test: TestCase): void {
    const { state } = test.result();
    const file = test.module.relativeModuleId;
    if (state === 'passed') this.passed.set(file, (this.passed.get(file) ?? 0) + 1);
    if (state === 'failed') {
      this.failed += 1;
      const why = test.result().errors?.[0]?.message ?? '';
      console.error(`Failed: ${test.fullName}: ${why}`);
    }
  }

  onUserConsoleLog({ content }: { content: string }): void {
    this.said.push(...content.split('\n').filter((line) => line !== ''));
  }

  of(kind: Kind): number {
    return this.passed.get(kinds[kind]) ?? 0;
  }

  line(start: string): string {
    return this.said.find((line) => line.startsWith(start)) ?? `${start}: no figure, the test failed`;
  }
}

const figures = new Figures();
const vitest = await startVitest('test', Object.values(kinds), {
  config: resolve(root, 'tests', 'vitest.config.ts'),
  project: ['unit'],
  watch: false,
  // Kills and memory are told apart from what runs beside them only where nothing does.
  fileParallelism: false,
  reporters: [figures],
});
await vitest.close();
const day = spawnSync('npm', ['run', '--silent', 'long-day', '--', String(hours)], {
  cwd: root,
  encoding: 'utf8',
  shell: process.platform === 'win32',
});
const dayLines = day.stdout.trim().split('\n');

console.log(figures.line('Kills survived'));
console.log(figures.line('Damaged shows'));
console.log(
  `Unfit shows refused or restored with a sentence: ${figures.of('unfit') + figures.of('damage')} cases`,
);
console.log(`Hostile files and texts in bounded time and memory: ${figures.of('hostile')} kinds`);
console.log(`Broken, foreign and odd riders answered with a sentence: ${figures.of('bad')} cases`);
console.log(`Attacks on the local host, and what keeps them out: ${figures.of('attack')} cases`);
console.log(dayLines.find((line) => line.includes('hours simulated')) ?? 'No day was simulated.');
console.log(dayLines.find((line) => line.startsWith('Memory')) ?? day.stderr);
if (figures.failed > 0 || day.status !== 0) process.exitCode = 1;
