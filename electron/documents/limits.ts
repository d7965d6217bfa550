/**
 * How much of a file is read before it is refused. A rider has some 60 lines of 10 cells; each limit is far above
 * any rider and low enough that every file gets its answer within two seconds on a small laptop.
 */
export const limits = {
  fileBytes: 24 * 1024 * 1024,
  rows: 5_000,
  columns: 256,
  cells: 200_000,
  /** The longest text a cell of a workbook can hold (ECMA-376 implementations share this figure). */
  cellCharacters: 32_767,
  /** Of one part of an archive, and of all parts read, after unpacking. */
  partBytes: 48 * 1024 * 1024,
  unpackedBytes: 96 * 1024 * 1024,
  archiveParts: 5_000,
  pdfPages: 60,
  /** Words and drawn lines of one page. A page with more lines is a drawing: its lines part no table. */
  pageWords: 20_000,
  pageRules: 5_000,
  /** A file that is not read by then is given up. */
  readingMs: 6_000,
  workerHeapMb: 384,
  /** By which the whole program may grow while one file is read; a bomb is caught by it outside the worker's heap. */
  growthMb: 400,
  lookEveryMs: 50,
  /** An idle worker is kept this long for the next file, which then needs no start. */
  idleWorkerMs: 60_000,
} as const;
