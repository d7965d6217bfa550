import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { TalkToMix } from './derived.ts';
import { placesOfKinds } from './facts.ts';
import { flows, type Sends } from './sends.ts';

/** Whether the engineer's talk microphone reaches the listener of each mix while that mix is being checked. */
export function deriveTalk(sheet: ActSheet, sends: Sends): TalkToMix[] {
  const talkAts = placesOfKinds({ sheet }, 'talkback');
  const whyHere = sheet.rig.talkToCheckedMix
    ? 'The talk microphone goes to the mix that is being checked.'
    : 'The rig has no talk microphone that goes to the mix being checked.';
  return sheet.mixes.map((mix, mixAt): TalkToMix => {
    const talkSourceIds: Id[] = [];
    for (const at of talkAts) if (flows(sends, at, mixAt)) talkSourceIds.push(sheet.sources[at]?.id ?? '');
    const isHere = mix.mixedAt === 'house desk';
    return {
      mixId: mix.id,
      engineerReaches: isHere && sheet.rig.talkToCheckedMix,
      why: isHere ? whyHere : 'The mix is made on another desk, which this talk microphone does not reach.',
      talkSourceIds,
    };
  });
}
