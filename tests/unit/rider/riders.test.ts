import { describe, expect, test } from 'vitest';
import { addScores, noScores, riderNames, type Scores, scoreRider } from '../../helpers/rider-corpus.ts';

/**
 * What the reader gets right of the invented riders in `tests/riders`, by form and by language. The expectations
 * were written by hand before the reader saw the riders; common practice throughout.
 */
const floors: Record<keyof Scores, number> = {
  lines: 0.98,
  kinds: 0.95,
  pairs: 0.95,
  wishes: 0.9,
  devices: 0.9,
};

const share = ({ right, of }: { right: number; of: number }) => (of === 0 ? 1 : right / of);

function scoresOf(names: readonly string[], wrong: string[]): Scores {
  const sum = noScores();
  for (const name of names) addScores(sum, scoreRider(name, wrong));
  return sum;
}

const languageOf = (name: string) => name.slice(0, 2);

describe('invented riders', () => {
  const names = riderNames();
  const languages = [...new Set(names.map(languageOf))];

  test('there are riders in all seven languages', () => {
    expect(languages).toEqual(expect.arrayContaining(['de', 'en', 'es', 'fr', 'it', 'nl', 'pt']));
  });

  test.each(languages)('riders in %s are read at least as well as promised', (language) => {
    const wrong: string[] = [];
    const scores = scoresOf(
      names.filter((name) => languageOf(name) === language),
      wrong,
    );
    const line = Object.entries(scores)
      .map(([what, score]) => `${what} ${score.right}/${score.of}`)
      .join(', ');
    console.log(`${language}: ${line}`);
    const below = (Object.keys(floors) as (keyof Scores)[]).filter(
      (what) => share(scores[what]) < floors[what],
    );
    expect(below, wrong.join('\n')).toEqual([]);
  });
});
