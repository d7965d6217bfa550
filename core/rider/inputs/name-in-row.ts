import { factsOfKind, type SourceGroup } from '../../show/source-kinds.ts';
import { heardWord, lookUp } from '../language/lexicon.ts';
import { groupOfStem, readSourceName, type SourceName } from '../language/source-name.ts';
import { nameWords, playerWords } from '../language/vocabulary.ts';
import type { FoundInput } from '../page/draft.ts';
import type { Work } from '../page/work.ts';
import type { Stem } from '../words/sources.ts';

/** The name read with what stands beside it: the side column, the heading of its group. */
export function nameOf(found: FoundInput, work: Work): SourceName {
  const name = readSourceName(found.detail ? `${found.name} ${found.detail}` : found.name, work.tongue);
  const voices = found.headingStem === 'vocal' || readSourceName(found.group, work.tongue).stem === 'vocal';
  if (isBackingSinger(name) && (voices || name.stageSide || followsVoice(found, work)))
    return { ...name, stem: 'backing vocal' };
  if (voices && isSinger(name, found, work)) return withVoice(asVoice(name), found, work);
  if (name.stem === 'spare line' && voices) return { ...name, stem: 'spare vocal' };
  if (name.stem === 'vocal') return withVoice(name, found, work);
  if (name.stem === 'guitar') return withRemarks(name, found, work);
  if (name.stem === 'soloist') return withInstrument(name, found, work);
  if (name.stem === 'playback' && saysBacking(name))
    return { ...name, stem: 'backing vocal', certainty: 0.72 };
  if (name.stem === 'harp') return blownHarp(name, found, work);
  if (name.stem === 'dj' && /\bmi[ck](?:ro)?\b/i.test(found.name))
    return { ...asVoice(name), certainty: 0.72 };
  if (name.stem !== null) {
    // "Harbour master | headset": a part in a play, no master tape.
    const isPart = name.isEveryday && name.unknown.length > 0 && groupOfStem(name.stem) !== 'vocals';
    return (isPart ? byMicrophone(name, found, work) : null) ?? byRemark(name, found, work) ?? name;
  }
  if (found.group) {
    const group = readSourceName(found.group, work.tongue);
    if (group.stem !== null)
      return { ...name, stem: group.stem, certainty: 0.85, base: `${group.base} ${name.base}` };
  }
  if (found.headingStem === null) return byMicrophone(name, found, work) ?? byEar(name, work);
  const headed: SourceName = { ...name, stem: found.headingStem, certainty: 0.8 };
  return headed.stem === 'vocal' ? withVoice(headed, found, work) : headed;
}

/** "Control | backing tracks": a remark that is nothing but a source says more than an everyday word. */
function byRemark(name: SourceName, found: FoundInput, work: Work): SourceName | null {
  const isVague =
    name.stem !== null && ['playback', 'speech', 'ambience', 'other'].includes(groupOfStem(name.stem));
  if (!name.isEveryday || !isVague) return null;
  for (const remark of found.details.notes) {
    if (playsToo.test(remark)) continue;
    const { stem, certainty, unknown, isEveryday } = readSourceName(remark, work.tongue);
    if (stem !== null && certainty === 1 && unknown.length === 0 && !isEveryday) return { ...name, stem };
  }
  return null;
}

const playsToo = /\b(?:doubl|also|auch|aussi|tamb[ié]|anche|ook|plus)/i;

/** "Widow | headworn radio", "Kofi | dynamic vocal mic": a name nobody knows is a singer's where the microphone is
 * one to sing into; null where it is not. */
function byMicrophone(name: SourceName, found: FoundInput, work: Work): SourceName | null {
  const { pickUp, pickUpModel, notes } = found.details;
  if (/[?]/.test(found.name)) return null;
  const said = [pickUpModel, ...notes].filter((text) => text !== '' && text.length < 60);
  const isVoice =
    pickUp === 'wireless' ||
    said.some((text) => {
      const { stem, certainty } = readSourceName(text, work.tongue);
      return stem !== null && certainty === 1 && groupOfStem(stem) === 'vocals';
    });
  return isVoice && pickUp !== 'di' ? { ...name, stem: 'vocal', certainty: 0.75 } : null;
}

/** "Snair top": where no word is known, one that sounds like a source is taken for it, and asked about. */
function byEar(name: SourceName, work: Work): SourceName {
  const { names, people, spoken } = work.tongue;
  for (const token of name.tokens) {
    if (token.kind !== 'word' || names.has(token.text) || people.has(token.text)) continue;
    const heard = heardWord(nameWords, token.text);
    const sense =
      heard === null ? null : lookUp(nameWords, heard, spoken)?.find((it) => it.subject === 'source');
    if (sense) return { ...name, stem: sense.meaning as Stem, certainty: soundalike };
    // "Violoncelista": the line of a player is sooner the instrument than the voice.
    const player = lookUp(playerWords, token.text, spoken)?.[0];
    if (player) return { ...name, stem: player.meaning as Stem, certainty: soundalike };
  }
  return name;
}

/** A guitar whose remarks say which: "Gitarre (Nylon)". */
function withRemarks(name: SourceName, found: FoundInput, work: Work): SourceName {
  if (name.parts.has('acoustic') || name.parts.has('electric') || name.parts.has('amp')) return name;
  const told = [...found.details.notes, found.details.pickUpModel, found.detail]
    .filter((remark) => remark !== '' && remark.length < 60)
    .flatMap((remark) => {
      const said = readSourceName(remark, work.tongue);
      return [...said.parts, ...(said.stem === 'acoustic guitar' ? (['acoustic'] as const) : [])];
    })
    .filter((part) => part === 'acoustic' || part === 'electric' || part === 'amp');
  return told.length === 0 ? name : { ...name, parts: new Set([...name.parts, ...told]) };
}

/** "Solist Fien | accordeon": what the soloist plays. */
function withInstrument(name: SourceName, found: FoundInput, work: Work): SourceName {
  for (const remark of found.details.notes) {
    const { stem } = readSourceName(remark, work.tongue);
    if (stem === null || stem === 'other') continue;
    return { ...name, stem: groupOfStem(stem) === 'vocals' ? 'lead vocal' : stem, certainty: 0.85 };
  }
  return name;
}

/** A "harp" into a small amplifier is the kind that is blown, and so it is most often beside a drum kit (common
 * practice); where only the kit speaks for it, it is asked about. */
function blownHarp(name: SourceName, found: FoundInput, work: Work): SourceName {
  const said = [found.name, found.details.pickUpModel, ...found.details.notes].join(' ');
  if (/\b(?:bullet|blues|amp(?:li)?|combo|harp mic|diatonic|chromatic)\b/i.test(said))
    return { ...name, stem: 'harmonica', certainty: Math.min(name.certainty, 0.85) };
  const isBare = /^harp\b(?!\s*-?(?:g|\p{L}*f))/iu.test(found.name) && name.unknown.length === 0;
  const isLarge = /concert|celtic|lever|pedal|orchest|classical/i.test(said) || work.tongue.spoken.has('nl');
  return isBare && !isLarge && hasKit(work) ? { ...name, stem: 'harmonica', certainty: soundalike } : name;
}

/** True where a drum kit is on the list. */
export const hasKit = (work: Work) =>
  work.found.inputs.some(({ name }) => {
    const { stem } = readSourceName(name, work.tongue);
    return stem !== null && groupOfStem(stem) === 'drums';
  });

/** Below the certainty of a guess that is not asked about. */
const soundalike = 0.65;

/** "Backing Jonte", "Backing drums", "BV SL", but no backing track. */
function isBackingSinger(name: SourceName): boolean {
  if (name.tokens.some((token) => /^tra[ck]/.test(token.text))) return false;
  const isBacking = name.parts.has('backing') || name.tokens.some((token) => token.text === 'backing');
  const isPair = name.sides.size > 0 && !name.stageSide;
  return isBacking && !isPair && name.stem !== null && groupOfStem(name.stem) !== 'vocals';
}

/** "Backing 1": voices sooner than tracks, which come in stereo. */
const saysBacking = (name: SourceName) =>
  name.sides.size === 0 &&
  name.tokens.every((token) => token.kind !== 'word' || /^backings?$/.test(token.text));

/** A line right below a voice. */
function followsVoice(found: FoundInput, work: Work): boolean {
  const above = work.inputs.at(-1);
  return (
    above !== undefined && above.found.list === found.list && factsOfKind(above.read.kind).group === 'vocals'
  );
}

/** "Kit | lead" and "Otto (drums) | BV" among the voices: the word is a name or what the singer plays besides. */
function isSinger(name: SourceName, found: FoundInput, work: Work): boolean {
  if (name.stem === null || groupOfStem(name.stem) === 'vocals') return false;
  if (['spare line', 'talkback', 'effect return', 'choir', 'playback'].includes(name.stem)) return false;
  const words = name.tokens.filter((token) => token.kind === 'word');
  if (words.length > 0 && words.every((word) => work.tongue.people.has(word.text))) return true;
  // "Drums" under "VOCALS": where the voice stands. A line that is plugged in is none.
  const isPlace = name.tokens.length <= 3 && name.unknown.length === 0 && name.sides.size === 0;
  if (isPlace && found.details.pickUp !== 'di' && placesOfVoices.has(groupOfStem(name.stem))) return true;
  const isNamed = words.some((word) => work.tongue.names.has(word.text));
  return (isNamed || name.unknown.length > 0) && found.details.notes.some((it) => voiceIn(it, work) !== null);
}

/** What a singer may play besides. */
const placesOfVoices: ReadonlySet<SourceGroup> = new Set<SourceGroup>([
  'drums',
  'percussion',
  'bass',
  'guitars',
  'keys',
  'brass',
  'woodwind',
  'strings',
  'folk',
]);

const asVoice = (name: SourceName): SourceName => ({
  ...name,
  besides: name.stem === null ? name.besides : [name.stem, ...name.besides],
  stem: 'vocal',
  certainty: 0.85,
});

/** A voice whose remarks say which it is: "Gesang Ebba | Chor". */
function withVoice(name: SourceName, found: FoundInput, work: Work): SourceName {
  if (name.parts.has('lead') || name.parts.has('backing') || name.parts.has('spare')) return name;
  for (const remark of found.details.notes) {
    const stem = voiceIn(remark, work);
    if (stem !== null) return { ...name, stem };
  }
  return name;
}

/** How somebody sings says nothing of who leads. */
const manner = /growl|grunt|scream|shout|schrei|\bcris\b|gritos|\burla\b/i;

/** More words than these beside it make a remark a sentence on something else. */
const mostBeside = 2;

/** The voice that a remark names, or null where it names none. */
function voiceIn(remark: string, work: Work): Stem | null {
  if (remark.length >= 40 || manner.test(remark)) return null;
  const said = readSourceName(remark, work.tongue);
  if (said.unknown.length > mostBeside) return null;
  const voices: Stem[] = ['lead vocal', 'backing vocal', 'spare vocal', 'guest vocal'];
  if (said.stem !== null && voices.includes(said.stem)) return said.stem;
  // "Over het hoofd": a word for the lead among others is no word for the voice.
  if (said.unknown.length > 0) return null;
  return said.parts.has('backing') ? 'backing vocal' : said.parts.has('lead') ? 'lead vocal' : null;
}
