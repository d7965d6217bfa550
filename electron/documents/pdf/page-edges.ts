import type { PageMarks, Word } from './page-marks.ts';

/**
 * A title or a page number that is printed at the top or bottom of each page is kept where it comes first, so that
 * it does not stand in the middle of a table over several pages. Only the page's own number may differ: a line that
 * differs in any other number is a line of the rider.
 */
export function withoutRepeatedEdges(pages: readonly PageMarks[]): PageMarks[] {
  const seen = new Set<string>();
  return pages.map((page, place) => {
    const repeated = new Set<Word>();
    for (const line of edgesOf(page.words)) {
      const key = keyOf(line, place + 1);
      if (seen.has(key)) for (const word of line) repeated.add(word);
      else if (/\p{L}/u.test(key)) seen.add(key);
    }
    return { ...page, words: page.words.filter((word) => !repeated.has(word)) };
  });
}

/** What a line reads at its height, without the number of its page. */
function keyOf(line: readonly Word[], pageNumber: number): string {
  const text = line.map((word) => word.text.trim()).join(' ');
  return `${text.replace(new RegExp(`\\b${pageNumber}\\b`), '#')} ${Math.round((line[0]?.y ?? 0) / 4)}`;
}

/** Nearer to the next line than this, in heights of the type, a line belongs to the text of the page. */
const apart = 2;

/** The first and the last line of a page, where they stand apart from what is between them. */
function edgesOf(words: readonly Word[]): Word[][] {
  const heights = words.map((word) => word.y);
  const [top, bottom] = [Math.min(...heights), Math.max(...heights)];
  const first = words.filter((word) => word.y <= top + word.size / 2);
  const last = words.filter((word) => word.y >= bottom - word.size / 2);
  return [first, last].filter((edge) => {
    const [y, size] = [edge[0]?.y ?? 0, edge[0]?.size ?? 0];
    const others = words.filter((word) => !edge.includes(word));
    return others.length > 0 && others.every((word) => Math.abs(word.y - y) >= apart * size);
  });
}
