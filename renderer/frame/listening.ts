import type { Id } from '../../core/show/rig.ts';
import { levelText, offsetText } from '../parts/format.ts';
import { deviceText, mixNumber, whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';

/** Where the engineer hears a mix, in one sentence; null where there is no such mix. */
export function listeningSentence({ sheet, derived }: ActOnScreen, mixId: Id | null): string | null {
  const mix = sheet.mixes.find((it) => it.id === mixId);
  if (!mix) return null;
  const cue = derived.cues.find((it) => it.mixId === mix.id);
  const cueOutput = sheet.cueOutputs.find((it) => it.id === cue?.cueOutputId);
  const text = words.listening;
  return [
    text.to(whoHears(sheet, mix)),
    text.mix(mixNumber(sheet, mix.id)),
    deviceText(mix),
    mix.mixedAt === 'elsewhere' ? text.elsewhere : null,
    cueOutput ? text.on(cueOutput.name) : text.noCue,
    cueOutput ? matchText(cue?.offsetDb ?? null) : null,
    cue && cue.delayMs !== null && cue.delayMs > 0 ? text.delay(levelText(cue.delayMs)) : null,
  ]
    .filter((part) => part !== null)
    .join(', ');
}

const matchText = (offsetDb: number | null) =>
  offsetDb === null ? words.listening.matchUnknown : words.listening.match(offsetText(offsetDb));
