import { expect, test } from 'vitest';
import { thirdOfStage } from '../../../core/show/stage-place.ts';

// Stage left is the left of a performer who faces the audience, downstage is towards it (common practice); on the
// plot x grows to stage left and y upstage.
test.each<[xM: number, yM: number, words: string]>([
  [-5, 0.5, 'downstage right'],
  [0, 1, 'downstage centre'],
  [5, 7.5, 'upstage left'],
  [0, 4, 'midstage centre'],
  [-2, 4, 'midstage centre'],
  [-2.1, 4, 'midstage right'],
])('%d m across and %d m upstage on a stage of 12 by 8 m is %s', (xM, yM, words) => {
  const { across, depth } = thirdOfStage({ xM, yM }, { stageWidthM: 12, stageDepthM: 8 });
  expect(`${depth} ${across}`).toBe(words);
});
