import { readSourceName } from '../language/source-name.ts';
import { note } from '../page/draft.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';

/** Every line that nothing was made of and that speaks of sound is asked about. */
export function askPuzzles(work: Work): void {
  for (const puzzle of work.found.puzzles) {
    const known = readSourceName(puzzle.text, work.tongue).stem;
    const answer = work.asker.ask({
      matter: 'line',
      at: puzzle.at,
      ask: `What does "${shorten(puzzle.text)}" ask of the monitor desk?`,
      options: [
        { value: 'remark', label: 'Nothing: keep it as a remark' },
        { value: 'ask', label: known ? `Ask the band about the ${known}` : 'Ask the band' },
      ],
      freeText: true,
      guessConfidence: 0.5,
      weight: weights.unreadLine,
    });
    if (answer !== null) {
      const said =
        answer === 'remark'
          ? 'Kept as a remark.'
          : answer === 'ask'
            ? 'To be asked of the band.'
            : `The engineer says: ${shorten(answer)}`;
      work.found.notes.delete(`${puzzle.at.sheet}:${puzzle.at.row}`);
      note(work.found, puzzle.at, answer === 'remark' ? 'set aside' : 'guessed', said);
    }
  }
}
