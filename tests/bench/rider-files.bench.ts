import { readFileSync } from 'node:fs';
import writeWorkbook from 'write-excel-file/node';
import { gridFromFile } from '../../electron/documents/grid-from-file.ts';
import { median } from './median.ts';

/**
 * Turning a rider's file into a grid, the first time in a process (the worker starts, libraries load) and once warm.
 * Goals: 60 lines in under 150 ms once warm, as a PDF in under 500 ms.
 */
const rounds = 20;
const cells = Array.from({ length: 60 }, (_, place) => [
  String(place + 1),
  `Source ${place + 1}`,
  'dynamic',
  'short boom',
  '',
  'Ada',
]);
const lines = (delimiter: string) => Buffer.from(cells.map((row) => row.join(delimiter)).join('\n'));
const fixture = (name: string) => readFileSync(new URL(`../fixtures/documents/${name}`, import.meta.url));

const files: [string, Uint8Array][] = [
  ['csv, 60 lines', lines(';')],
  ['tsv, 60 lines', lines('\t')],
  ['text in columns, 60 lines', lines('   ')],
  ['xlsx, 60 lines', await writeWorkbook(cells).toBuffer()],
  ['docx, 16 lines', fixture('numbered-lists.docx')],
  ['pdf, 90 lines over pages', fixture('table-over-pages.pdf')],
  ['pdf, 60 lines with notes', fixture('wrapped-notes-over-pages.pdf')],
];

for (const [name, bytes] of files) {
  const times: number[] = [];
  for (let round = 0; round <= rounds; round++) {
    const started = performance.now();
    const outcome = await gridFromFile(name, bytes);
    times.push(performance.now() - started);
    if (!outcome.ok) throw new Error(outcome.problem.what);
  }
  const [first = 0, ...warm] = times;
  console.log(
    `${name.padEnd(28)} first ${first.toFixed(0).padStart(4)} ms, warm ${median(warm).toFixed(1)} ms`,
  );
}
