import type { Tongue } from '../language/source-name.ts';
import { tidy } from '../language/text.ts';
import type { Language } from '../words/table.ts';

/** A piece of a sentence between its commas, brackets and joining words. */
export type Piece = {
  text: string;
  /** How many brackets it stands in. */
  depth: number;
  /** What stands before it: the first piece has none. */
  joint: '' | ',' | ':' | '(' | ')' | 'and' | 'more';
};

/** Words that join two things. A language that is not the rider's would cut its own words apart ("en", "e"). */
const joining: readonly { language: Language | 'any'; and: string; more: string }[] = [
  { language: 'any', and: 'and', more: 'plus|as well as|and also' },
  { language: 'de', and: 'und', more: 'und dazu|dazu|sowie|außerdem|ausserdem|und zusätzlich|zusätzlich' },
  { language: 'fr', and: 'et|puis', more: 'ainsi que|et en plus|en plus' },
  { language: 'es', and: 'y|e', more: 'y además|además de|además|más' },
  { language: 'it', and: 'e|ed', more: 'e in più|in più|più|e inoltre|inoltre' },
  { language: 'nl', and: 'en', more: 'en daarbij|daarbij|alsook|en ook nog' },
  { language: 'pt', and: 'e', more: 'e mais|mais|e ainda|além de' },
];

const spokenJoining = (spoken: Tongue['spoken']) =>
  joining.filter(({ language }) => language === 'any' || spoken.has(language));

function jointsOf(spoken: Tongue['spoken']): RegExp {
  const listOf = (kind: 'and' | 'more') =>
    spokenJoining(spoken)
      .map((it) => it[kind])
      .join('|');
  return new RegExp(
    `(?<open>[([])|(?<close>[)\\]])|(?<colon>:(?=\\s|$))|(?<dash>\\s[-–—]\\s)|(?<comma>[,;](?=\\s|$)|\\.(?=\\s|$)|\\s[/|]\\s)|(?<more>(?<=^|\\s|,)(?:${listOf('more')})(?=\\s))|(?<and>\\s[+&]\\s|(?<=^|\\s|,)(?:${listOf('and')})(?=\\s))`,
    'giu',
  );
}

/** "L y R", "left and right": two sides of one thing. */
const joinsSides =
  /^\s*(?:[lrgdei]|right|left|rechts|links|droite|gauche|derecha|izquierda|destra|sinistra|direita|esquerda)\s*(?:$|[,;.:()])/iu;

const weights: Record<Piece['joint'], number> = { '': 0, ',': 1, ')': 1, and: 2, more: 3, ':': 4, '(': 5 };

/** The pieces of a sentence in their order; empty ones are left out, what stands before them is kept. */
export function piecesOf(text: string, { spoken }: Pick<Tongue, 'spoken'>): Piece[] {
  const pieces: Piece[] = [];
  let depth = 0;
  let start = 0;
  let joint: Piece['joint'] = '';
  const push = (end: number) => {
    const piece = tidy(text.slice(start, end));
    if (/[\p{L}\p{N}]/u.test(piece)) {
      pieces.push({ text: piece, depth, joint });
      joint = '';
    }
  };
  for (const found of text.matchAll(jointsOf(spoken))) {
    const { open, close, dash, and, more } = found.groups ?? {};
    // "Drums - kick, snare": the first dash of a line is a colon.
    const colon = found.groups?.colon ?? (dash && pieces.length === 0 ? dash : undefined);
    if (and && joinsSides.test(text.slice(found.index + found[0].length))) continue;
    push(found.index);
    start = found.index + found[0].length;
    const next = open ? '(' : close ? ')' : colon ? ':' : more ? 'more' : and ? 'and' : ',';
    // A bracket says more than the comma right beside it, a word more than either.
    if (weights[next] >= weights[joint]) joint = next;
    if (open) depth += 1;
    if (close) depth = Math.max(0, depth - 1);
  }
  push(text.length);
  return pieces;
}
