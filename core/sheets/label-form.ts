import { z } from 'zod';

const millimetres = z.number().min(0).max(1500);

/**
 * The measures of what is stuck on: a strip of tape along a row of channels, or a sheet of sticky labels. All
 * defaults are ours and belong to no product; measure your own.
 */
export const LabelForm = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('strip'),
    /** From the middle of one channel to the next. */
    pitchMm: millimetres.min(8).default(25),
    heightMm: millimetres.min(8).default(14),
    /** After so many a new strip begins; null: as many as the paper is wide. */
    channelsPerStrip: z.number().int().min(1).max(64).nullable().default(8),
  }),
  z.strictObject({
    is: z.literal('sheet'),
    labelWidthMm: millimetres.min(10).default(48),
    labelHeightMm: millimetres.min(8).default(16),
    columns: z.number().int().min(1).max(20).default(4),
    rows: z.number().int().min(1).max(60).default(16),
    /** From the edge of the paper to the first label. */
    leftMm: millimetres.default(9),
    topMm: millimetres.default(20),
    gapAcrossMm: millimetres.default(0),
    gapDownMm: millimetres.default(0),
    /** Labels used up already on a sheet that was begun. */
    skip: z.number().int().min(0).max(1200).default(0),
  }),
]);
export type LabelForm = z.infer<typeof LabelForm>;
