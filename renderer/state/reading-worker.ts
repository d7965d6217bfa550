import { readRider } from '../../core/rider/read-rider.ts';
import type { ReadingAsked, ReadingTold } from './reading-thread.ts';

/** Reads riders one after the other, in the order they are asked for. */
self.onmessage = ({ data }: MessageEvent<ReadingAsked>) => {
  const told: ReadingTold = { id: data.id, reading: readRider(data.grid, data.answers, data.ownWords) };
  self.postMessage(told);
};
