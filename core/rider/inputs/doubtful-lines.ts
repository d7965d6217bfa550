import { findHits } from '../language/lexicon.ts';
import type { Tongue } from '../language/source-name.ts';
import { tokenize } from '../language/text.ts';
import { doubtWords } from '../language/vocabulary.ts';
import { type FoundInput, note, placeOf } from '../page/draft.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';

/** "Guest? (sax or flute)", "Trumpet | tbc", "vielleicht noch eine Geige": the band itself is not sure of the line. */
function isDoubtful({ name, details }: FoundInput, tongue: Tongue): boolean {
  if (/\?(?:\s|$|\))/.test(name)) return true;
  return [name, details.pickUpModel, ...details.alternatives, ...details.notes].some(
    (text) =>
      text !== '' &&
      findHits(doubtWords, tokenize(text), tongue.spoken, tongue.names).some((hit) => hit.certainty === 1),
  );
}

/** Asks about every line that the band is not sure of. Until it is answered it stays, as an optional one. */
export function askDoubtful(work: Work): void {
  const { found, tongue, asker } = work;
  const dropped = found.inputs.filter((input) => {
    if (!isDoubtful(input, tongue)) return false;
    const answer = asker.ask({
      matter: 'wanted',
      at: input.at,
      part: input.part > 0 ? String(input.part) : '',
      ask: `The band is not sure of "${shorten(input.name)}". Keep the line?`,
      options: [
        { value: 'maybe', label: 'Keep it as an optional line' },
        { value: 'yes', label: 'Keep it: it is wanted' },
        { value: 'no', label: 'Leave it out' },
      ],
      guessConfidence: 0.5,
      weight: weights.twoLines,
    });
    input.details.optional = answer !== 'yes';
    return answer === 'no';
  });
  if (dropped.length === 0) return;
  found.inputs = found.inputs.filter((input) => !dropped.includes(input));
  for (const { at } of dropped) {
    if (found.inputs.some((input) => placeOf(input.at) === placeOf(at))) continue;
    found.notes.delete(placeOf(at));
    note(found, at, 'set aside', 'The engineer left this line out.');
  }
}
