import type { Word } from './page-marks.ts';

/** Pieces of text on one height, from left to right. A piece is a run of words with no more than a space between. */
export type TextLine = { y: number; size: number; pieces: Piece[] };
type Piece = { text: string; left: number; right: number };

/** Words further apart than this belong to different cells: half the height of the type, where a space is about a
 * third, or a little more than one letter, where all letters are as wide as a space. */
const cellGap = (word: Word): number => Math.max(0.5 * word.size, 1.05 * letterWidth(word));
const letterWidth = (word: Word): number => (word.right - word.left) / Math.max(word.text.length, 1);
/** From top to bottom no earlier line is at the height of a word. */
const linesLookedAt = 20;
/** Heights that differ by less than this, in heights of the type, are one line. */
const sameLine = 0.35;

export function linesOfWords(words: readonly Word[]): TextLine[] {
  const lines: { y: number; size: number; words: Word[] }[] = [];
  for (const word of [...words].sort((a, b) => a.y - b.y || a.left - b.left)) {
    const line = lines
      .slice(-linesLookedAt)
      .findLast((it) => Math.abs(it.y - word.y) <= sameLine * Math.max(it.size, word.size));
    if (line) line.words.push(word);
    else lines.push({ y: word.y, size: word.size, words: [word] });
  }
  const split = lines.map((line) => line.words.flatMap(splitAtGaps).sort((a, b) => a.left - b.left));
  const edges = sharedEdges(split);
  return lines.map(({ y, size }, place) => ({
    y,
    size,
    pieces: piecesOf(split[place] ?? [], edges[place] ?? []),
  }));
}

/** So many lines, one below the other, with a word that begins at the same place are a column and no chance. */
const linesOfColumn = 4;
/** Places that differ by less are the same, in points. */
const samePlace = 0.8;

/**
 * For each line, the places inside it where a column begins, although the text before it may nearly touch it: words of
 * many lines begin there, and no line between them runs across it.
 */
function sharedEdges(lines: readonly (readonly Word[])[]): number[][] {
  const edges = lines.map((): number[] => []);
  const tried = lines.map((): number[] => []);
  const holds = (known: readonly number[] | undefined, left: number) =>
    known?.some((edge) => Math.abs(edge - left) < samePlace) ?? false;
  lines.forEach((line, place) => {
    for (const { left } of line.slice(1)) {
      if (holds(tried[place], left)) continue;
      const own = linesBeginningAt(lines, place, left);
      for (const at of own) tried[at]?.push(left);
      if (own.length >= linesOfColumn) for (const at of own) edges[at]?.push(left);
    }
  });
  return edges;
}

/** From one line downwards those with a word that begins at a place, until a line runs across it. */
function linesBeginningAt(lines: readonly (readonly Word[])[], from: number, left: number): number[] {
  const after = lines.slice(from + 1);
  const end = after.findIndex((line) =>
    line.some((word) => word.left < left - samePlace && word.right > left + samePlace),
  );
  const free = lines.slice(from, end < 0 ? lines.length : from + 1 + end);
  return free.flatMap((line, offset) =>
    line.some((word) => Math.abs(word.left - left) < samePlace) ? [from + offset] : [],
  );
}

function piecesOf(words: readonly Word[], edges: readonly number[]): Piece[] {
  const pieces: Piece[] = [];
  for (const word of words) {
    const last = pieces.at(-1);
    const gap = last ? word.left - last.right : Number.POSITIVE_INFINITY;
    const isEdge = edges.some((edge) => Math.abs(edge - word.left) < samePlace);
    if (!last || gap > cellGap(word) || (isEdge && gap > 0))
      pieces.push({ text: word.text, left: word.left, right: word.right });
    else {
      last.text += gap > 0.1 * word.size && !/\s$/.test(last.text) ? ` ${word.text}` : word.text;
      last.right = Math.max(last.right, word.right);
    }
  }
  return pieces.map((piece) => ({ ...piece, text: piece.text.replace(/\s+/g, ' ').trim() }));
}

/** Text that was lined up with spaces is one word to the PDF: it is parted there, each part at its share of the width. */
function splitAtGaps(word: Word): Word[] {
  const width = letterWidth(word);
  return [...word.text.matchAll(/\S+(?: \S+)*/g)].map((match) => ({
    ...word,
    text: match[0],
    left: word.left + match.index * width,
    right: word.left + (match.index + match[0].length) * width,
  }));
}
