import { factsOfKind } from '../../show/source-kinds.ts';
import { findHits } from '../language/lexicon.ts';
import { channelNumbers } from '../language/numbers.ts';
import { groupOfStem } from '../language/source-name.ts';
import { linesIn, taughtIn } from '../language/taught-words.ts';
import { squash, type Token, tokenize } from '../language/text.ts';
import { playerWords, wishWords } from '../language/vocabulary.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import {
  ownInputs,
  performerMeant,
  performerNamed,
  playerOf,
  stemsOfPerformer,
} from '../performers/performers.ts';
import { weights } from '../questions.ts';
import type { ReadWish } from '../reading.ts';
import { type Stem, stemWeights } from '../words/sources.ts';
import { stemTarget } from './wish-families.ts';
import { type Item, isRest, isTarget, keysOf, subjectsOf, type WishHit } from './wish-item.ts';
import { byExactName, byLooseName } from './wish-names.ts';

/** What a text names, as a target of a wish; null where no line of the list is meant. */
export function targetsOf(work: Work, mix: WorkMix, text: string): ReadWish['target'] | null {
  const tokens = tokenize(text);
  return targetOfItem(work, mix, {
    tokens,
    hits: findHits(wishWords, tokens, work.tongue.spoken, work.tongue.names),
    text,
  });
}

/** What an item names; null where no line of the list is meant, also where its words name what the list has not. */
export function targetOfItem(work: Work, mix: WorkMix, item: Item): ReadWish['target'] | null {
  const target = targetBesideTold(work, mix, item);
  return target?.of === 'inputs' && target.inputKeys.length === 0 ? null : target;
}

/** Of "other voices" and "the rest of the horns" those that are not told elsewhere. */
function targetBesideTold(work: Work, mix: WorkMix, item: Item): ReadWish['target'] | null {
  const rest = item.hits.find(isRest);
  const words = item.tokens.filter(
    (token, at) => token.kind === 'word' && !item.hits.some((hit) => at >= hit.from && at < hit.to),
  );
  const others = item.hits.some((hit) => hit !== rest && isTarget(hit));
  if (!rest || (!others && words.length === 0)) return namedTarget(work, mix, item);
  const plain = { ...item, hits: item.hits.filter((hit) => hit !== rest), isOfRest: true };
  const named = others ? namedTarget(work, mix, plain) : byLooseName(work, withoutHit(item, rest));
  return named ? withoutTold(work, mix, named) : namedTarget(work, mix, item);
}

/** The item without the words of one of its hits. */
function withoutHit(item: Item, out: WishHit): Item {
  const length = out.to - out.from;
  const moved = (at: number) => (at >= out.to ? at - length : at);
  return {
    ...item,
    tokens: item.tokens.filter((_, at) => at < out.from || at >= out.to),
    hits: item.hits
      .filter((hit) => hit !== out)
      .map((hit) => ({ ...hit, from: moved(hit.from), to: moved(hit.to) })),
  };
}

/** Of a target the lines that are neither the listener's own nor wished already. */
function withoutTold(work: Work, mix: WorkMix, target: ReadWish['target']): ReadWish['target'] {
  if (target.of === 'everything' || target.of === 'mix') return target;
  const own = mix.read.listeners.flatMap((name) => ownInputs(work, name)).map((input) => input.read.key);
  const wished = mix.read.wishes.flatMap((wish) =>
    wish.target.of === 'inputs' ? wish.target.inputKeys : [],
  );
  const told = new Set([...own, ...wished]);
  const inputs = work.inputs.filter((input) =>
    target.of === 'inputs'
      ? target.inputKeys.includes(input.read.key)
      : factsOfKind(input.read.kind).group === target.group,
  );
  const left = inputs.filter((input) => !told.has(input.read.key));
  return left.length > 0 ? keysOf(left) : target;
}

/** "Alle Gitarren", "todo el bajo": where a source is named beside it, "all" is all of that. */
const isAll = (hit: WishHit) =>
  hit.senses.some((sense) => sense.subject === 'group' && sense.meaning === 'everything');

function namedTarget(work: Work, mix: WorkMix, item: Item): ReadWish['target'] | null {
  const channels =
    /^(?:.*\b)?(?:ch(?:annels?)?|kan[aä]le?|lines?|inputs?|canal(?:es)?|voies?)\.?\s*#?\s*(\d[\d\s,+&/-]*)/i.exec(
      item.text,
    );
  if (channels?.[1]) {
    const numbers = new Set(channelNumbers(channels[1].trim()));
    const inputs = work.inputs.filter((input) => numbers.has(input.read.channel));
    if (inputs.length > 0) return keysOf(inputs);
  }
  const numbered = byRange(work, item);
  if (numbered.length > 0) return keysOf(numbered);
  const taught = taughtLines(work, item);
  if (taught.length > 0) return keysOf(taught);
  const exact = byExactName(work, item);
  if (exact) return exact;
  const worn = byPickUp(work, item);
  if (worn.length > 0) return keysOf(worn);
  const self = item.hits.flatMap((hit) => hit.senses).find((sense) => sense.subject === 'self');
  const players = playersIn(work, item);
  const sources = item.hits.filter(
    (hit) =>
      // "Schlagzeuger" is no misspelt drum kit.
      !(hit.certainty < 1 && players.some((it) => it.from === hit.from)) &&
      subjectsOf(hit).some((subject) => subject === 'group' || subject === 'source') &&
      !(self && subjectsOf(hit)[0] === 'self'),
  );
  const performer = performerIn(work, mix, item) ?? playerIn(work, players, sources);
  const targets = sources.filter(
    (hit) =>
      !(
        performer !== null &&
        hit.to - hit.from === 1 &&
        work.tongue.people.has(item.tokens[hit.from]?.text ?? '')
      ),
  );
  const target = mainTarget(targets.filter((hit) => !isRest(hit) && !isAll(hit))) ?? targets[0];
  const pool = poolOf(work, mix, performer, self?.meaning ?? null, target !== undefined);
  if (self && !target) return ownTarget(work, mix, pool, self.meaning);
  if (performer && !target) return pool && pool.length > 0 ? keysOf(heardOf(item, pool)) : null;
  if (!target) return byLooseName(work, item);
  const sung = isVoiceWord(target) && !pool ? voicesBeside(work, targets, target) : [];
  if (sung.length > 0) return keysOf(sung);
  const named = stemTarget(
    work,
    mix,
    target,
    item,
    pool && isVoiceWord(target) ? withoutEffects(pool) : pool,
  );
  if (named) return named;
  return pool && (self || performer) ? stemTarget(work, mix, target, item, null) : byLooseName(work, item);
}

const isVoice = (input: WorkInput) =>
  factsOfKind(input.read.kind).group === 'vocals' || input.read.kind === 'presenter';

/** Somebody's voice is not what comes out of their vocoder, where there is another line of it. */
function withoutEffects(lines: readonly WorkInput[]): WorkInput[] {
  const dry = lines.filter(
    ({ read, name }) =>
      read.kind !== 'effect return' && !name.besides.includes('effect return') && !/vocoder/i.test(read.name),
  );
  return dry.some(isVoice) ? dry : [...lines];
}

/** "Bastante Nela": of who sings the lead and plays too, the voice; of "no Nela" all. */
function heardOf(item: Item, pool: readonly WorkInput[]): readonly WorkInput[] {
  const voices = pool.filter(isVoice);
  const isMic = item.tokens.some(({ text }) =>
    /^(?:mics?|mikes?|mikro\p{L}*|micro\p{L}*|microfo\p{L}*)$/u.test(text),
  );
  if (isMic && voices.length > 0) return voices;
  const isNone = item.hits.some((hit) => hit.senses.some((sense) => sense.meaning === 'none'));
  const sung = voices.filter((input) => input.read.kind !== 'backing vocal');
  return isNone || sung.length === 0 ? pool : sung;
}

/** Of several sources in a row the one that the others only tell of: "keys vocal" is a voice. */
function mainTarget(targets: readonly WishHit[]): WishHit | undefined {
  if (!targets.some(isVoiceWord)) return targets[0];
  const certain = targets.filter((hit) => hit.certainty === 1);
  return (certain.length > 0 ? certain : targets).reduce<WishHit | undefined>(
    (best, hit) => (best && weightOf(best) >= weightOf(hit) ? best : hit),
    undefined,
  );
}

function weightOf(hit: WishHit): number {
  const stem = hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;
  return isVoiceWord(hit) ? 5 : ((stem && stemWeights[stem]) ?? 3);
}

const isVoiceWord = (hit: WishHit) =>
  hit.senses.some(
    ({ subject, meaning }) =>
      (subject === 'group' && (meaning === 'vocals' || meaning === 'one voice')) ||
      (subject === 'source' && meaning === 'vocal'),
  );

/** "Drum vocal", "la voz del batería": the voices of those who play what is named beside. */
function voicesBeside(work: Work, targets: readonly WishHit[], target: WishHit): WorkInput[] {
  const beside = targets.find((hit) => hit !== target && hit.certainty === 1 && !isVoiceWord(hit));
  const stem = beside?.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;
  const group = stem === undefined ? 'vocals' : groupOfStem(stem);
  if (stem === undefined || group === 'vocals') return [];
  const player = playerOf(work, stem);
  return work.inputs.filter(
    (input) =>
      isVoice(input) &&
      (input.name.besides.some((it) => groupOfStem(it) === group) ||
        (player !== null && input.read.performer === player.name)),
  );
}

const playersIn = (work: Work, item: Item) =>
  findHits(playerWords, item.tokens, work.tongue.spoken, work.tongue.names).filter(
    (hit) => hit.certainty === 1,
  );

/** "The drummer's voice": the only one who plays that. */
function playerIn(work: Work, players: readonly WishHit[], sources: readonly WishHit[]): string | null {
  const hit = players.find((it) => !sources.some((source) => source.from < it.to && it.from < source.to));
  const stem = hit?.senses[0]?.meaning as Stem | undefined;
  return stem === undefined ? null : (playerOf(work, stem)?.name ?? null);
}

/** "Horns (17-23)": the channels themselves. */
function byRange(work: Work, item: Item): WorkInput[] {
  const [, from = '', to = ''] =
    /[([]\s*(?:\p{L}+\.?\s*)?(\d{1,2})\s*[-–]\s*(\d{1,2})\s*[)\]]/u.exec(item.text) ?? [];
  if (from === '' || Number(to) <= Number(from)) return [];
  return work.inputs.filter(({ read }) => Number(from) <= read.channel && read.channel <= Number(to));
}

/** Words for a microphone that is worn or held, in a wish: "no headsets", "tutti gli archetti". */
const worn =
  /(?<!\p{L})(headset|headworn|archett|kopfbügel|ansteck|diadema|serre-?t[eê]te|hoofdmic|auricular|lavali?er|handheld|handsender|gelato|gelati)/iu;
/** Those who wear them. */
const cast =
  /(?<!\p{L})(?:actors?|the cast|attor[ei]|schauspieler\p{L}*|darsteller\p{L}*|com[eé]dien\p{L}*|acteurs|actores|atores|acteurs|elenco|reparto)(?!\p{L})/iu;
const someOf = /(?<!\d)(\d{1,2})\s*(?:to|bis|à|a|al|t\/m|tot|-|–)\s*(\d{1,2})(?!\d)/iu;

/** The lines that are taken with such a microphone; of "headsets 1 to 5" those of these numbers. */
function byPickUp(work: Work, item: Item): WorkInput[] {
  const word = worn.exec(item.text)?.[1]?.toLowerCase();
  const isNamed = item.tokens.some(({ text }) => work.tongue.names.has(text) || work.tongue.people.has(text));
  if (isNamed || (!word && !cast.test(item.text))) return [];
  if (!word) return work.inputs.filter(({ read }) => worn.test(`${read.pickUpModel} ${read.notes}`));
  const lines = work.inputs.filter(({ read }) =>
    `${read.name} ${read.pickUpModel} ${read.notes}`.toLowerCase().includes(word),
  );
  const [, from, to] = someOf.exec(item.text) ?? [];
  if (from === undefined || to === undefined) return lines;
  return lines.filter((_, at) => Number(from) <= at + 1 && at + 1 <= Number(to));
}

/** The lines that a taught word names. */
function taughtLines(work: Work, item: Item): WorkInput[] {
  const senses = item.hits.flatMap((hit) => hit.senses);
  const named = senses
    .filter(({ subject }) => subject === 'lines')
    .flatMap((sense) => linesIn(sense.meaning));
  const keys = new Set(named.map(squash));
  return work.inputs.filter((input) => keys.has(squash(input.read.name)));
}

function performerIn(work: Work, mix: WorkMix, item: Item): string | null {
  const [taught] = taughtIn(work.tongue.spoken, item.text, (of) => of === 'performer');
  if (taught) return performerNamed(work, taught.kind)?.name ?? null;
  const toms = work.inputs.some((input) => factsOfKind(input.read.kind).group === 'drums');
  const others = item.hits.filter((hit) => isTarget(hit)).length > 1;
  const isPerson = (token: Token) =>
    work.tongue.people.has(token.text) && (others || !toms || /^\p{Lu}\p{Ll}/u.test(token.raw));
  const words = item.tokens.filter(
    (token) => token.kind === 'word' && (work.tongue.names.has(token.text) || isPerson(token)),
  );
  const whole = words.map(({ raw }) => raw).join(' ');
  const [named] = [whole, ...words.map(({ raw }) => raw)].flatMap((text) => performerNamed(work, text) ?? []);
  return (named ?? performerMeant(work, whole, mix.read.lines[0] ?? null))?.name ?? null;
}

/** The inputs a wish may mean: a named performer's, the listener's own, or all (null). */
function poolOf(
  work: Work,
  mix: WorkMix,
  performer: string | null,
  self: string | null,
  hasTarget: boolean,
): WorkInput[] | null {
  if (performer) return ownInputs(work, performer);
  if (!self) return null;
  const own = mix.read.listeners.flatMap((name) => [...ownInputs(work, name), ...sungBy(work, name)]);
  return own.length === 0 && hasTarget ? null : own;
}

/** "Voce batt.", "coros metales": the voices that are called after what a listener plays and are nobody's by name. */
function sungBy(work: Work, name: string): WorkInput[] {
  const performer = work.performers.find((it) => it.name === name);
  const groups = new Set((performer ? stemsOfPerformer(work, performer) : []).map(groupOfStem));
  return work.inputs.filter(
    (input) =>
      isVoice(input) &&
      (input.read.performer === null || input.read.performer === name) &&
      input.name.besides.some((stem) => groups.has(groupOfStem(stem)) && groupOfStem(stem) !== 'vocals'),
  );
}

/** Whose voice no line tells sings the only lead that is nobody else's, or else the only such voice. */
function freeVoice(work: Work, mix: WorkMix): WorkInput | null {
  if (mix.read.listeners.length !== 1) return null;
  const free = work.inputs.filter(
    ({ read }) => (read.kind === 'lead vocal' || read.kind === 'vocal') && read.performer === null,
  );
  const leads = free.filter((input) => input.read.kind === 'lead vocal');
  const [voice, ...others] = leads.length > 0 ? leads : free;
  return voice && others.length === 0 ? voice : null;
}

function ownTarget(
  work: Work,
  mix: WorkMix,
  pool: WorkInput[] | null,
  meaning: string,
): ReadWish['target'] | null {
  const own = pool ?? [];
  const wanted =
    meaning === 'own voice'
      ? own.filter(isVoice)
      : meaning === 'own instrument'
        ? own.filter((input) => !isVoice(input))
        : own;
  if (wanted.length > 0) return keysOf(meaning === 'own voice' ? withoutEffects(wanted) : wanted);
  const free = meaning === 'own voice' ? freeVoice(work, mix) : null;
  if (free) return keysOf([free]);
  const answer = work.asker.ask({
    matter: 'own',
    at: mix.read.lines[0] ?? null,
    part: String(mix.read.number),
    ask: `${mix.read.label} wishes the listener's own ${meaning === 'own voice' ? 'voice' : 'sources'}. Which line is it?`,
    options: [
      { value: 'leave out', label: 'Leave the wish out' },
      { value: 'everything', label: 'Everything' },
      ...work.inputs
        .filter((input) => meaning !== 'own voice' || isVoice(input))
        .slice(0, 12)
        .map((input) => ({
          value: input.read.key,
          label: `${input.read.channel} ${shorten(input.read.name)}`,
        })),
    ],
    guessConfidence: 0.3,
    weight: weights.ownSources,
  });
  if (answer === 'everything') return { of: 'everything' };
  const chosen = work.inputs.find((input) => input.read.key === answer);
  return chosen ? keysOf([chosen]) : { of: 'inputs', inputKeys: [] };
}
