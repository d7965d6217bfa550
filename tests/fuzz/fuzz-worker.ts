import { parentPort, workerData } from 'node:worker_threads';
import { Grid } from '../../core/rider/grid.ts';
import { isBlankRow } from '../../core/rider/page/lines.ts';
import { readRider } from '../../core/rider/read-rider.ts';
import { ignoreLibraryRejections } from '../../electron/documents/library-rejections.ts';
import { readDocument } from '../../electron/documents/read-document.ts';
import { fuzzCase, samplesOf } from './fuzz-cases.ts';

/** Reads the cases it is told and says of each when it begins and how it ended. */
const { seed, from, to, step } = workerData as { seed: number; from: number; to: number; step: number };
const samples = samplesOf();
// As in the program's own thread for files.
ignoreLibraryRejections();

for (let number = from; number < to; number += step) {
  const { name, content } = fuzzCase(samples, seed, number);
  parentPort?.postMessage({ number, name, state: 'begun' });
  const fault = await faultOf(content);
  parentPort?.postMessage({ number, name, state: 'ended', ...fault });
}
process.exit(0);

/** What is wrong with the answer to a file, and whether it was read; null where nothing is. */
async function faultOf(content: Uint8Array): Promise<{ fault: string | null; isRead: boolean }> {
  try {
    const outcome = await readDocument('rider', content);
    if (!outcome.ok) {
      const isSentence = /^“rider” .*\.$/s.test(outcome.problem.what) && /\.$/.test(outcome.problem.todo);
      return {
        fault: isSentence ? null : `refused without a sentence: ${outcome.problem.what}`,
        isRead: false,
      };
    }
    return { fault: lostLines(Grid.parse(outcome.value)), isRead: true };
  } catch (error) {
    return { fault: error instanceof Error ? (error.stack ?? error.message) : String(error), isRead: false };
  }
}

function lostLines(grid: Grid): string | null {
  const expected = grid.sheets.flatMap(({ rows }, sheet) =>
    rows.flatMap((row, at) => (isBlankRow(row) ? [] : [`${sheet}:${at}`])),
  );
  const told = readRider(grid).lines.map(({ at }) => `${at.sheet}:${at.row}`);
  return told.join() === expected.join() ? null : 'a line is lost or told twice';
}
