/**
 * A name made shorter until it fits: words that say least go first, then words lose their endings, and only then is
 * it cut, with a point at the end so that nobody takes it for the whole name. `fits` measures.
 */
export function shortName(name: string, fits: (text: string) => boolean): string {
  const whole = name.trim().replace(/\s+/g, ' ');
  for (const shorter of ways(whole)) if (fits(shorter)) return shorter;
  return cutTo(whole, fits);
}

function* ways(whole: string): Generator<string> {
  yield whole;
  const withoutAside = whole.replace(/\s*\([^)]*\)/g, '').trim() || whole;
  yield withoutAside;
  const words = withoutAside.split(' ');
  for (const most of [8, 6, 5, 4, 3]) yield words.map((word) => shortWord(word, most)).join(' ');
  // The first and the last word tell most: "Gtr … L".
  if (words.length > 2) {
    const ends = [words[0] ?? '', words.at(-1) ?? ''];
    for (const most of [6, 4, 3]) yield ends.map((word) => shortWord(word, most)).join(' ');
  }
}

/** A word of at most so many letters: vowels inside go first, as people write it by hand. */
function shortWord(word: string, most: number): string {
  const letters = graphemes(word);
  if (letters.length <= most) return word;
  const [first = '', ...rest] = letters;
  const bare = [first, ...rest.filter((letter) => !/^[aeiouäöüáéíóúàèìòùâêîôû]$/i.test(letter))];
  if (bare.length <= most && bare.length >= 2) return bare.join('');
  return `${letters.slice(0, Math.max(1, most - 1)).join('')}.`;
}

function cutTo(whole: string, fits: (text: string) => boolean): string {
  const letters = graphemes(whole);
  for (let length = letters.length - 1; length > 0; length--) {
    const cut = `${letters.slice(0, length).join('').trimEnd()}.`;
    if (fits(cut)) return cut;
  }
  return letters[0] ?? '';
}

/** What a reader takes for one sign, so that no accent is torn from its letter. */
function graphemes(text: string): string[] {
  return [...new Intl.Segmenter().segment(text)].map(({ segment }) => segment);
}
