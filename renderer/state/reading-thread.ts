import type { Grid } from '../../core/rider/grid.ts';
import type { Answers, Reading } from '../../core/rider/reading.ts';
import type { OwnWord } from '../../core/show/own-word.ts';
import { startThread } from '../parts/own-thread.ts';
import workerAddress from './reading-worker.ts?worker&url';

type OwnWords = Pick<OwnWord, 'words' | 'of' | 'kind'>[];
export type ReadingAsked = { id: number; grid: Grid; answers: Answers; ownWords: OwnWords };
export type ReadingTold = { id: number; reading: Reading };

/**
 * Reads riders beside the page: making the tables of words and reading all riders of a day takes longer than anybody
 * who types would wait.
 */
export class ReadingThread {
  readonly #waiting = new Map<number, (reading: Reading) => void>();
  #worker: Worker | null = null;
  #nextId = 1;

  /** Answers by `take`, some time later. */
  read(grid: Grid, answers: Answers, ownWords: OwnWords, take: (reading: Reading) => void): void {
    const id = this.#nextId++;
    this.#waiting.set(id, take);
    this.#worker ??= this.#start();
    const asked: ReadingAsked = { id, grid, answers, ownWords };
    this.#worker.postMessage(asked);
  }

  #start(): Worker {
    const worker = startThread(workerAddress);
    worker.onmessage = ({ data }: MessageEvent<ReadingTold>) => {
      this.#waiting.get(data.id)?.(data.reading);
      this.#waiting.delete(data.id);
    };
    return worker;
  }
}
