import { randomInt } from 'node:crypto';
import { Worker } from 'node:worker_threads';

/**
 * `npm run fuzz`: damaged files of every form, other ones in each run. The seed is printed; `FOLDBOOK_SEED` makes a
 * run again, `FOLDBOOK_FUZZ_CASES` says how many. A crash, a lost line or five seconds without an answer is a failure.
 */
const cases = Number(process.env.FOLDBOOK_FUZZ_CASES ?? 10_000);
const seed = Number(process.env.FOLDBOOK_SEED ?? randomInt(1, 2 ** 31));
const longestMs = 5_000;
const workers = 2;

type Message = {
  number: number;
  name: string;
  state: 'begun' | 'ended';
  fault?: string | null;
  isRead?: boolean;
};

const faults: string[] = [];
let done = 0;
let read = 0;

console.log(`${cases} damaged files, seed ${seed} (again: FOLDBOOK_SEED=${seed} npm run fuzz)`);
await Promise.all(Array.from({ length: workers }, (_, from) => runFrom(from)));
console.log(`${done} read or refused: ${read} of them read. ${faults.length} faults.`);
for (const fault of faults) console.log(fault);
process.exit(faults.length === 0 && done === cases ? 0 : 1);

/** Runs every second case in one thread; a case that hangs costs the thread, and a new one goes on behind it. */
async function runFrom(first: number): Promise<void> {
  let from = first;
  while (from < cases) from = await runUntilHang(from);
}

function runUntilHang(from: number): Promise<number> {
  return new Promise((resolve) => {
    const worker = new Worker(new URL('./fuzz-worker.ts', import.meta.url), {
      workerData: { seed, from, to: cases, step: workers },
    });
    let running: Message | null = null;
    let watch: NodeJS.Timeout | undefined;
    const give = (next: number) => {
      clearTimeout(watch);
      resolve(next);
    };
    worker.on('message', (message: Message) => {
      clearTimeout(watch);
      if (message.state === 'begun') {
        running = message;
        watch = setTimeout(() => {
          fail(message, `no answer for ${longestMs / 1000} s`);
          void worker.terminate().then(() => give(message.number + workers));
        }, longestMs);
        return;
      }
      running = null;
      done += 1;
      if (message.isRead) read += 1;
      if (message.fault) fail(message, message.fault);
      if (done % 1000 === 0) console.log(`${done} ...`);
    });
    worker.on('error', (error) => {
      if (running) fail(running, error.message);
      give((running?.number ?? cases) + workers);
    });
    worker.on('exit', () => give(running ? running.number + workers : cases));
  });
}

function fail({ number, name }: Message, fault: string): void {
  faults.push(`Case ${number} (${name}): ${fault}`);
}
