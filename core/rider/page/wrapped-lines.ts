import { isBulleted } from '../language/bullets.ts';
import { findHits } from '../language/lexicon.ts';
import type { Tongue } from '../language/source-name.ts';
import { tokenize } from '../language/text.ts';
import { mixWords, wishWords } from '../language/vocabulary.ts';
import type { Line } from './lines.ts';
import { titleOf } from './titles.ts';

/** Lines around a line that show how wide its text is set. */
const around = 12;
/** A narrower column than this wraps nothing that can be told from a short line. */
const narrowest = 28;
/** Sentences are set as wide as this. */
const widePage = 50;
/** More lines than these are no one sentence. */
const mostJoined = 6;

/**
 * Joins lines of plain text that were one before a mail program or the edge of a page broke them. The joined line
 * stands where the first one stood, and knows the places of the others.
 */
export function joinWrapped(lines: readonly Line[], tongue: Tongue): Line[] {
  const joined: Line[] = [];
  let at = 0;
  while (at < lines.length) {
    let line = lines[at];
    if (!line) break;
    const width = Math.max(...lines.slice(Math.max(0, at - around), at + around).map((it) => it.text.length));
    let next = lines[at + 1];
    let count = 1;
    while (next && count < mostJoined && goesOnIn(line, next, lines[at], width, tongue)) {
      line = joinLines(line, next);
      at += 1;
      count += 1;
      next = lines[at + 1];
    }
    joined.push(line);
    at += 1;
  }
  return joined;
}

function joinLines(line: Line, next: Line): Line {
  const text = /\p{Ll}-$/u.test(line.text) ? line.text.slice(0, -1) + next.text : `${line.text} ${next.text}`;
  const column = line.cells[0]?.column ?? 0;
  return { ...line, cells: [{ column, text }], text, more: [...(line.more ?? []), next.at] };
}

const opensItem =
  /^\s*(?:[-•*·–>▪●]\s|(?:ch|channel|canale?|kanal|kanaal|voie|tranche|line|input)\.?\s?\d|\(?\d{1,3}\s*[.):/+=-]|\d{1,3}\s|\(?[a-h][.)]\s|\p{Lu}[^:]{0,40}:\s)/u;

/** "Own vocal: plenty", short on both sides. */
const pair = /^[^:,.;]{2,30}:\s[^:,.;]{2,24}$/u;

/** `last` is the line right above `next`, which ended where the text was broken. */
function goesOnIn(line: Line, next: Line, last: Line | undefined, width: number, tongue: Tongue): boolean {
  if (!last || line.cells.length !== 1 || next.cells.length !== 1 || line.loose || next.loose) return false;
  if (next.at.sheet !== last.at.sheet || next.at.row !== last.at.row + 1) return false;
  if (line.part > 0 || next.part > 0 || /[.!?]$/.test(line.text) || opensItem.test(next.text)) return false;
  // "Voz: normal" above "bajo: mucho" are two items, however they are written.
  if (pair.test(last.text) && pair.test(next.text)) return false;
  // A colon at the edge of a column opens no list below where its sentence goes on in small letters.
  const isCut = last.text.length >= 0.8 * width && /^\p{Ll}/u.test(next.text) && width >= widePage;
  if (/[:;]$/.test(line.text)) return isCut && line.text.split(' ').length >= 6;
  if (width < narrowest || titleOf(next.text, tongue) !== null || titleOf(line.text, tongue) !== null)
    return false;
  const isLower = /^\p{Ll}/u.test(next.text);
  const isItem = isBulleted(line.text) || /^\p{Lu}[^:]{0,40}:\s/u.test(line.text);
  const isFull = last.text.length >= 0.8 * width;
  if (endsOpen(line.text, tongue)) return isItem || isFull || last.text.length >= 0.6 * width;
  if (!isLower || headsMix(next.text, tongue)) return false;
  if (/,$/.test(line.text)) return isItem || isFull;
  return isFull && last.text.length >= narrowest && (isItem || line.text.split(' ').length >= 8);
}

/** "in-ears stereo Dora" names a listener behind their device: a line of its own. */
function headsMix(text: string, tongue: Tongue): boolean {
  const tokens = tokenize(text);
  const [first] = findHits(mixWords, tokens, tongue.spoken, tongue.names);
  const isShort = tokens.length <= 6 || /:/.test(text);
  return first?.from === 0 && isShort && /^[^,.:]*\s\p{Lu}\p{L}+\s*(?:[:,–-]|$)/u.test(text);
}

const hanging =
  /(?:[\s,(](?:and|or|with|of|the|a|from|for|to|in|on|my|his|her|und|oder|mit|von|vom|für|der|die|das|den|dem|des|ein|eine[mnrs]?|eigene[mnrs]?|viel|wenig|etwas|mehr|keine?[nmrs]?|seine?[nmrs]?|ihre?[nmrs]?|unsere?[nmrs]?|zwei|zum|zur|im|am|auf|bei|über|et|ou|avec|de|du|des|la|le|les|un|une|y|o|con|del|los|las|el|una|sa|son|ses|sur|pour|sans|para|sin|su|sus|e|di|il|lo|la|gli|i|per|senza|tanta|tanto|sua|suo|en|of|met|van|het|een|op|voor|zonder|zijn|haar|veel|geen|com|sem|no|na|muita|muito|da|do|dos|das|os|as|um|uma)|\([^)]*|\p{Ll}-|[&+])$/iu;

/** The line ends with a word that wants another: "and", "with", an open bracket, or an amount of nothing yet. */
function endsOpen(text: string, tongue: Tongue): boolean {
  // "DI" in capitals is a box, no word that wants another.
  if (hanging.test(text) && !/\bDI$/.test(text)) return true;
  const piece = text.split(/[,;:]/).at(-1) ?? '';
  const tokens = tokenize(piece);
  const hits = findHits(wishWords, tokens, tongue.spoken, tongue.names);
  const [only] = hits;
  return (
    hits.length === 1 &&
    only !== undefined &&
    only.certainty === 1 &&
    only.to - only.from === tokens.length &&
    only.senses.every((sense) => sense.subject === 'amount') &&
    /[,;:]/.test(text)
  );
}
