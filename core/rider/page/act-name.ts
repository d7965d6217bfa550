import type { Grid } from '../grid.ts';
import { isAllIn } from '../inputs/details.ts';
import { findHits } from '../language/lexicon.ts';
import type { Tongue } from '../language/source-name.ts';
import { fold, tidy, tokenize } from '../language/text.ts';
import { mixWords, nameWords, titleLexicon } from '../language/vocabulary.ts';
import { type Found, note, placeOf } from './draft.ts';
import { isBlankRow, textOfRow } from './lines.ts';
import { titleOf } from './titles.ts';

const labels =
  /^(?:band|artist|artiste|act|group|groupe|gruppe|banda|artista|grupo|gruppo|name of (?:the )?(?:band|act)|künstler|projekt|project|band name|bandname|artiest)\s*[:：=]\s*([^|]+)/i;
const riderWords =
  /\b(?:technical|tech|audio|stage|monitor|sound)?\s*riders?\b|\btech(?:nical)? ?spec(?:s|ification)?\b|\btechrider\b|\bb[uü]hnenanweisung\b|\btechnikrider\b|\bfiche technique\b|\bscheda tecnica\b|\bt[eé]cnico\b|\bficha t[eé]cnica\b|\btechnische rider\b|\binput ?list\b|\bchannel ?list\b|\bkanalliste\b|\btechnische[rn]?\b|\bson\b|\bpatch ?list\b|\bversion\b|\bv\d+(?:\.\d+)?\b|\b(?:19|20)\d\d\b|\b\d{1,2}[./]\d{1,2}[./]?\d{0,4}\b|\bhospitality\b|\b(?:updated?|stand|date|datum|valid|rev(?:ision)?)\b.*$/gi;

/** Before the subject of a mail. */
const mailHead =
  /^\s*(?:(?:subject|betreff|objet|asunto|oggetto|onderwerp|assunto|re|fwd?|aw|wg|tr|rv)\s*:\s*)+/i;

/** The act's name where a line gives it ("Band: ..."), or where a title of the rider holds it; else null. */
export function actNameIn(line: string): string | null {
  const text = line.replace(mailHead, '').replace(/\s+\([^)]*\)\s*$/, '');
  const labelled = labels.exec(tidy(text))?.[1];
  if (labelled) return tidy(labelled).slice(0, 200);
  if (
    text.length > 90 ||
    !/rider|b[uü]hnenanweisung|fiche technique|scheda tecnica|ficha t[eé]cnica|tech ?spec/i.test(fold(text))
  )
    return null;
  const rest = tidy(text.replace(riderWords, ' ').replace(/[-–—|:,()/_#*"“”]+/g, ' '));
  const named = rest.replace(/^(?:for|of|von|für|de|du|of the|di|van|and|&)\s+/i, '');
  // "anbei unser Rider" is a sentence: names begin with a capital.
  return /\p{L}{2,}/u.test(named) && !/^\p{Ll}/u.test(named) && named.split(' ').length <= 6 ? named : null;
}

/** "TECHNICAL RIDER" and nothing else. */
export function isRiderTitle(text: string): boolean {
  return (
    text.length < 60 &&
    /rider|fiche technique|scheda tecnica|ficha t[eé]cnica|b[uü]hnenanweisung/i.test(text) &&
    !/\p{L}{2}/u.test(text.replace(riderWords, ' '))
  );
}

/** Lines from the top in which a band says its name; further down other names stand. */
const openingLines = 8;

/** Words of a name, each with a capital; small words may stand between them. */
const capitals = String.raw`\p{Lu}[\p{L}\p{N}'’.&-]*(?:\s+(?:(?:the|of|and|und|et|de|du|la|le|y|e|di|da|van|&|\+)\s+)?\p{Lu}[\p{L}\p{N}'’.&-]*){0,5}`;
/** "we are Paper Herons and ...", "the input list for Paper Herons:", "Paper Herons - input list". */
const sayings = [
  new RegExp(
    String.raw`\b(?:we are|we're|this is|wir sind|nous sommes|somos|siamo|wij zijn|we zijn)\s+(${capitals})`,
    'u',
  ),
  new RegExp(
    String.raw`\b(?:list|rider|spec|specs|liste|lista|lijst)\s+(?:for|of|von|für|de|du|pour|di|van|do|da)\s+(${capitals})\s*[:.!]?$`,
    'u',
  ),
];

/**
 * The act's name as the first lines of a rider give it without saying so: in a sentence, beside the name of a list, or
 * alone at the top. The line is noted. Null where none of them is sure to be a name.
 */
export function actNameInOpening(grid: Grid, found: Found, tongue: Tongue): string | null {
  const rows = (grid.sheets[0]?.rows ?? []).slice(0, mostRows);
  const lines = rows.flatMap((row, at) => (isBlankRow(row) ? [] : [{ row, at: { sheet: 0, row: at } }]));
  let isTop = true;
  for (const { row, at } of lines.slice(0, openingLines)) {
    if ((found.notes.get(placeOf(at))?.outcome ?? 'set aside') !== 'set aside') return null;
    const name = nameInRow(row, isTop, tongue);
    if (name !== null) {
      found.notes.delete(placeOf(at));
      note(found, at, 'set aside', 'The name of the act.');
      return name;
    }
    isTop &&= isRiderTitle(tidy(textOfRow(row)));
  }
  return null;
}

const mostRows = 100;

function nameInRow(row: readonly string[], isTop: boolean, tongue: Tongue): string | null {
  const cells = row.filter((cell) => tidy(cell) !== '');
  const text = tidy(cells.join(': ').replace(mailHead, ''));
  const labelled = [...cells, ...(cells.length === 2 ? [text] : [])].find((it) => labels.test(tidy(it)));
  if (labelled) return actNameIn(labelled);
  // A head of columns in plain text is no name either.
  if (cells.length !== 1 || /\S(?: {2,}|\t|\|)\S/.test(cells[0] ?? '')) return null;
  const said = sayings
    .map((saying) => saying.exec(text)?.[1]?.replace(/\.$/, ''))
    .find((name) => name && isName(name, tongue));
  return said ?? besideTitle(text, tongue) ?? (isTop ? alone(text, tongue) : null);
}

/** "Paper Herons - Input list 2026": what is no title beside what is one. */
function besideTitle(text: string, tongue: Tongue): string | null {
  if (text.length > 90) return null;
  const quoted = /["“„«]\s?([^"“”»]{2,40}?)\s?["“”»]/.exec(text);
  if (quoted?.[1] && titleOf(text.replace(quoted[0], ''), tongue) !== null) return quoted[1];
  const parts = text.split(/\s+[-–—|/]\s+|:\s+/);
  const isTitle = (part: string) => titleOf(part, tongue) !== null || fold(part).search(riderWords) >= 0;
  const names = parts.filter((part) => !isTitle(part));
  const [name] = names;
  return name && names.length < parts.length && isName(name, tongue) ? name : null;
}

/** A line of its own that is no sentence, no address and no figure. */
function alone(text: string, tongue: Tongue): string | null {
  const plain = text.replace(/\s*\([^)]*\)$/, '');
  if (plain.length > 40 || /[@:;,=|?]|[.!]$|^\d/.test(plain)) return null;
  const titles = findHits(titleLexicon, tokenize(plain), tongue.spoken, tongue.names);
  const isTitle = isRiderTitle(plain) || titles.some(({ certainty }) => certainty === 1);
  return isTitle || !isName(plain, tongue) ? null : plain;
}

/** Every word but the small ones with a capital, and not all of them words of the trade. */
function isName(text: string, tongue: Tongue): boolean {
  if (!new RegExp(`^${capitals}$`, 'u').test(text)) return false;
  const isTrade = [nameWords, titleLexicon, mixWords].some((words) => isAllIn(words, text, tongue));
  return !isTrade && tokenize(text).some(({ kind, text: word }) => kind === 'word' && word.length > 1);
}
