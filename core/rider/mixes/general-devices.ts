import { withDigits } from '../language/count-words.ts';
import { legendIn } from '../language/legend.ts';
import { scaleIn } from '../language/scale.ts';
import { fold, tidy } from '../language/text.ts';
import { foundMix, note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import { titleOf } from '../page/titles.ts';
import type { Walk } from '../page/walk-state.ts';
import { takeForAll } from './counted-devices.ts';
import { type Exception, exceptionOf, namesSomebody, splitAtExcept } from './device-exceptions.ts';
import {
  countsMixes,
  everybody,
  isRefusal,
  kindsByClause,
  mostWords,
  namesDevice,
  namesSpecialDevice,
  refuses,
  saysOf,
  sourcesIn,
  tellsOfDevice,
} from './device-words.ts';
import { opensMixes } from './mix-openings.ts';
import { leadingLabel, pieceFacts } from './mix-pieces.ts';

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
    (title !== '' || walk.section === 'mixes') && everybody.test(fold(text)) && saysOf(text, ['owner'], walk);
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
