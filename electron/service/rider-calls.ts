import { gridFromFile } from '../documents/grid-from-file.ts';
import type { Handler } from './handlers.ts';

export const gridOfRider: Handler<'rider.grid'> = async ({ gone }, { fileName, base64 }) => {
  const outcome = await gridFromFile(fileName, Buffer.from(base64, 'base64'), gone);
  return outcome.ok ? { ok: true, value: { grid: outcome.value } } : outcome;
};
