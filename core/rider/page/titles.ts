import { findHits, lookUp } from '../language/lexicon.ts';
import type { Tongue } from '../language/source-name.ts';
import { tidy, tokenize } from '../language/text.ts';
import { mixWords, titleLexicon } from '../language/vocabulary.ts';
import type { Section } from '../words/titles.ts';

/** Words of a title beyond the ones that open a section: the act's name, a date. */
const mostOtherWords = 5;

/** "rev. 2026-04-02", "v3", "Stand 3/2026" behind a title. */
const revision =
  /[\s,(–-]+(?:(?:rev(?:ision)?|version|updated?|stand|vom|dated)\b\.?|v\.?(?=\d)|\d{4}-\d{2}-\d{2}\b|\d{1,2}[./]\d{1,2}[./]\d{2,4}).{0,24}$/i;

/** "Zum Monitoring", "côté retours": words before a title. */
const about =
  /^(?:for the|about the|as for the|now the|zum|zur|zu den|für die|unsere?|pour les?|pour la|c[oô]t[eé]|niveau|question|quant aux|nos|para los|para las|en cuanto a|sobre los|nuestros|per i|per gli|per le|lato|quanto ai|i nostri|voor de|wat betreft de|onze|para os|para as|quanto aos|os nossos)\s+(?=\p{L})/iu;

/** "Monitors - four mixes": how many there are stands behind a title. */
const howMany = /\s*[-–—:,]\s*(?:\d{1,2}|\p{L}+)\s+\p{L}+$/u;

/** The section that a text opens as a title, or null where it is none. */
export function titleOf(text: string, tongue: Tongue): Section | null {
  const plain = tidy(text.replace(/^[\s#*=_>•·\-–—]+|[\s#*=_:\-–—.]+$/g, ''))
    .replace(/^(?:\d{1,2}(?:\.\d)?|[a-h]|[ivx]{1,4})[.)]\s+/i, '')
    .replace(/\s*\([^)]*\)$/, '')
    .replace(about, '')
    .replace(revision, '')
    .replace(howMany, '')
    .trim();
  if (plain === '' || plain.length > 70 || /[@;]/.test(plain)) return null;
  const exact = lookUp(titleLexicon, plain, tongue.spoken);
  if (/[.!?]\s*$/.test(text) && !exact) return null;
  if (exact) return exact[0]?.meaning as Section;
  if (/:\s*$/.test(text) && lookUp(mixWords, plain, tongue.spoken)?.[0]?.subject === 'device') return 'mixes';
  if (/:\s*\S/.test(plain) || /,/.test(plain)) return null;
  const tokens = tokenize(plain);
  const words = tokens.filter((token) => token.kind !== 'mark').length;
  const hits = findHits(titleLexicon, tokens, tongue.spoken, tongue.names).filter(
    (hit) => hit.certainty === 1,
  );
  const sections = hits.map((hit) => ({
    section: hit.senses[0]?.meaning as Section,
    length: tokens
      .slice(hit.from, hit.to)
      .map((token) => token.text)
      .join('').length,
    words: hit.to - hit.from,
    from: hit.from,
  }));
  const lists = sections.filter(({ section }) => ['inputs', 'mixes', 'line-up'].includes(section));
  // "Line-up / Inputs" heads lines that tell both: the inputs matter more.
  const best =
    lists.find(({ section }) => section === 'inputs' && lists.length > 1) ??
    lists.find(({ length }) => length >= 8) ??
    null;
  if (!best) return null;
  return words - best.words <= mostOtherWords &&
    !/\d\s*$/.test(plain.replace(/(?:19|20)\d\d|v\d.*$/gi, '').trim()) &&
    !isSentence(plain)
    ? best.section
    : null;
}

function isSentence(text: string): boolean {
  return (
    /[.!?]$/.test(text) ||
    /\b(?:we|is|are|need|please|wir|bitte|sind|nous|sont|est|necesitamos|son|siamo|abbiamo|wij|zijn|see|siehe|voir|ver)\b/i.test(
      text,
    )
  );
}
