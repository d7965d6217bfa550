import type { Audience, PhantomNeed, PickUp } from '../../show/words.ts';
import { findHits, type Lexicon } from '../language/lexicon.ts';
import type { Tongue } from '../language/source-name.ts';
import { fold, type Token, tidy, tokenize } from '../language/text.ts';
import {
  alternativeWords,
  nameWords,
  ownershipWords,
  phantomLexicon,
  pickUpWords,
  positionWords,
  standWords,
} from '../language/vocabulary.ts';

/** What a rider says of a line besides its name. */
export type Details = {
  pickUp: PickUp | null;
  pickUpModel: string;
  alternatives: string[];
  phantom: PhantomNeed;
  stand: string;
  position: string;
  broughtBy: 'band' | 'house' | null;
  optional: boolean;
  audience: Audience;
  notes: string[];
};

export function noDetails(): Details {
  return {
    pickUp: null,
    pickUpModel: '',
    alternatives: [],
    phantom: 'not said',
    stand: '',
    position: '',
    broughtBy: null,
    optional: false,
    audience: 'front of house and monitors',
    notes: [],
  };
}

/** The first meaning of any word of the text in a table, or null. */
function firstMeaning<M extends string>(words: Lexicon<string, M>, text: string, tongue: Tongue): M | null {
  const hits = findHits(words, tokenize(text), tongue.spoken, tongue.names);
  return hits[0]?.senses[0]?.meaning ?? null;
}

/** True where nothing in the text is unknown to the table. */
export function isAllIn(words: Lexicon<string, string>, text: string, tongue: Tongue): boolean {
  const tokens = tokenize(text);
  const hits = findHits(words, tokens, tongue.spoken, tongue.names);
  const covered = hits.reduce(
    (sum, hit) => sum + tokens.slice(hit.from, hit.to).filter((token) => token.kind !== 'mark').length,
    0,
  );
  return hits.length > 0 && covered === tokens.filter((token) => token.kind !== 'mark').length;
}

const nothing = /^[-–—\s/.]*$|^(?:none|n\/?a|keine?r?s?|ohne|sans|aucun|ninguno|nessuno|geen|nenhum)$/i;

/** "Mic", "DI box", "condenser": no more than how the line is picked up. What says more is kept as asked for. */
function isPlainPickUp(cell: string, tongue: Tongue): boolean {
  const words = tokenize(cell).filter((token) => token.kind !== 'mark');
  const hits = findHits(pickUpWords, words, tongue.spoken, tongue.names);
  return (
    !/\d/.test(cell) &&
    isAllIn(pickUpWords, cell, tongue) &&
    (words.length === 1 || isGeneric(words, hits.length))
  );
}

const isGeneric = (words: readonly Token[], phrases: number) =>
  phrases === 1 &&
  words.length === 2 &&
  words.some((word) => /^(?:mic|mics|mike|micro|di|box|d|i)$/.test(word.text));

/** A cell of the column for microphone or DI. What it names is kept whole; models are never mapped. */
export function readPickUpCell(
  text: string,
  tongue: Tongue,
): Pick<Details, 'pickUp' | 'pickUpModel' | 'alternatives' | 'phantom'> {
  const cell = tidy(text);
  if (nothing.test(cell)) return { pickUp: null, pickUpModel: '', alternatives: [], phantom: 'not said' };
  const choices = splitAlternatives(cell, tongue);
  const first = choices[0] ?? cell;
  const tokens = tokenize(first);
  const pickUps = findHits(pickUpWords, tokens, tongue.spoken, tongue.names).flatMap((hit) =>
    hit.senses.map((sense) => sense.meaning as PickUp),
  );
  const pickUp = pickUps.includes('wireless')
    ? 'wireless'
    : (pickUps[0] ?? (/\p{L}/u.test(cell) ? 'mic' : null));
  return {
    pickUp,
    // Where something may stand in, also a plain word tells what was asked for first.
    pickUpModel: choices.length === 1 && isPlainPickUp(first, tongue) ? '' : first,
    alternatives: choices.slice(1),
    phantom: phantomIn(first, tongue),
  };
}

/** "A or B", "A / B", "A (or equivalent)": the first is asked for, the others may stand in. */
function splitAlternatives(text: string, tongue: Tongue): string[] {
  const tokens = tokenize(text);
  const hit = findHits(alternativeWords, tokens, tongue.spoken).find((it) => it.from > 0);
  const slash = / \/ /.exec(text);
  const start = hit ? tokens[hit.from]?.start : undefined;
  const end = hit ? tokens[hit.to - 1]?.end : undefined;
  if (start !== undefined && end !== undefined) {
    const rest = tidy(text.slice(end).replace(/^[\s):,.]+|[\s(]+$/g, ''));
    return [
      tidy(text.slice(0, start).replace(/[\s(,]+$/, '')),
      rest === '' || rest === ')' ? tidy(text.slice(start, end)) : rest,
    ];
  }
  if (slash)
    return text
      .split(' / ')
      .map(tidy)
      .filter((it) => it !== '');
  return [text];
}

/** What the words of a text say of phantom power. */
export function phantomIn(text: string, tongue: Tongue): PhantomNeed {
  const found = findHits(phantomLexicon, tokenize(text), tongue.spoken, tongue.names).map(
    (hit) => hit.senses[0]?.meaning,
  );
  for (const need of ['harmful', 'not needed', 'needed'] as const) if (found.includes(need)) return need;
  return 'not said';
}

/** A cell of the 48 V column. A mark says yes, a dash or "no" says no, and nothing says nothing. */
export function readPhantomCell(text: string, tongue: Tongue): PhantomNeed {
  const cell = fold(text).replace(/\s+/g, '');
  if (cell === '') return 'not said';
  const said = phantomIn(text, tongue);
  if (said !== 'not said' && !/^(?:no|non|nein|nee|nao|off)/.test(cell)) return said;
  if (/^(?:-+|no|n|nein|non|nao|nee|off|aus|0|none|false|✗|✘|kein|keine|niet|geen)$/.test(cell))
    return 'not needed';
  if (/^(?:no|nein|off)/.test(cell)) return 'harmful';
  if (/^(?:x+|y|yes|ja|j|oui|o|si|s|sim|on|an|1|true|✓|✔|☑|✅|•|●|\*|\+|v|ok|■|√)$/.test(cell))
    return 'needed';
  return 'not said';
}

export function broughtByIn(text: string, tongue: Tongue): 'band' | 'house' | null {
  const hit = findHits(ownershipWords, tokenize(text), tongue.spoken, tongue.names)[0];
  return (hit?.senses[0]?.meaning as 'band' | 'house' | undefined) ?? null;
}

export function isOptional(text: string, tongue: Tongue): boolean {
  return findHits(nameWords, tokenize(text), tongue.spoken, tongue.names).some((hit) =>
    hit.senses.some((sense) => sense.subject === 'part' && sense.meaning === 'optional'),
  );
}

const onlyMonitors =
  /\b(?:(?:only|just|nur|solo|alleen|uniquement|seulement|apenas)\s+(?:(?:for|fur|auf|in|im|to|the|para|per|voor|pour|dans|a|en|al|nei|negli|nos|los|les|las)\s+){0,2}(?:mon(?:itor)?e?s?|iems?|in[- ]?ears?|ears|retours|monitores|monitoren)|(?:mon(?:itor)?s?|iems?|in[- ]?ears?|ears|retours)\s+(?:only|nur|seulement|uniquement|solo)|not?\s+(?:in\s+|to\s+|at\s+)?(?:foh|pa)|nicht\s+(?:auf\s+|in\s+|im\s+)?(?:die\s+)?(?:foh|pa)|pas\s+en\s+facade)\b/;
const onlyHouse =
  /\b(?:foh|pa)\s+only\b|\bonly\s+(?:foh|pa)\b|\bnur\s+(?:foh|pa)\b|\bnot in (?:monitors|ears)\b/;

export function audienceIn(text: string): Audience {
  const folded = fold(text);
  if (onlyMonitors.test(folded)) return 'monitors only';
  if (onlyHouse.test(folded)) return 'front of house only';
  return 'front of house and monitors';
}

/** Reads the words after a name in a line of text: "dynamic mic, short boom, SR, own". What is left is a note. */
export function readDetails(fragments: readonly string[], tongue: Tongue): Details {
  const details = noDetails();
  for (const fragment of fragments) readFragment(fragment, details, tongue);
  return details;
}

function readFragment(fragment: string, details: Details, tongue: Tongue): void {
  const text = tidy(fragment);
  if (text === '') return;
  let understood = false;
  // "Dynamic mic or condenser" asks for the dynamic one: what may stand in says nothing of the switch.
  const asked = /48|phantom/i.test(text) ? text : (splitAlternatives(text, tongue)[0] ?? text);
  const phantom = phantomIn(asked, tongue);
  if (phantom !== 'not said') {
    details.phantom = phantom;
    understood = true;
  }
  if (isOptional(text, tongue)) {
    details.optional = true;
    understood = true;
  }
  const pickUp = firstMeaning(pickUpWords, text, tongue) as PickUp | null;
  const stand = firstMeaning(standWords, text, tongue);
  const isStand = stand !== null && isStandFragment(text, tongue);
  if (pickUp && !(isStand && details.pickUp)) {
    const read = readPickUpCell(text, tongue);
    details.pickUp ??= read.pickUp;
    if (read.pickUpModel && !isStand) details.pickUpModel ||= read.pickUpModel;
    details.alternatives.push(...read.alternatives);
    understood = true;
  }
  if (isStand && details.stand === '') {
    details.stand = stand === 'none' ? '' : text;
    understood = true;
  }
  if (!understood && isAllIn(positionWords, text, tongue)) {
    details.position = details.position ? `${details.position}, ${text}` : text;
    understood = true;
  }
  const owner = broughtByIn(text, tongue);
  if (owner) {
    details.broughtBy ??= owner;
    understood = understood || isAllIn(ownershipWords, text, tongue);
  }
  const audience = audienceIn(text);
  if (audience !== 'front of house and monitors') details.audience = audience;
  if (!understood) details.notes.push(text);
}

/** "boom" or "short stand", but not "low" or "small" by themselves, which may be anything. */
function isStandFragment(text: string, tongue: Tongue): boolean {
  if (/^\s*(?:lo|hi|low|high|short|tall|small|clip|straight)\s*$/i.test(text))
    return /short|tall|clip|straight/i.test(text);
  return isAllIn(
    standWords,
    text.replace(/\b(?:on|with|mit|avec|con|met|com|auf|sur|mic|a|an)\b/gi, ' '),
    tongue,
  );
}
