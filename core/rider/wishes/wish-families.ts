import { factsOfKind, type SourceGroup, type SourceKind } from '../../show/source-kinds.ts';
import { withDigits } from '../language/count-words.ts';
import { groupOfStem, kindOfStem } from '../language/source-name.ts';
import { fold, type Token } from '../language/text.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import type { Work, WorkInput } from '../page/work.ts';
import { ownInputs } from '../performers/performers.ts';
import type { ReadWish } from '../reading.ts';
import type { Part } from '../words/parts.ts';
import type { SideWord } from '../words/sides.ts';
import type { Stem } from '../words/sources.ts';
import type { GroupWord } from '../words/wish-targets.ts';
import { type Item, isAmount, keysOf, type WishHit } from './wish-item.ts';
import {
  isBassGuitar,
  isCalled,
  isCalledOnly,
  isOtherBass,
  isPlural,
  plainlyCalled,
  wholeFamilies,
} from './wish-names.ts';

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

/** The lines that a word for a source or a group means, of all lines or of a pool of them; null where there are none. */
export function stemTarget(
  work: Work,
  mix: WorkMix,
  hit: WishHit,
  item: Item,
  pool: WorkInput[] | null,
): ReadWish['target'] | null {
  const group = hit.senses.find((sense) => sense.subject === 'group')?.meaning as GroupWord | undefined;
  const stem = hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;
  if (group === 'everything' || group === 'rest') return { of: 'everything' };
  const inputs = pool ?? work.inputs;
  const meant = (other: Stem | undefined) => {
    const all = group === 'one voice' ? voiceOf(work, mix, pool) : candidatesOf(inputs, group, other);
    return calledSo(item, hit, group, inputs, withOtherLeads(item, hit, group, inputs, all));
  };
  // "Bones" are trombones where nobody plays the bones.
  const stems = hit.senses.flatMap(({ subject, meaning }) => (subject === 'source' ? [meaning as Stem] : []));
  const candidates = [stem, ...stems].map(meant).find((found) => found.length > 0) ?? [];
  const basses = group === 'bass' && isBassGuitar(item) ? candidates.filter((it) => !isOtherBass(it)) : [];
  const refined = refine(work, mix, basses.length > 0 ? basses : candidates, hit, item);
  if (refined.inputs.length === 0) return null;
  const counted = asManyAs(work, mix, item, hit, refined.inputs);
  if (counted) return keysOf(counted);
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

/** Groups whose words are what lines are called by: the rest of the group is not meant. */
const namedGroups: ReadonlySet<GroupWord> = new Set<GroupWord>(['backing vocals', 'playback']);

/** "Voces principales" of one lead and voices that are no backings: there are several. */
function withOtherLeads(
  item: Item,
  hit: WishHit,
  group: GroupWord | undefined,
  inputs: readonly WorkInput[],
  leads: WorkInput[],
): WorkInput[] {
  const isMany = item.tokens.slice(hit.from, hit.to).some(({ text }) => isPlural(text));
  if (group !== 'lead vocals' || leads.length !== 1 || !isMany) return leads;
  const others = soloistsIn(inputs);
  return inputs.filter((input) => leads.includes(input) || others.includes(input));
}

const isSpare = ({ read }: WorkInput) => read.kind === 'spare vocal' || read.kind === 'spare line';

/** "Beats" of a line "Laptop beats", "coro" beside a second voice: what lines are called goes before what they are. */
function calledSo(
  item: Item,
  hit: WishHit,
  group: GroupWord | undefined,
  inputs: readonly WorkInput[],
  candidates: WorkInput[],
): WorkInput[] {
  if (group !== undefined && !namedGroups.has(group)) return candidates;
  const words = item.tokens
    .slice(hit.from, hit.to)
    .filter((token) => token.kind === 'word' && token.text.length > 1 && !article.test(token.text));
  const isOutside = group !== undefined;
  const called = inputs.filter(
    (input) => !isSpare(input) && words.every((word) => isCalled(input, word, isOutside)),
  );
  if (words.length === 0 || called.length === 0) return candidates;
  const isOther =
    group !== undefined ||
    !called.some((input) => candidates.includes(input)) ||
    // "Cante" of two lines called so is not the lead's alone.
    (groupOfHit(hit) === 'vocals' && candidates.every((input) => called.includes(input)));
  return isOther ? called : candidates;
}

const article =
  /^(?:the|der|die|das|den|la|le|les|el|los|las|il|lo|gli|i|de|het|os?|as?|all|alle|tous|toutes|tod[oa]s|tutt[ie])$/;

/** "The two voices" of three: those that are called so, or the listeners' own, or the leads, if they are as many. */
function asManyAs(
  work: Work,
  mix: WorkMix,
  item: Item,
  hit: WishHit,
  inputs: readonly WorkInput[],
): WorkInput[] | null {
  const [, digit = ''] = /^\D*?\b([2-8])\s+(?=\p{L})/u.exec(withDigits(item.text, work.tongue)) ?? [];
  const most = Number(digit);
  // One of a pair counts for both.
  const count = (lines: readonly WorkInput[]) => lines.filter(({ read }) => read.side !== 'right').length;
  if (most === 0 || count(inputs) === most || count(inputs) === 1) return null;
  const word = item.tokens[hit.to - 1];
  const own = mix.read.listeners.flatMap((name) => ownInputs(work, name));
  return (
    [
      work.inputs.filter((input) => word !== undefined && isCalled(input, word)),
      inputs.filter((input) => own.includes(input)),
      inputs.filter((input) => input.read.kind === 'lead vocal' || input.read.kind === 'vocal'),
    ].find((lines) => count(lines) === most) ?? null
  );
}

const isSourceGroup = (group: GroupWord): group is SourceGroup => !notSourceGroups.has(group);
/** Words for several sources that are no group of the show's vocabulary. */
const notSourceGroups: ReadonlySet<GroupWord> = new Set<GroupWord>([
  'everything',
  'rest',
  'rhythm',
  'lead vocals',
  'backing vocals',
  'one voice',
  'winds',
  'soloists',
  'saxophones',
]);

/** "The voice": a singer's own, else the lead, else every voice. Nobody's backing vocal is called so. */
function voiceOf(work: Work, mix: WorkMix, pool: readonly WorkInput[] | null): WorkInput[] {
  const voices = (pool ?? work.inputs).filter(
    (input) => factsOfKind(input.read.kind).group === 'vocals' && input.read.kind !== 'choir',
  );
  if (pool) return voices;
  const leads = voices.filter((input) => input.read.kind === 'lead vocal');
  const own = mix.read.listeners.flatMap((name) => ownInputs(work, name));
  const mine = leads.filter((input) => own.includes(input));
  return [mine, leads, voices].find((found) => found.length > 0) ?? [];
}

const groupFits = (group: SourceGroup, stem: Stem | undefined) =>
  stem === undefined || groupOfStem(stem) === group;

/** The backing voices; where no voice is called so, those that are not the lead. */
function backingIn(inputs: readonly WorkInput[]): WorkInput[] {
  const backing = inputs.filter(({ read }) => read.kind === 'backing vocal' || read.kind === 'choir');
  return backing.length > 0 ? backing : inputs.filter(({ read }) => read.kind === 'vocal');
}

/** Who sings alone: the leads, and voices that are called no backing. */
const soloistsIn = (inputs: readonly WorkInput[]) =>
  inputs.filter(
    ({ read, name }) =>
      read.kind === 'lead vocal' ||
      read.kind === 'vocal' ||
      (read.kind === 'backing vocal' && name.stem === 'vocal'),
  );

const soloWord = /^sol(?:o|i|ist\p{L}{0,3})$/u;

/** Roles are no kinds: "MC Bo" is a voice, "Solo 1" may be anything. */
const rolesIn = (inputs: readonly WorkInput[], role: Stem) =>
  inputs.filter(
    (input) =>
      !isSpare(input) &&
      input.read.kind !== 'guest vocal' &&
      !input.name.parts.has('guest') &&
      (input.name.stem === role || input.name.besides.includes(role)),
  );
const roles: ReadonlySet<Stem> = new Set<Stem>(['mc', 'soloist', 'conductor']);

function candidatesOf(
  inputs: readonly WorkInput[],
  group: GroupWord | undefined,
  stem: Stem | undefined,
): WorkInput[] {
  const ofKinds = (kinds: readonly SourceKind[]) => inputs.filter((input) => kinds.includes(input.read.kind));
  if (group === 'lead vocals') return ofKinds(['lead vocal']);
  if (group === 'backing vocals') return backingIn(inputs);
  if (group === 'rhythm')
    return inputs.filter((input) =>
      ['drums', 'bass', 'percussion'].includes(factsOfKind(input.read.kind).group),
    );
  if (group === 'brass' || group === 'winds') {
    const winds =
      group === 'winds' ? inputs.filter((input) => factsOfKind(input.read.kind).group === 'woodwind') : [];
    const brass = ofKinds(families.brass ?? []);
    const found = inputs.filter((input) => brass.includes(input) || winds.includes(input));
    // "Blech" is the cymbals where nobody blows.
    if (found.length > 0 || stem === undefined) return found;
  }
  if (group === 'soloists') {
    const called = inputs.filter(
      ({ name }) =>
        name.tokens.some(({ text }) => soloWord.test(text)) &&
        name.besides.every((stem) => groupOfStem(stem) === 'vocals'),
    );
    return called.length > 0 ? called : soloistsIn(inputs);
  }
  if (group === 'saxophones') return ofKinds(['saxophone']);
  if (group === 'playback') {
    const tracks = ofKinds(['playback']);
    return tracks.length > 0 ? tracks : ofKinds(['sampler', 'dj']);
  }
  if (group === 'click') return ofKinds(['click']);
  if (group === 'speech' && inputs.some(({ read }) => read.kind === 'talkback')) return ofKinds(['talkback']);
  if (group) {
    const hasKit = inputs.some(({ read }) => read.kind === 'hi-hat' || families.snare?.includes(read.kind));
    const members = inputs.filter(({ read }) => {
      const own = factsOfKind(read.kind).group;
      // Where nobody plays a kit, its drums are percussion.
      return own === group || (group === 'percussion' && own === 'drums' && !hasKit);
    });
    if (members.length > 0) return members;
  }
  if (stem === undefined) return [];
  const called = roles.has(stem) ? rolesIn(inputs, stem) : [];
  if (called.length > 0) return called;
  // Where no line is called so, MCs are those who sing or speak under their own names.
  if (stem === 'mc')
    return inputs.filter(
      ({ read }) => (read.kind === 'lead vocal' || read.kind === 'vocal') && read.performer !== null,
    );
  const kinds = families[stem] ?? [kindOfStem(stem)];
  // "Kick" is the trigger on it too.
  const exact = inputs.filter(
    ({ read, name }) =>
      kinds.includes(read.kind) ||
      (read.kind === 'electronic drums' && name.besides.some((it) => kinds.includes(kindOfStem(it)))),
  );
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
    'backing vocal': ['vocal'],
    drums: ['electronic drums'],
    'electronic drums': ['sampler'],
  };
  return ofKinds(near[stem] ?? []);
}

const stemOfHit = (hit: WishHit) =>
  hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;

/** "All keys", "both basses". */
const isAllOf = (item: Item) =>
  item.hits.some((hit) =>
    hit.senses.some(({ subject, meaning }) => subject === 'group' && meaning === 'everything'),
  ) ||
  /^(?:all|both|alle|beide[nr]?|tous|toutes|ambos|ambas|tod[oa]s|tutt[ie]|entramb[ie])$/.test(
    item.tokens[0]?.text ?? '',
  );

/** Called a guitar, and no tres or lute. */
const guitarWord = /gui?t|git|gtr|chit|violao/;
/** "Acoustic", "E-Git", "elettrica" in the name of a guitar. */
const otherGuitar = /a[ck]{1,2}[oue]{1,2}st|ele[ckt]{1,2}r|\be-?g/;

/** Of a word that may mean one line or all of a group, what it means here. */
function plainOf(work: Work, mix: WorkMix, hit: WishHit, item: Item, inputs: WorkInput[]): WorkInput[] {
  const group = hit.senses.find((sense) => sense.subject === 'group')?.meaning as SourceGroup | undefined;
  if (group === 'keys') return plainlyCalled(work, hit, inputs);
  if (item.isOfRest || isPlural(item.tokens[hit.to - 1]?.text ?? '')) return inputs;
  if (group === 'bass') {
    const isNamed = work.inputs.some((input) => isCalledOnly(input, work, item.tokens[hit.to - 1]));
    const played = inputs.filter((input) => input.read.kind !== 'synth bass');
    return isNamed && played.length > 0 ? played : inputs;
  }
  if (group !== 'guitars') return inputs;
  const called = inputs.filter(({ name }) => guitarWord.test(fold(name.text)));
  const plain = called.filter(({ name }) => !otherGuitar.test(fold(name.text)));
  if (plain.length > 0 && plain.length < inputs.length) return plain;
  // A guitarist who says "guitar" means the own one.
  const own = mix.read.listeners.flatMap((name) => ownInputs(work, name));
  const mine = inputs.filter((input) => own.includes(input));
  return mine.length > 0 ? mine : inputs;
}

function groupOfHit(hit: WishHit): SourceGroup {
  const stem = stemOfHit(hit);
  return stem === undefined ? 'other' : groupOfStem(stem);
}

/** Narrows candidates by the words beside: a number, a side, a part ("acoustic", "lead"). */
function refine(
  work: Work,
  mix: WorkMix,
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
  // "Violão" beside a cavaquinho, "growls" beside the clean voice: of one kind, those that are called so.
  const isGroup = hit.senses.some((sense) => sense.subject === 'group');
  const isOneVoice = groupOfHit(hit) === 'vocals' && hit.to - hit.from === 1;
  const isFamily = isGroup || (wholeFamilies.has(groupOfHit(hit)) && !isOneVoice);
  if (!isFamily) {
    const words = item.tokens.slice(hit.from, hit.to).filter((token) => token.kind === 'word');
    const isMany = groupOfHit(hit) !== 'vocals' && words.some((word) => isPlural(word.text));
    const ofKind = isMany ? stemOfHit(hit) : undefined;
    narrow(
      (input) =>
        words.every((word) => isCalled(input, word)) || (ofKind !== undefined && input.name.stem === ofKind),
    );
  }
  if (!isAllOf(item)) inputs = plainOf(work, mix, hit, item, inputs);
  for (const word of wordsBeyond(item)) narrow((input) => isCalled(input, word));
  if (number !== null && number > 0) narrow((input) => input.name.ordinal === number);
  // "Su guitarra (la DI)", of a guitar that has a microphone too.
  if (
    /(?<!\p{L})(?:di|l[ií]nea|linha|ligne)(?!\p{L})/iu.test(
      item.text.replace(/(?<!\p{Lu})di(?= \p{L})/gu, ''),
    )
  )
    narrow((input) => input.read.pickUp === 'di' || input.read.pickUp === 'line');
  // A line that is for the hall only is wished where nothing else is called so.
  narrow((input) => input.read.audience !== 'front of house only');
  // "Laptop L+R" are the sides of a pair, and no third output.
  if (/\bl\s?[+/&]\s?r\b|\bstereo\b/i.test(item.text)) narrow((input) => input.read.pairKey !== null);
  else if (side === 'left' || side === 'right')
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

/** Words of a wish that are neither a source nor an amount: the names of people, of models, of colours. */
const wordsBeyond = (item: Item): Token[] =>
  item.tokens.filter(
    (token, at) =>
      token.kind === 'word' &&
      token.text.length > 2 &&
      !item.hits.some((hit) => at >= hit.from && at < hit.to),
  );
