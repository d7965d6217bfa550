import { factsOfKind, type SourceGroup, type SourceKind } from '../show/source-kinds.ts';
import type { WorkMix } from './build-mixes.ts';
import { findHits, type Hit } from './lexicon.ts';
import { channelNumbers } from './numbers.ts';
import { ownInputs, performerNamed } from './performers.ts';
import { weights } from './questions.ts';
import type { ReadWish } from './reading.ts';
import { groupOfStem, kindOfStem } from './source-name.ts';
import { linesIn, taughtIn } from './taught-words.ts';
import { squash, type Token, tokenize } from './text.ts';
import { wishWords } from './vocabulary.ts';
import type { Part } from './words/parts.ts';
import type { SideWord } from './words/sides.ts';
import type { Stem } from './words/sources.ts';
import type { GroupWord } from './words/wish-targets.ts';
import { shorten, type Work, type WorkInput } from './work.ts';

export type WishHit = Hit<string, string>;

/** One thing that is wished, with the words found in it. */
export type Item = { tokens: Token[]; hits: WishHit[]; text: string };

const subjectsOf = (hit: WishHit) => hit.senses.map((sense) => sense.subject);
export const isTarget = (hit: WishHit) =>
  subjectsOf(hit).some((subject) => subject === 'group' || subject === 'source' || subject === 'self');
export const isAmount = (hit: WishHit) =>
  subjectsOf(hit).includes('amount') &&
  !subjectsOf(hit).includes('source') &&
  !subjectsOf(hit).includes('group');

/** What a text names, as a target of a wish; null where no line of the list is meant. */
export function targetsOf(work: Work, mix: WorkMix, text: string): ReadWish['target'] | null {
  const tokens = tokenize(text);
  return targetOfItem(work, mix, {
    tokens,
    hits: findHits(wishWords, tokens, work.tongue.spoken, work.tongue.names),
    text,
  });
}

const keysOf = (inputs: readonly WorkInput[]): ReadWish['target'] => ({
  of: 'inputs',
  inputKeys: inputs.map((input) => input.read.key),
});

export function targetOfItem(work: Work, mix: WorkMix, item: Item): ReadWish['target'] | null {
  const channels =
    /^(?:.*\b)?(?:ch(?:annels?)?|kan[aä]le?|lines?|inputs?|canal(?:es)?|voies?)\.?\s*#?\s*(\d[\d\s,+&/-]*)/i.exec(
      item.text,
    );
  if (channels?.[1]) {
    const numbers = new Set(channelNumbers(channels[1].trim()));
    const inputs = work.inputs.filter((input) => numbers.has(input.read.channel));
    if (inputs.length > 0) return keysOf(inputs);
  }
  const taught = taughtLines(work, item);
  if (taught.length > 0) return keysOf(taught);
  const exact = byExactName(work, item);
  if (exact) return exact;
  const performer = performerIn(work, item);
  const self = item.hits.flatMap((hit) => hit.senses).find((sense) => sense.subject === 'self');
  const target = item.hits.find(
    (hit) =>
      subjectsOf(hit).some((subject) => subject === 'group' || subject === 'source') &&
      !(self && subjectsOf(hit)[0] === 'self') &&
      !(
        performer !== null &&
        hit.to - hit.from === 1 &&
        work.tongue.people.has(item.tokens[hit.from]?.text ?? '')
      ),
  );
  const pool = poolOf(work, mix, performer, self?.meaning ?? null, target !== undefined);
  if (self && !target) return ownTarget(work, mix, pool, self.meaning);
  if (performer && !target) return pool && pool.length > 0 ? keysOf(pool) : null;
  if (!target) return byLooseName(work, item);
  const named = stemTarget(work, target, item, pool);
  if (named) return named;
  return pool && (self || performer) ? stemTarget(work, target, item, null) : byLooseName(work, item);
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

/** Groups whose word means all of them, also where one line bears it: "bass" is the DI and the amplifier. */
const wholeFamilies: ReadonlySet<SourceGroup> = new Set<SourceGroup>(['bass', 'drums', 'vocals']);

/** A wish that gives a line its very name. */
function byExactName(work: Work, item: Item): ReadWish['target'] | null {
  const words = item.tokens.filter(
    (token, at) =>
      token.kind !== 'mark' &&
      !item.hits.some(
        (hit) => at >= hit.from && at < hit.to && (isAmount(hit) || subjectsOf(hit)[0] === 'hedge'),
      ),
  );
  const key = words.map((token) => token.text).join('');
  if (key.length < 2 || !/\p{L}/u.test(key)) return null;
  const named = work.inputs.filter((input) => squash(input.read.name) === key);
  // "Voz limpia (Berta)" is called "voz limpia".
  const inputs =
    named.length > 0
      ? named
      : work.inputs.filter((input) => squash(input.read.name.replace(/\s*\([^)]*\)/g, '')) === key);
  const lone = inputs[0];
  if (!lone) return null;
  // "Snare" is the name of one line but means the drum: its other microphones come along.
  const general = item.hits.some(
    (hit) =>
      hit.senses.some((sense) => sense.subject === 'group') &&
      hit.to - hit.from >= words.length &&
      !(isBassGuitar(item) && work.inputs.some(isOtherBass)),
  );
  return general && wholeFamilies.has(factsOfKind(lone.read.kind).group)
    ? null
    : keysOf(withPartners(work, inputs));
}

/** "Bass guitar" is not the double bass and not the one on the keys. */
const isBassGuitar = (item: Item) =>
  item.tokens.some((token) =>
    /^(?:bass|bas)?(?:gui|git|gtr|chit)|^(?:e|el|electric|elettrico|electrico)$/.test(token.text),
  );
const isOtherBass = (input: WorkInput) =>
  input.read.kind === 'synth bass' || input.read.kind === 'double bass';

function withPartners(work: Work, inputs: readonly WorkInput[]): WorkInput[] {
  const keys = new Set(inputs.map((input) => input.read.key));
  return work.inputs.filter(
    (input) =>
      keys.has(input.read.key) ||
      (input.read.pairKey !== null &&
        keys.has(input.read.pairKey) &&
        input.found === work.inputs.find((it) => it.read.key === input.read.pairKey)?.found),
  );
}

const singular = (word: string) => (word.length > 3 ? word.replace(/s$/, '') : word);

/** Words that stand in the name of a line, as a model or a nickname does. */
function byLooseName(work: Work, item: Item): ReadWish['target'] | null {
  const words = item.tokens.filter(
    (token, at) =>
      token.kind === 'word' &&
      token.text.length > 2 &&
      !item.hits.some((hit) => at >= hit.from && at < hit.to && !isTarget(hit)),
  );
  if (words.length === 0) return null;
  const inputs = work.inputs.filter((input) =>
    words.every((word) => input.name.tokens.some((token) => singular(token.text) === singular(word.text))),
  );
  return inputs.length > 0 ? keysOf(inputs) : null;
}

function performerIn(work: Work, item: Item): string | null {
  const [taught] = taughtIn(work.tongue.spoken, item.text, (of) => of === 'performer');
  if (taught) return performerNamed(work, taught.kind)?.name ?? null;
  const toms = work.inputs.some((input) => factsOfKind(input.read.kind).group === 'drums');
  const others = item.hits.filter((hit) => isTarget(hit)).length > 1;
  const isPerson = (token: Token) =>
    work.tongue.people.has(token.text) && (others || !toms || /^\p{Lu}\p{Ll}/u.test(token.raw));
  const words = item.tokens.filter(
    (token) => token.kind === 'word' && (work.tongue.names.has(token.text) || isPerson(token)),
  );
  for (const word of words) {
    const performer = performerNamed(work, word.raw);
    if (performer) return performer.name;
  }
  return null;
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
  const own = mix.read.listeners.flatMap((name) => ownInputs(work, name));
  return own.length === 0 && hasTarget ? null : own;
}

function ownTarget(
  work: Work,
  mix: WorkMix,
  pool: WorkInput[] | null,
  meaning: string,
): ReadWish['target'] | null {
  const own = pool ?? [];
  const isVoice = (input: WorkInput) =>
    factsOfKind(input.read.kind).group === 'vocals' || input.read.kind === 'presenter';
  const wanted =
    meaning === 'own voice'
      ? own.filter(isVoice)
      : meaning === 'own instrument'
        ? own.filter((input) => !isVoice(input))
        : own;
  if (wanted.length > 0) return keysOf(wanted);
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

/** Stems of a wish to the kinds they mean: "kick" is every microphone of it. */
const families: Partial<Record<Stem, readonly SourceKind[]>> = {
  kick: ['kick', 'kick in', 'kick out'],
  snare: ['snare', 'snare top', 'snare bottom'],
  tom: ['tom', 'rack tom', 'floor tom'],
  'rack tom': ['rack tom'],
  'lead vocal': ['lead vocal'],
  'backing vocal': ['backing vocal', 'choir'],
  bass: ['bass', 'bass di', 'bass amp', 'double bass', 'synth bass'],
  overhead: ['overhead', 'cymbals', 'ride'],
  cymbals: ['cymbals', 'overhead', 'ride'],
  playback: ['playback', 'sampler'],
  sampler: ['sampler', 'electronic drums'],
  click: ['click'],
  keys: ['keys', 'piano', 'organ', 'synth', 'clavinet', 'harpsichord'],
  piano: ['piano'],
  guitar: ['electric guitar', 'acoustic guitar', 'pedal steel'],
  brass: ['trumpet', 'flugelhorn', 'trombone', 'french horn', 'tuba', 'brass', 'saxophone'],
  strings: ['violin', 'viola', 'cello', 'strings', 'double bass'],
  cue: ['cue'],
  talkback: ['talkback'],
};

function stemTarget(
  work: Work,
  hit: WishHit,
  item: Item,
  pool: WorkInput[] | null,
): ReadWish['target'] | null {
  const group = hit.senses.find((sense) => sense.subject === 'group')?.meaning as GroupWord | undefined;
  const stem = hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;
  if (group === 'everything' || group === 'rest') return { of: 'everything' };
  const inputs = pool ?? work.inputs;
  const candidates = candidatesOf(inputs, group, stem);
  const basses = group === 'bass' && isBassGuitar(item) ? candidates.filter((it) => !isOtherBass(it)) : [];
  const refined = refine(work, basses.length > 0 ? basses : candidates, hit, item);
  if (refined.inputs.length === 0) return null;
  if (
    group &&
    isSourceGroup(group) &&
    pool === null &&
    !refined.narrowed &&
    groupFits(group, stem) &&
    refined.inputs.every((input) => factsOfKind(input.read.kind).group === group) &&
    refined.inputs.length ===
      work.inputs.filter((input) => factsOfKind(input.read.kind).group === group).length
  )
    return { of: 'group', group };
  return keysOf(refined.inputs);
}

const isSourceGroup = (group: GroupWord): group is SourceGroup =>
  !['everything', 'rest', 'rhythm', 'lead vocals', 'backing vocals'].includes(group);
const groupFits = (group: SourceGroup, stem: Stem | undefined) =>
  stem === undefined || groupOfStem(stem) === group;

function candidatesOf(
  inputs: readonly WorkInput[],
  group: GroupWord | undefined,
  stem: Stem | undefined,
): WorkInput[] {
  const ofKinds = (kinds: readonly SourceKind[]) => inputs.filter((input) => kinds.includes(input.read.kind));
  if (group === 'lead vocals') return ofKinds(['lead vocal']);
  if (group === 'backing vocals') return ofKinds(['backing vocal', 'choir']);
  if (group === 'rhythm')
    return inputs.filter((input) =>
      ['drums', 'bass', 'percussion'].includes(factsOfKind(input.read.kind).group),
    );
  if (group === 'brass') return ofKinds(families.brass ?? []);
  if (group === 'playback') {
    const tracks = ofKinds(['playback']);
    return tracks.length > 0 ? tracks : ofKinds(['sampler', 'dj']);
  }
  if (group === 'click') return ofKinds(['click']);
  if (group) {
    const members = inputs.filter((input) => factsOfKind(input.read.kind).group === group);
    if (members.length > 0) return members;
  }
  if (stem === undefined) return [];
  const exact = ofKinds(families[stem] ?? [kindOfStem(stem)]);
  if (exact.length > 0) return exact;
  const near: Partial<Record<Stem, readonly SourceKind[]>> = {
    ride: ['overhead', 'cymbals'],
    'hi-hat': [],
    organ: ['keys'],
    piano: ['keys'],
    synth: ['keys'],
    'kick in': ['kick', 'kick out'],
    'kick out': ['kick', 'kick in'],
    'snare top': ['snare'],
    'snare bottom': ['snare'],
    'bass di': ['bass', 'bass amp'],
    'bass amp': ['bass', 'bass di'],
    trumpet: ['brass'],
    trombone: ['brass'],
    saxophone: ['brass'],
    violin: ['strings'],
    cello: ['strings'],
    congas: ['percussion'],
    drums: ['electronic drums'],
    'electronic drums': ['sampler'],
  };
  return ofKinds(near[stem] ?? []);
}

function groupOfHit(hit: WishHit): SourceGroup {
  const stem = hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;
  return stem === undefined ? 'other' : groupOfStem(stem);
}

/** Narrows candidates by the words beside: a number, a side, a part ("acoustic", "lead"). */
function refine(
  work: Work,
  candidates: WorkInput[],
  hit: WishHit,
  item: Item,
): { inputs: WorkInput[]; narrowed: boolean } {
  let inputs = candidates;
  const senses = item.hits
    .filter((other) => other !== hit && !isAmount(other))
    .flatMap((other) => other.senses);
  const side = senses.find((sense) => sense.subject === 'side')?.meaning as SideWord | undefined;
  const part = senses.find((sense) => sense.subject === 'part')?.meaning as Part | undefined;
  const number = item.tokens[hit.to]?.kind === 'number' ? Number(item.tokens[hit.to]?.text) : null;
  const narrow = (fits: (input: WorkInput) => boolean) => {
    const fitting = inputs.filter(fits);
    if (fitting.length > 0) inputs = fitting;
  };
  // "Violão" beside a cavaquinho: of one kind, those that are called so.
  const isFamily =
    hit.senses.some((sense) => sense.subject === 'group') || wholeFamilies.has(groupOfHit(hit));
  if (!isFamily) {
    const words = item.tokens.slice(hit.from, hit.to).filter((token) => token.kind === 'word');
    narrow((input) =>
      words.every((word) => input.name.tokens.some((token) => singular(token.text) === singular(word.text))),
    );
  }
  if (number !== null && number > 0) narrow((input) => input.name.ordinal === number);
  if (side === 'left' || side === 'right')
    narrow((input) => input.read.side === side || input.name.sides.has(side));
  if (part === 'acoustic') narrow((input) => input.read.kind === 'acoustic guitar');
  else if (part === 'electric') narrow((input) => input.read.kind === 'electric guitar');
  else if (part === 'lead')
    narrow((input) => input.name.parts.has('lead') || input.read.kind === 'lead vocal');
  else if (part === 'backing') narrow((input) => input.read.kind === 'backing vocal');
  else if (part) narrow((input) => input.name.parts.has(part));
  const beside = senses.find((sense) => sense.subject === 'source' || sense.subject === 'group');
  if (beside && work.inputs.length > 0)
    narrow((input) =>
      input.name.besides.some((stem) => stem === beside.meaning || groupOfStem(stem) === beside.meaning),
    );
  return { inputs, narrowed: inputs.length < candidates.length };
}
