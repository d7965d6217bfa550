/**
 * Text as riders bring it, made comparable: case, accents, odd spaces and invisible marks are no difference.
 * Nothing here changes what the reading keeps as written.
 */

/** Invisible marks (byte order, joiners, direction) that some programs leave in cells. */
const invisible = /[\u00ad\u200b-\u200f\u2028\u2029\u202a-\u202e\u2060-\u2069\ufeff]|\ufe0e|\ufe0f/g;
const accents = /\p{M}+/gu;
const letterVariants: [RegExp, string][] = [
  [/ß/g, 'ss'],
  [/æ/g, 'ae'],
  [/œ/g, 'oe'],
  [/ø/g, 'o'],
  [/ł/g, 'l'],
  [/đ/g, 'd'],
  [/ı/g, 'i'],
  [/[’‘‛`´ʼ′]/g, "'"],
  [/[“”„«»″]/g, '"'],
  [/[‐‑‒–—―−]/g, '-'],
];

/** One line of text as a person reads it: no invisible marks, single spaces. Accents and case stay. */
export function tidy(text: string): string {
  return text.replace(invisible, '').replace(/\s+/g, ' ').trim();
}

/** Texts one behind the other with commas between, those that are empty left out. */
export const listed = (...texts: readonly string[]): string => texts.filter((text) => text !== '').join(', ');

/** Text for comparison: lower case, no accents, plain dashes and apostrophes, single spaces. */
export function fold(text: string): string {
  // Most text of most riders is plain: it needs none of what follows.
  if (/^[\x21-\x7e]*$/.test(text)) return text.toLowerCase();
  let folded = text.normalize('NFKC').replace(invisible, '').toLowerCase();
  for (const [variant, plain] of letterVariants) folded = folded.replace(variant, plain);
  return folded.normalize('NFKD').replace(accents, '').replace(/\s+/g, ' ').trim();
}

export type Token = {
  /** Folded. */
  text: string;
  /** As written. */
  raw: string;
  kind: 'word' | 'number' | 'mark';
  /** Place in the text the tokens were made from. */
  start: number;
  end: number;
};

const tokenPattern = /\p{L}[\p{L}\p{M}]*|\p{N}+|\S/gu;
const humps = /(?<=\p{Ll})(?=\p{Lu})/u;

/** Longest piece of one cell that is looked at word by word; the rest of such a cell is kept but not read. */
const longestText = 2000;

/** Words, numbers and marks of a text; "HiHat" is two words, "Tom1" a word and a number. */
export function tokenize(text: string): Token[] {
  const known = tokenized.get(text);
  if (known) return known;
  const tokens = tokenizeAnew(text);
  if (tokenized.size >= mostTokenized) tokenized.clear();
  tokenized.set(text, tokens);
  return tokens;
}

/** Whether a word of a text is one of these, which are folded as tokens are. */
export const hasWordOf = (text: string, words: ReadonlySet<string>): boolean =>
  tokenize(text).some((token) => words.has(token.text));

/** A line is looked at from many sides: its tokens are kept for a while. Nobody changes them. */
const tokenized = new Map<string, Token[]>();
const mostTokenized = 2000;

function tokenizeAnew(text: string): Token[] {
  const tokens: Token[] = [];
  const plain = text.length > longestText ? text.slice(0, longestText) : text;
  for (const found of plain.replace(invisible, ' ').matchAll(tokenPattern)) {
    const raw = found[0];
    if (!/\p{L}/u.test(raw)) {
      const number = /^\p{N}+$/u.test(raw);
      const folded = fold(raw);
      tokens.push({
        text: folded,
        raw,
        kind: number ? 'number' : 'mark',
        start: found.index,
        end: found.index + raw.length,
      });
      continue;
    }
    let start = found.index;
    for (const piece of raw.split(humps)) {
      const folded = fold(piece);
      if (folded) tokens.push({ text: folded, raw: piece, kind: 'word', start, end: start + piece.length });
      start += piece.length;
    }
  }
  return tokens;
}

/** A name as a key for comparing: letters and digits only. */
export function squash(text: string): string {
  return fold(text).replace(/[^\p{L}\p{N}]+/gu, '');
}
