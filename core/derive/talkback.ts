import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { TalkToMix } from './derived.ts';
import { flows, type Sends } from './sends.ts';

/** Whether the engineer's talk microphone reaches the listener of each mix while that mix is being checked. */
export function deriveTalk(sheet: ActSheet, sends: Sends): TalkToMix[] {
  const talkSources = sheet.sources
    .map((source, sourceAt) => ({ source, sourceAt }))
    .filter(({ source }) => source.kind === 'talkback');
  return sheet.mixes.map((mix, mixAt) => {
    const talkSourceIds = talkSources
      .filter(({ sourceAt }) => flows(sends, sourceAt, mixAt))
      .map(({ source }) => source.id);
    return { mixId: mix.id, ...engineerReaches(sheet, mix), talkSourceIds };
  });
}

function engineerReaches(sheet: ActSheet, mix: Mix): { engineerReaches: boolean; why: string } {
  if (mix.mixedAt === 'elsewhere')
    return {
      engineerReaches: false,
      why: 'The mix is made on another desk, which this talk microphone does not reach.',
    };
  return sheet.rig.talkToCheckedMix
    ? { engineerReaches: true, why: 'The talk microphone goes to the mix that is being checked.' }
    : { engineerReaches: false, why: 'The rig has no talk microphone that goes to the mix being checked.' };
}
