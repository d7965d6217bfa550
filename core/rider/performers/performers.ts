import { factsOfKind } from '../../show/source-kinds.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { groupOfStem, kindOfStem, namesPerson, readSourceName } from '../language/source-name.ts';
import { taughtIn } from '../language/taught-words.ts';
import { fold, squash, type Token, tidy, tokenize } from '../language/text.ts';
import { playerWords, wishWords } from '../language/vocabulary.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { ReadPerformer } from '../reading.ts';
import { givenNames } from '../words/players.ts';
import type { Stem } from '../words/sources.ts';
import { looksLikeName } from './line-up.ts';
import { areTwo, askNamesake, narrowNamesakes } from './namesakes.ts';

const between = /\s*(?:,|;|&|\+|\/|\band\b|\bund\b|\bet\b|\by\b|\be\b|\ben\b)\s*/i;

/** The performer a text names; null where it names nobody, or several. */
export function performerNamed(work: Work, text: string): ReadPerformer | null {
  const [named, ...others] = performersNamed(work, text);
  return named && others.length === 0 ? named : null;
}

/** The performer a text names, asked about where several are called so; null where it names nobody. */
export function performerMeant(
  work: Work,
  text: string,
  at: ReadPerformer['lines'][number] | null,
): ReadPerformer | null {
  return askNamesake(work, text, at, performersNamed(work, text));
}

/** Everybody whom a text may name. */
function performersNamed(work: Work, text: string): ReadPerformer[] {
  const plain = tidy(text.replace(/\([^)]*\)/g, ' ').replace(/['’]s$/i, ''));
  const [taught] = taughtIn(work.tongue.spoken, plain, (of) => of === 'performer');
  const key = squash(taught?.kind ?? plain);
  if (key === '') return [];
  const exact = work.performers.find((performer) => squash(performer.name) === key);
  if (exact) return [exact];
  const words = tokenize(taught?.kind ?? plain)
    .filter((token) => token.kind === 'word')
    .map((token) => token.text);
  const partly = work.performers.filter((performer) => {
    const own = tokenize(performer.name)
      .filter((token) => token.kind === 'word')
      .map((token) => token.text);
    const isName = (word: string) => work.tongue.names.has(word) || work.tongue.people.has(word);
    return own.some((word) => word.length > 1 && words.includes(word) && isName(word));
  });
  return narrowNamesakes(taught?.kind ?? plain, partly);
}

/** The stem a player's word or role stands for: "drummer", "Drums", "Lead vox". */
function stemOfRole(work: Work, text: string): Stem | null {
  const player = lookUp(playerWords, text, work.tongue.spoken);
  if (player?.[0]) return player[0].meaning as Stem;
  return readSourceName(text, work.tongue).stem;
}

/** Everything a performer's role names: "lead vocals, guitar" is two stems. */
export function stemsOfPerformer(work: Work, performer: ReadPerformer): Stem[] {
  if (performer.role === '' && work.tongue.people.has(fold(performer.name))) return [];
  const role = performer.role === '' ? performer.name : performer.role;
  return role.split(between).flatMap((part) => {
    const stem = part === '' ? null : stemOfRole(work, part);
    return stem === null ? [] : [stem];
  });
}

function addPerformer(
  work: Work,
  name: string,
  role: string,
  place: string,
  line: ReadPerformer['lines'][number],
): ReadPerformer {
  const known = performerNamed(work, name);
  if (known && !areTwo(known, { name, role })) {
    if (known.role === '') known.role = role;
    if (known.place === '') known.place = place;
    if (!known.lines.some((it) => it.sheet === line.sheet && it.row === line.row)) known.lines.push(line);
    return known;
  }
  const [taught] = taughtIn(work.tongue.spoken, name, (of) => of === 'performer');
  const performer: ReadPerformer = { name: tidy(taught?.kind ?? name), role, place, lines: [line] };
  work.performers.push(performer);
  return performer;
}

/** The people a text names: "Noor & Tom". A role ("Drummer") is whoever plays that, or a performer called so. */
export function performersOf(
  work: Work,
  text: string,
  line: ReadPerformer['lines'][number],
): ReadPerformer[] {
  const whole = performerMeant(work, text, line);
  const parts = whole && !between.test(text) ? [text] : text.split(between).filter((part) => part !== '');
  const found: ReadPerformer[] = [];
  for (const part of parts) {
    const performer =
      performerMeant(work, part, line) ??
      byRole(work, part) ??
      addPerformer(work, part.replace(/\([^)]*\)/g, ' '), '', '', line);
    if (!found.includes(performer)) found.push(performer);
  }
  return found;
}

function byRole(work: Work, text: string): ReadPerformer | null {
  const stem = stemOfRole(work, text);
  return stem === null ? null : playerOf(work, stem);
}

/** The only one of the line-up who plays such a thing, or null. */
export function playerOf(work: Work, stem: Stem): ReadPerformer | null {
  const exact = work.performers.filter(
    (performer) => performer.role !== '' && stemsOfPerformer(work, performer).includes(stem),
  );
  if (exact.length === 1) return exact[0] ?? null;
  const group = groupOfStem(stem);
  const near = work.performers.filter(
    (performer) =>
      performer.role !== '' && stemsOfPerformer(work, performer).some((it) => groupOfStem(it) === group),
  );
  if (near.length === 1) return near[0] ?? null;
  const first = near.filter(
    (performer) => groupOfStem(stemsOfPerformer(work, performer)[0] ?? 'other') === group,
  );
  return first.length === 1 ? (first[0] ?? null) : null;
}

/** Collects the line-up, and gives every input the performer its row, its name or the line-up tells. */
export function settlePerformers(work: Work): void {
  for (const { name, role, place, at } of work.found.performers) addPerformer(work, name, role, place, at);
  for (const { listenerText, at } of work.found.mixes) {
    if (namesPerson(listenerText, work.tongue)) performersOf(work, listenerText, at);
  }
  for (const input of work.inputs) {
    const { performerText } = input.found;
    if (performerText !== '' && !/^[-–—/.?]*$/.test(performerText)) {
      const named = performersOf(work, performerText, input.found.at);
      const own = named.length === input.of ? named[input.index] : named[0];
      if (own) input.read.performer = own.name;
      continue;
    }
    input.read.performer = (performerInName(work, input) ?? performerInNotes(work, input))?.name ?? null;
  }
  settleNamesOnly(work);
  for (const input of work.inputs)
    if (input.read.performer === null) input.read.performer = byLineUp(work, input)?.name ?? null;
  // Whom only a line names ("BV Jude") may be named in a wish, too.
  for (const { name } of work.performers)
    for (const token of tokenize(name))
      if (
        token.kind === 'word' &&
        token.text.length > 2 &&
        readSourceName(token.raw, work.tongue).stem === null
      )
        work.tongue.names.add(token.text);
}

/** Remarks that begin with who plays: "Wren", "Gus, two songs". */
function performerInNotes(work: Work, input: WorkInput): ReadPerformer | null {
  const [first = ''] = input.read.notes.split(/\s*[,;(]\s*/);
  return namesPerson(first, work.tongue) && first.split(' ').length <= 2 ? performerNamed(work, first) : null;
}

/** "Vox Noor", "Gtr (Tom)". A word nobody knows beside a voice is taken for the singer's name. */
function performerInName(work: Work, input: WorkInput): ReadPerformer | null {
  const known = work.performers.filter((performer) => {
    const own = tokenize(performer.name).filter((token) => token.kind === 'word' && token.text.length > 1);
    return (
      own.length > 0 &&
      own.some((word) => input.name.tokens.some((token) => token.text === word.text)) &&
      (stemOfRole(work, performer.name) === null ||
        (work.tongue.people.has(fold(performer.name)) && input.name.stem !== 'tom'))
    );
  });
  const meant = narrowNamesakes(input.read.name, known);
  const playing = meant.filter((it) => meant.length > 1 && plays(work, it, input));
  const named = askNamesake(work, input.read.name, input.found.at, playing.length === 1 ? playing : meant);
  if (named) return named;
  const [word, ...more] = input.name.unknown;
  const voice = input.name.stem !== null && groupOfStem(input.name.stem) === 'vocals';
  if (!voice || !word || more.length > 0 || input.name.certainty < 1) return null;
  if (!/^\p{Lu}\p{Ll}+$/u.test(word) || word.length < 3) return null;
  return addPerformer(work, word, '', '', input.found.at);
}

/** Whether what a performer plays is what a line is. */
const plays = (work: Work, performer: ReadPerformer, { name }: WorkInput): boolean =>
  name.stem !== null &&
  stemsOfPerformer(work, performer).some((stem) => groupOfStem(stem) === groupOfStem(name.stem ?? stem));

/** A line called by a performer's name alone is that performer's voice, or else the one thing they play. */
function settleNamesOnly(work: Work): void {
  for (const input of work.inputs) {
    if (input.name.stem !== null || input.read.kind !== 'other') continue;
    const performer = performerNamed(work, input.read.name);
    // A word nobody knows in the row of a player is a thing they play, not the player.
    if (!performer) continue;
    const stems = stemsOfPerformer(work, performer);
    const voice = stems.find((stem) => groupOfStem(stem) === 'vocals');
    const stem = voice ?? stems[0] ?? null;
    const guess = stem === null ? 'vocal' : kindOfStem(stem);
    const answer = work.asker.ask({
      matter: 'kind',
      at: input.found.at,
      ask: `Is "${shorten(input.read.name)}" the voice of ${performer.name}?`,
      options: [
        { value: guess, label: guess === 'vocal' ? 'A voice' : guess },
        { value: 'backing vocal', label: 'backing vocal' },
        { value: 'lead vocal', label: 'lead vocal' },
        { value: 'other', label: 'A source of another kind' },
      ],
      guessConfidence: voice ? 0.75 : 0.5,
      weight: weights.performerGuess,
    });
    input.read.performer = performer.name;
    input.read.kind = (answer ?? guess) as WorkInput['read']['kind'];
    input.read.kindConfidence = answer ? 1 : 0.7;
  }
}

/** The only one of the line-up who plays such a thing. */
function byLineUp(work: Work, input: WorkInput): ReadPerformer | null {
  const { kind } = input.read;
  if (
    [
      'spare vocal',
      'guest vocal',
      'spare line',
      'ambience',
      'talkback',
      'presenter',
      'playback',
      'click',
      'other',
      'effect return',
    ].includes(kind)
  )
    return null;
  const group = factsOfKind(kind).group;
  const plays = (stem: Stem) => {
    if (kind === 'lead vocal') return stem === 'lead vocal' || stem === 'vocal';
    if (kind === 'backing vocal') return stem === 'backing vocal' || stem === 'vocal';
    if (group === 'vocals') return groupOfStem(stem) === 'vocals';
    return group === 'brass' ||
      group === 'woodwind' ||
      group === 'strings' ||
      group === 'folk' ||
      group === 'percussion'
      ? stem === kind
      : groupOfStem(stem) === group;
  };
  const beside = input.name.besides[0];
  const wanted =
    group === 'vocals' && beside && groupOfStem(beside) !== 'vocals'
      ? (stem: Stem) => groupOfStem(stem) === groupOfStem(beside)
      : plays;
  const players = work.performers.filter(
    (performer) => performer.role !== '' && stemsOfPerformer(work, performer).some(wanted),
  );
  if (players.length === 1) return players[0] ?? null;
  if (kind === 'lead vocal') {
    const leads = players.filter(
      (performer) =>
        /\b(?:lead|main|haupt)/i.test(fold(performer.role)) ||
        stemsOfPerformer(work, performer).includes('lead vocal'),
    );
    return leads.length === 1 ? (leads[0] ?? null) : null;
  }
  return null;
}

/** The inputs that are a performer's own: by name, else by what they are called or play. */
export function ownInputs(work: Work, performerName: string): WorkInput[] {
  const own = work.inputs.filter((input) => input.read.performer === performerName);
  if (own.length > 0) return own;
  const performer = work.performers.find((it) => it.name === performerName);
  if (!performer) return [];
  const stems = stemsOfPerformer(work, performer);
  const played = playedBy(work, stems);
  const free = played.filter((input) => input.read.performer === null);
  // "Drummer" listens, and the drums are named after who plays them.
  return free.length > 0 || performer.role !== '' ? free : played;
}

function playedBy(work: Work, stems: readonly Stem[]): WorkInput[] {
  return work.inputs.filter((input) =>
    stems.some((stem) => {
      if (stem === 'vocal' || stem === 'lead vocal') return input.read.kind === 'lead vocal';
      if (stem === 'backing vocal') return input.read.kind === 'backing vocal';
      return stem === input.read.kind || groupOfStem(stem) === factsOfKind(input.read.kind).group;
    }),
  );
}

/** "The" and "for" in "side fills for the cast" are nobody's name. */
const isEverydayWord = (token: Token, { tongue }: Pick<Work, 'tongue'>) =>
  /^\p{Ll}/u.test(token.raw) && lookUp(wishWords, token.text, tongue.spoken)?.[0]?.subject === 'hedge';

/** Folded words of all names that the rider gives, so that no name is read as a misspelt source. */
export function namesIn(work: Pick<Work, 'found' | 'tongue'>): Set<string> {
  const names = new Set<string>();
  for (const { of, key } of work.tongue.spoken.taught ?? [])
    if (of === 'performer') names.add(key.reduce((a, b) => (b.length > a.length ? b : a)));
  const add = (text: string, isName: boolean) => {
    for (const token of tokenize(text)) {
      if (token.kind !== 'word' || token.text.length < 2 || isEverydayWord(token, work)) continue;
      const { stem, certainty } = readSourceName(token.raw, work.tongue);
      // Where a name is due, "Saar" is a person and no misspelt instrument.
      if (stem === null || (isName && certainty < 1 && /^\p{Lu}/u.test(token.raw))) names.add(token.text);
    }
  };
  work.tongue.people = new Set();
  const addPerson = (text: string) => {
    for (const token of tokenize(text))
      if (givenNames.has(token.text) && /^\p{Lu}\p{Ll}/u.test(token.raw)) work.tongue.people.add(token.text);
  };
  for (const { name } of work.found.performers) addPerson(name);
  for (const { performerText } of work.found.inputs) addPerson(performerText);
  for (const { listenerText } of work.found.mixes) addPerson(listenerText);
  for (const { name } of work.found.performers) add(name, true);
  for (const { performerText } of work.found.inputs) add(performerText, true);
  for (const { listenerText } of work.found.mixes)
    if (looksLikeName(listenerText, { tongue: work.tongue }))
      add(listenerText, findHits(playerWords, tokenize(listenerText), work.tongue.spoken).length === 0);
  return names;
}
