import { withDigits } from '../language/count-words.ts';
import { legendIn } from '../language/legend.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { scaleIn } from '../language/scale.ts';
import { fold, hasWordOf, tidy, tokenize } from '../language/text.ts';
import { labelWords, mixWords, playerWords, titleLexicon, wishWords } from '../language/vocabulary.ts';
import { foundMix, note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import { titleOf } from '../page/titles.ts';
import type { Walk } from '../page/walk-state.ts';
import { performersInBrackets } from '../performers/line-up.ts';
import { readHead } from './mix-head.ts';
import { leadingLabel, pieceFacts } from './mix-pieces.ts';

const everybody =
  /\b(?:all(?:e[snr]?)?|everyone|everybody|every (?:mix|send)|our|unser(?:e[nsmr]?)?|notre|nos|nuestr[oa]s?|nostr[oaie]|onze|noss[oa]s?|ours|we(?: all)?|wir(?: alle)?|the (?:whole )?band|jede[rs]?|alle musiker|tous|toutes|tout le monde|nous|todos|todas|tutti|tutte|iedereen|allemaal|wij|ieder|the rest|others|the others|rest|all others|everyone else|everybody else|alle anderen|les autres|los demas|gli altri|de rest|os outros|ausschliesslich|que des|uniquement|solo|somente|uitsluitend|alles|throughout|everywhere|durchweg|durchgehend|partout|ovunque|overal|em todas|en todas)\b/;

/** "Four small wedges, one each": a number of devices or of mixes, and nobody in particular. */
const counted =
  /(?:^|\s)\d{1,2}\s+\p{L}|\b(?:each|apiece|per (?:mix|person|send|player)|je(?:weils)?|pro (?:weg|person)|chacune?|par (?:circuit|personne)|cada un[oa]|por (?:v[ií]a|envio|mezcla)|ciascun[oa]|per (?:ogni|mandata)|ieder|elk|per (?:groep|persoon)|cada uma?|um(?:a)? por via)\b/u;

/** More words are no plain sentence on devices. */
const mostWords = 26;
/** A paragraph with more is no line on devices. */
const mostSentences = 6;

/** "All on own stereo in-ears", "we use 4 wedges": what everybody listens through. False where it is not told. */
export function takeGeneralDevice(walk: Walk, line: Line, text: string): boolean {
  const folded = fold(text);
  const titled =
    /^(?:monitors?|monitoring|monitor world|retours?|monitore|monitores|monitorwege|spie|monitoren|ears?|in[- ]?ears?|iems?)\s*:/.test(
      folded,
    );
  const told = /^\W*(?:ears?|in|iem)/.test(folded) ? text : text.replace(/^[^:]{1,20}:\s*(?=\S)/, '');
  if (titled && /^\d+ \p{L}+$/u.test(told)) {
    note(walk.found, line.at, 'set aside', 'It says how many mixes there are.');
    return true;
  }
  if (text.split(' ').length > mostWords) return false;
  if (opensMixes(walk, text)) {
    walk.section = 'mixes';
    return takeForAll(walk, line, text);
  }
  if (takeGeneralText(walk, line, text)) return true;
  if (!everybody.test(folded) && !titled) return false;
  // "No vocals at all" in a sentence with a device is a wish.
  const isWish = isRefusal(told, walk);
  return namesDevice(told, walk) && !isWish && takeForAll(walk, line, text);
}

/**
 * A whole line that tells what everybody listens through, in one sentence or several, with those for whom it does not
 * hold: "All on in-ears, ours, stereo", "Monitors - four mixes, all house wedges", "Tous sur wedges sauf la batterie :
 * casque". The title of the mixes may stand before it, and what the numbers of the table mean. False where the line
 * says anything else.
 */
export function takeGeneralLine(walk: Walk, line: Line): boolean {
  const [first, ...others] = line.cells;
  // "MONITORS | all stereo | + a bit | ++ loud": a title in its own cell.
  const isTitled = others.length > 0 && titleOf(first?.text ?? '', walk.tongue) === 'mixes';
  const isCounted = walk.runs.has(walk.at) || leadingLabel(line.text, walk) !== null;
  if ((others.length > 0 && !line.loose && !isTitled) || isCounted) return false;
  // Most lines say nothing of the kind, and need not be taken apart.
  const isClose =
    tellsOfDevice(line.text, walk) || namesDevice(line.text, walk) || /[+=%]|dB/.test(line.text);
  if (!isClose && !scaleIn(line.text, walk.tongue.spoken)) return false;
  const { title, rest } = isTitled
    ? { title: first?.text ?? '', rest: others.map((cell) => cell.text).join('. ') }
    : titleBefore(line.text, walk);
  if (!takeGeneralText(walk, line, rest, title)) return false;
  if (title !== '' || opensMixes(walk, line.text)) {
    walk.section = 'mixes';
    walk.blocks = [];
    walk.mixHead = null;
    walk.list += 1;
  }
  return true;
}

/** "Monitors: ...", "IEM mixes - ...": the title of a part before what is told of it. */
function titleBefore(text: string, walk: Walk): { title: string; rest: string } {
  for (const mark of text.matchAll(/\s*[:,.(]\s*|\s+[-–—]\s+|(?<=\p{Ll})\s+(?=\p{Lu})/gu)) {
    const title = text.slice(0, mark.index);
    if (title.split(' ').length > 5) break;
    if (titleOf(title, walk.tongue) !== 'mixes') continue;
    return { title, rest: text.slice(mark.index + mark[0].length) };
  }
  return { title: '', rest: text };
}

type Exception = { who: string; how: string };
type Sentence =
  | { says: 'device' | 'more' | 'refused' | 'scale' | 'nothing' | 'other' }
  | { says: 'device'; text: string; except: Exception | null };

function takeGeneralText(walk: Walk, line: Line, text: string, title = ''): boolean {
  const sentences = text
    .split(/(?<=[.;!])\s+|(?<=\p{L}\p{L})\.\s+|\)\s+(?=\p{Lu})|\s+[-–—]\s+/u)
    .map((sentence) => tidy(sentence.replace(/^[-•*]\s+/, '').replace(/[.;!:)]+$/, '')))
    .filter((sentence) => sentence !== '');
  if (sentences.length > mostSentences) return false;
  const read = sentences.map((sentence) => readSentence(sentence, walk, title));
  if (read.some(({ says }) => says === 'other')) return false;
  const tells = (what: Sentence['says'][]) => read.some(({ says }) => what.includes(says));
  const isOfTitle = title !== '' && tells(['more']);
  if (!tells(['device', 'scale', 'refused']) && !isOfTitle) return false;
  const told = sentences.filter((_, at) => read[at]?.says === 'device' || read[at]?.says === 'more');
  const plain = sentences.flatMap((sentence, at) => {
    const it = read[at];
    if (!it || !told.includes(sentence)) return [];
    return 'text' in it ? [it.text] : [sentence];
  });
  const except = read.flatMap((it) => ('except' in it && it.except ? [it.except] : []));
  for (const { who, how } of except)
    walk.found.mixes.push(foundMix(line.at, { listenerText: who, deviceText: how, loose: true }));
  const names = namesSpecialDevice(title, walk) && !namesDevice(plain.join(' '), walk) ? [title] : [];
  const all = [...names, ...plain].join(', ');
  const kinds = kindsByClause(all, walk);
  const spared = { at: line.at, except: except.map(({ who }) => who) };
  // "The wedges are yours, the in-ears are ours": each holds for its kind.
  if (kinds.length > 1)
    for (const clause of kinds) walk.found.devices.push({ ...spared, text: clause, isOfKind: true });
  else if (all !== '') walk.found.devices.push({ ...spared, text: all });
  note(
    walk.found,
    line.at,
    'understood',
    all === '' ? 'What the numbers mean.' : 'What everybody listens through.',
  );
  return true;
}

function readSentence(sentence: string, walk: Walk, title: string): Sentence {
  if (sentence.split(' ').length > mostWords) return { says: 'other' };
  const { before, behind } = splitAtExcept(sentence, walk);
  const except = behind === '' ? null : exceptionOf(behind, walk);
  if (behind !== '' && !except) return { says: 'other' };
  if (namesSomebody(before, walk)) return { says: 'other' };
  if (isOfLegend(sentence, walk, title)) return { says: 'scale' };
  if (saysOfSign(sentence)) return { says: 'nothing' };
  if (scaleIn(sentence, walk.tongue.spoken) && !namesDevice(before, walk)) return { says: 'scale' };
  if (sourcesIn(before, walk) > 0) return { says: 'other' };
  // "All from the house please": among the mixes it says whose they are.
  const isOfAll = (text: string) =>
    (title !== '' || walk.section === 'mixes') && everybody.test(fold(text)) && tellsOfOwner(text, walk);
  if (!namesDevice(before, walk)) {
    if (!except && isOfAll(before)) return { says: 'device' };
    if (except || pieceFacts(before, walk).sameAs) return { says: 'other' };
    return tellsOfDevice(before, walk) ? { says: 'more' } : { says: 'nothing' };
  }
  if (refuses(before, walk)) {
    const others = before
      .split(/[,;]/)
      .filter((clause) => !namesDevice(clause, walk))
      .join(',');
    return isOfAll(others) ? { says: 'device', text: others, except: null } : { says: 'refused' };
  }
  const folded = fold(before);
  const isGeneral =
    title !== '' || everybody.test(folded) || countsMixes(before, walk) || isOfThose(before, walk);
  // "Four monitor mixes please" does not say what they are.
  if (isGeneral && !(namesSpecialDevice(before, walk) || tellsOfDevice(before, walk)))
    return { says: 'other' };
  // Behind what all have, "the packs come with us" tells more of it, and "side fills are for the feeling" nothing.
  if (!isGeneral && tellsOfDevice(before, walk)) return { says: 'more' };
  if (!isGeneral) return { says: /\d|:/.test(withDigits(before, walk.tongue)) ? 'other' : 'nothing' };
  return except ? { says: 'device', text: before, except } : { says: 'device' };
}

/** "Floor monitors" over the mixes tells what they are; "Monitors" may be anything. */
export function namesSpecialDevice(text: string, { tongue }: Walk): boolean {
  const tokens = tokenize(text);
  return findHits(mixWords, tokens, tongue.spoken).some((hit) => {
    const words = tokens
      .slice(hit.from, hit.to)
      .map((token) => token.text)
      .join(' ');
    return hit.senses[0]?.subject === 'device' && !anyDevice.test(words);
  });
}

const anyDevice =
  /^(?:(?:stage |mon(?:itor)? )?(?:monitors?|monitores?|monitore|monitoren|mons?|monis?|foldback|retours?|retornos?|box(?:en)?)|retours? de scene|side|sides|st|ears?|municao|monicao|monicoes)$/;

/** "+ a bit", "++ = loud": what a sign means. Behind a title only: "2 low" may as well be a line. */
const isOfLegend = (text: string, walk: Walk, title: string) =>
  title !== '' &&
  (legendIn(text, walk.tongue.spoken) !== null ||
    legendIn(`${text} / ≈ = loud`, walk.tongue.spoken) !== null);

/** "Empty = up to you" */
const saysOfSign = (text: string) => /^(?:\p{L}+|\S{1,3})\s*=\s*\p{L}/u.test(text);

/** "The wedges are yours": all of that kind, whoever hears them. */
const isOfThose = (text: string, walk: Walk) =>
  /^(?:and |und |et |y |e |en )?(?:the|die|les|las|los|le|gli|i|de|as|os)\s/i.test(text) &&
  tellsOfDevice(text, walk) &&
  text.split(' ').length <= 14;

function splitAtExcept(sentence: string, walk: Walk): { before: string; behind: string } {
  const tokens = tokenize(sentence);
  const { spoken, names } = walk.tongue;
  const told = findHits(mixWords, tokens, spoken, names).filter((it) => it.certainty === 1);
  const hit = findHits(wishWords, tokens, spoken, names).find(
    (it) =>
      it.senses[0]?.subject === 'except' &&
      it.certainty === 1 &&
      // "Todos in-ears" has the letters of "todo sin".
      !told.some((device) => device.from < it.to && it.from < device.to),
  );
  if (!hit) return { before: sentence, behind: '' };
  const isOnly = hit.senses[0]?.meaning === 'all except';
  const start = isOnly ? tokens[hit.to - 1]?.start : tokens[hit.from]?.start;
  return {
    before: tidy(sentence.slice(0, start)).replace(/[,;]$/, ''),
    behind: tidy(sentence.slice(tokens[hit.to - 1]?.end)),
  };
}

const article =
  /^(?:for |für |pour |para |per |voor |the |our |der |die |das |den |dem |le |la |les |el |los |las |il |lo |gli |i |de |het |o |a |os |as |l['’])+/i;
const linking =
  /[\s,:(–-]+(?:(?:who|which|the drummer|he|she|they|der|die|das|er|sie|qui|il|elle|que|él|ella|che|lui|lei|quien|die|hij|zij|ele|ela)\s+)?(?:has|have|uses?|gets?|is on|are on|on|with|hat|haben|nutzt|bekommt|auf|mit|a|ont|utilise|sur|avec|tiene|usa|lleva|va con|con|ha|hanno|heeft|gebruikt|op|met|tem|com|em)?\s*$/iu;

/** "The drummer: wired in-ears", "la batteria che ha cuffie sue", "Uwe (Wedge)", "the choir": who, and how. */
function exceptionOf(text: string, walk: Walk): Exception | null {
  const tokens = tokenize(text);
  const hits = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.certainty === 1,
  );
  const device = hits.find((hit) => hit.senses[0]?.subject === 'device');
  const opening = hits.find((hit) => hit.from > 0 && device && hit.from <= device.from) ?? device;
  const start = opening ? (tokens[opening.from]?.start ?? 0) : text.length;
  const who = tidy(
    text
      .slice(0, start)
      .replace(/\b\d+\s*$/, '')
      .replace(linking, '')
      .replace(article, ''),
  );
  if (who === '' || who.split(' ').length > 4) return null;
  // "Side fills: everything but the click" leaves out a source, not a listener.
  if (!namesSomebody(who, walk) && (device === undefined || sourcesIn(who, walk) === 0)) return null;
  return { who, how: device ? tidy(text.slice(start).replace(/[()]/g, ' ')) : '' };
}

const players =
  /\b(?:players?|musicians?|members|performers?|people|musiker(?:innen)?|leute|musiciens?|musiciennes?|m[uú]sicos?|musicist[ie]|muzikanten|spelers|mensen|elementos|componentes)\b/giu;

const namesSomebody = (text: string, walk: Walk) => {
  const plain = text.replace(players, ' ');
  return (
    hasWordOf(plain, walk.tongue.names) ||
    findHits(playerWords, tokenize(plain), walk.tongue.spoken, walk.tongue.names).some(
      (hit) => hit.certainty === 1,
    )
  );
};

/** "Transmitters are ours", "stereo", "all mono": no device by name, but something of it. */
function tellsOfDevice(text: string, walk: Walk): boolean {
  const hits = findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.certainty === 1,
  );
  return hits.some((hit) => ['format', 'owner', 'link'].includes(hit.senses[0]?.subject ?? ''));
}

const tellsOfOwner = (text: string, walk: Walk) =>
  findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.certainty === 1 && hit.senses[0]?.subject === 'owner',
  );

/** The clauses of a text, where several of them name a device of a kind of its own. */
function kindsByClause(text: string, walk: Walk): string[] {
  const kindOf = (clause: string) =>
    findHits(mixWords, tokenize(clause), walk.tongue.spoken, walk.tongue.names).find(
      (hit) => hit.certainty === 1 && hit.senses[0]?.subject === 'device',
    )?.senses[0]?.meaning;
  const clauses = text
    .split(/[,;]\s*|\.\s+/)
    .filter((clause) => kindOf(clause) && tellsOfDevice(clause, walk));
  return new Set(clauses.map(kindOf)).size > 1 ? clauses : [];
}

/** "Four mixes", "São quatro vias": how many mixes there are, and not how many wedges. */
function countsMixes(text: string, walk: Walk): boolean {
  const tokens = tokenize(withDigits(text, walk.tongue));
  const titles = findHits(titleLexicon, tokens, walk.tongue.spoken);
  const called = titles.filter((hit) => hit.senses[0]?.meaning === 'mixes');
  return [...findHits(labelWords, tokens, walk.tongue.spoken), ...called].some(
    (hit) =>
      hit.certainty === 1 &&
      [1, 2].some((back) => /^\d{1,2}$/.test(tokens[hit.from - back]?.text ?? '')) &&
      lookUp(mixWords, tokens[hit.from]?.text ?? '', walk.tongue.spoken)?.[0]?.subject !== 'device',
  );
}

/** Who writes to whom, or that something follows: no listener's mix is told with these. */
const introduces =
  /\b(?:we|us|our|you|here|below|follow\w*|please|need(?:ed)?|wir|uns|unser\w*|euch|ihr|bitte|hatten|folg\w+|nous|on|nos|notre|vous|voici|merci|faut|nosotros|nos|nuestr\w+|gustaria|queremos|necesitamos|siguiente|aqui|favor|vorremmo|ci|noi|nostr\w+|ecco|questo|seguente|servono|wij|ons|onze|graag|jullie|volgende|hier|nodig|gostariamos|precisamos|noss\w+|segue|seguinte)\b/;

/**
 * "For monitors this is what we would like:": what follows are the mixes, below or in the same line. The line without
 * these words, empty where there is nothing else; null where the line opens nothing.
 */
export function withoutOpening(walk: Walk, line: Line): Line | null {
  const [, opening = '', rest = ''] = /^([^:.!?]{8,110}):(?:\s+(.*))?$/su.exec(line.text) ?? [];
  if (line.cells.length > 1 || performersInBrackets(rest, walk).length > 1) return null;
  if (opening.split(' ').length < 3 || hasWordOf(opening, walk.tongue.names)) return null;
  if (!introduces.test(fold(opening)) || !speaksOfMixes(opening, walk)) return null;
  if (leadingLabel(opening, walk) || sourcesIn(opening, walk) > 0) return null;
  if ((readHead(opening, walk)?.listener ?? '') !== '') return null;
  walk.section = 'mixes';
  walk.blocks = [];
  const isCounted = counted.test(withDigits(fold(opening), walk.tongue));
  note(walk.found, line.at, 'set aside', 'It says that the mixes follow.');
  if (isCounted && namesDevice(opening, walk)) takeForAll(walk, line, opening);
  return { ...line, text: rest, cells: rest === '' ? [] : [{ column: 0, text: rest }] };
}

const speaksOfMixes = (text: string, walk: Walk) =>
  namesDevice(text, walk) ||
  findHits(titleLexicon, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.certainty === 1 && hit.senses.some(({ meaning }) => meaning === 'mixes'),
  );

/** "For monitors three wedges will do:": what stands below are the mixes. */
function opensMixes(walk: Walk, text: string): boolean {
  const isCounted = counted.test(withDigits(fold(text), walk.tongue));
  return /:\s*$/.test(text) && isCounted && namesDevice(text, walk) && sourcesIn(text, walk) === 0;
}

function takeForAll(walk: Walk, line: Line, text: string): boolean {
  walk.found.devices.push({ at: line.at, text, except: [] });
  note(walk.found, line.at, 'understood', 'What everybody listens through.');
  return true;
}

/**
 * Among the mixes: a line of short sentences that count devices ("four wedges, one each") or refuse them ("no wedges
 * needed"), and that name neither a listener nor a source.
 */
export function takeCountedDevices(walk: Walk, line: Line, text: string): boolean {
  if (text.split(' ').length > mostWords) return false;
  const sentences = text
    .split(/[.;!]\s+/)
    .map(tidy)
    .filter((sentence) => sentence !== '');
  const kinds = sentences.map((sentence) => kindOfSentence(sentence, walk));
  if (kinds.includes('other') || kinds.every((kind) => kind === 'nothing')) return false;
  note(walk.found, line.at, 'set aside', 'It says what nobody needs to listen through.');
  const told = sentences.filter((_, at) => kinds[at] === 'counted').join('. ');
  return told === '' || takeForAll(walk, line, told);
}

function kindOfSentence(sentence: string, walk: Walk): 'counted' | 'refused' | 'nothing' | 'other' {
  const { self, sameAs } = pieceFacts(sentence, walk);
  const targets = sourcesIn(sentence, walk);
  const namesPerson = hasWordOf(sentence, walk.tongue.names);
  if (self || sameAs || namesPerson) return 'other';
  if (!namesDevice(sentence, walk)) return targets > 0 ? 'other' : 'nothing';
  if (/:|\s[-–—]\s/.test(sentence) || targets > 0) return 'other';
  if (refuses(sentence, walk)) return 'refused';
  const folded = fold(sentence);
  return everybody.test(folded) || counted.test(withDigits(folded, walk.tongue)) ? 'counted' : 'other';
}

/** How many words of a text name sources, those for devices and for everybody left out. */
function sourcesIn(text: string, walk: Walk): number {
  // Four in Spanish is a small guitar too.
  const tokens = tokenize(withDigits(text, walk.tongue));
  const { spoken, names } = walk.tongue;
  const devices = findHits(mixWords, tokens, spoken, names).filter((hit) => hit.certainty === 1);
  return findHits(wishWords, tokens, spoken, names).filter(
    (hit) =>
      // Dutch "met" is "with" before it is the metronome.
      hit.certainty === 1 &&
      !hit.senses.some(({ subject }) => subject === 'hedge') &&
      hit.senses.some(
        ({ subject, meaning }) =>
          subject === 'source' || (subject === 'group' && meaning !== 'everything' && meaning !== 'rest'),
      ) &&
      !devices.some((device) => device.from <= hit.from && hit.to <= device.to),
  ).length;
}

const namesDevice = (text: string, walk: Walk) =>
  findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) =>
      hit.certainty === 1 && (hit.senses[0]?.subject === 'device' || hit.senses[0]?.subject === 'elsewhere'),
  );

/** "No wedges please", "wedges are not needed"; "no wedges, all on in-ears" refuses one and asks for the other. */
function refuses(sentence: string, walk: Walk): boolean {
  // "All wedges from you, please not too loud" refuses none.
  const clauses = sentence.split(/[,;]/).filter((clause) => namesDevice(clause, walk));
  return isRefusal(clauses.join(','), walk);
}

function isRefusal(text: string, walk: Walk): boolean {
  const tokens = tokenize(text);
  const isNone = findHits(wishWords, tokens, walk.tongue.spoken, walk.tongue.names).some(
    (hit) =>
      hit.certainty === 1 &&
      hit.senses.some(({ subject, meaning }) => subject === 'amount' && meaning === 'none'),
  );
  const kinds = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).flatMap((hit) =>
    hit.senses[0]?.subject === 'device' ? [hit.senses[0].meaning] : [],
  );
  return isNone && new Set(kinds).size < 2;
}
