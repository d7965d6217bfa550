import { foundMix } from '../page/draft.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { ReadPerformer } from '../reading.ts';

/**
 * "All on in-ears", and no mix is listed: how many there are is not said. None are made up; the engineer is asked, and
 * may have one for each performer or one for all.
 */
export function askMixesForAll(work: Work): void {
  const [told] = work.found.devices;
  const listed = work.found.mixes.length > 0 || work.inputs.some(({ found }) => found.matrix.length > 0);
  if (!told || listed) return;
  const { performers } = work;
  const answer = work.asker.ask({
    matter: 'mixes for all',
    at: told.at,
    ask: `"${shorten(told.text)}" is meant for everybody, but no mix is listed. Which mixes are there?`,
    options: [
      { value: 'none', label: 'None yet: ask the band' },
      { value: 'one', label: 'One mix for all' },
      ...(performers.length > 1
        ? [{ value: 'each', label: `One for each of the ${performers.length} performers` }]
        : []),
    ],
    guessConfidence: 0.3,
    weight: weights.noMixes,
  });
  const listeners: (ReadPerformer | null)[] = answer === 'each' ? performers : answer === 'one' ? [null] : [];
  listeners.forEach((performer, part) => {
    work.found.mixes.push(foundMix(told.at, { part, listenerText: performer?.name ?? '' }));
  });
}
