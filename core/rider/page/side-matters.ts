import type { Grid } from '../grid.ts';
import { fold } from '../language/text.ts';
import type { ReadNote } from '../reading.ts';
import { asideReasons } from '../words/titles.ts';
import { type Found, note, placeOf } from './draft.ts';
import { isBlankRow, type Line, textOfRow } from './lines.ts';

/**
 * What a rider asks for besides sound, in a line of its own: power, risers, ways to talk. None of it is a source or a
 * mix; all of it is kept as a note. The signs are looked for in the folded text.
 */
type SideMatter = { about: ReadNote['about']; why: string; signs: readonly RegExp[]; unless?: RegExp };

const asks =
  /\b(?:please|needs?|wants?|give|provides?|requires?|would like|bitte|brauchen|brauchts?|benotig\w+|besoin|merci de|prevoir|necesit\w+|por favor|serv(?:e|ono)|vorremmo|graag|nodig|precis\w+|gostar\w+)\b/;
const size = /\d(?:[.,]\d+)?\s*(?:m|cm|ft|')?\s*x\s*\d/;
const sound = /\b(?:d\.?i\.?|mi[ck]s?|micro\w*|mikro\w*|xlr|jack|line)\b/;

const matters: readonly SideMatter[] = [
  {
    about: 'power',
    why: 'Power: kept as a note.',
    signs: [
      /\b\d+\s*x\s*(?:\w+\s)?(?:10|13|15|16|20|32|63|125)\s?a\b|\b(?:cee|schuko)\b|\b(?:110|115|120|208|220|230|240|380|400|415)\s?v(?:olts?)?\b|\bpower (?:drops?|outlets?|sockets?|feeds?|strips?)\b|\b(?:steckdosen?|stromanschl\w+|prises? (?:de )?courant|tomas? de corriente|prese (?:di )?corrente|stopcontact\w*|tomadas?)\b/,
    ],
    unless: sound,
  },
  {
    about: 'risers',
    why: 'A riser: kept as a note.',
    signs: [
      /\b(?:\w*risers?|podeste?|praktikabel|praticables?|tarimas?|pedan[ae]|podiums?|praticave(?:l|is)|estrados?)\b/,
      new RegExp(`${size.source}|${asks.source}`),
    ],
    unless: sound,
  },
  {
    about: 'talkback',
    why: 'A wish for a way to talk: kept as a note.',
    signs: [
      /\b(?:talk ?backs?|intercom|gegensprech\w*)\b/,
      asks,
      /\b(?:from|to|between|with|von|vom|zu|zum|zur|zwischen|de|du|vers|entre|para|da|dal|tra|verso|van|naar|tussen|com)\b/,
    ],
    // "Mara: talkback" is a wish, "Talkback: ..." a heading of the line itself.
    unless: /^(?!\W*(?:talk ?backs?|intercom)\s*:)[^:]*:|\b(?:lots?|more|some|little|loud\w*|quiet\w*)\b/,
  },
];

/** "3 Drum riser mic": a line of a list. "2 x 16 A" counts. */
const isNumbered = (text: string) => /^\s*[([]?\d{1,3}[\])]?[.:)\-–]?\s+(?!x\b)\p{L}/iu.test(text);

/** Takes a line that asks for something besides sound. */
export function takeSideMatter(found: Found, line: Line): boolean {
  if (line.cells.length > 1 || isNumbered(line.text)) return false;
  const text = fold(line.text);
  const matter = matters.find(
    ({ signs, unless }) => signs.every((sign) => sign.test(text)) && !unless?.test(text),
  );
  if (matter) note(found, line.at, 'set aside', matter.why);
  return matter !== undefined;
}

/** Reasons for which a line is set aside and yet is a note for somebody. */
const aboutOfReason = new Map<string, ReadNote['about']>([
  ...matters.map(({ why, about }) => [why, about] as const),
  [asideReasons.power, 'power'],
  [asideReasons.stage, 'stage'],
  [asideReasons.wireless, 'wireless'],
]);

/** The notes of a rider, in its order. */
export function notesOf(grid: Grid, found: Found): ReadNote[] {
  return grid.sheets.flatMap(({ rows }, sheet) =>
    rows.flatMap((row, at): ReadNote[] => {
      const about = aboutOfReason.get(found.notes.get(placeOf({ sheet, row: at }))?.why ?? '');
      return about === undefined || isBlankRow(row)
        ? []
        : [{ about, text: textOfRow(row), at: { sheet, row: at } }];
    }),
  );
}
