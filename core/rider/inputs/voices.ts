import type { SourceKind } from '../../show/source-kinds.ts';
import { groupOfStem } from '../language/source-name.ts';
import { fold } from '../language/text.ts';
import { sureEnough } from '../page/line-accounts.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { weights } from '../questions.ts';
import { lower, ofKind } from './settle-kind.ts';

/** A voice that does not say which: the lead where there is none yet; of the others it stays open. */
export function settleVocals(work: Work): void {
  // A microphone for the hand that nobody is said to sing into may be anybody's.
  for (const input of ofKind(work, 'vocal')) if (isForAnyone(input)) lower(input, 'vocal', 0.75);
  settleWet(work);
  settleSingers(work);
  const firsts = ofKind(work, 'vocal').filter(isFirst);
  for (const input of firsts) lower(input, 'lead vocal', 0.85);
  const { open, parts } = openVoices(work);
  if (open.length === 0) return;
  const leadsFor = (input: WorkInput) =>
    input.read.kind === 'lead vocal' &&
    (input.name.stem !== 'soloist' || input.read.kindConfidence >= sureEnough);
  const hasLead = work.inputs.some(leadsFor);
  const byRole = open.filter((input) => roleOf(work, input) !== null);
  for (const input of byRole) lower(input, roleOf(work, input) ?? 'vocal', 0.85);
  const left = open.filter((input) => input.read.kind === 'vocal');
  const leads = work.inputs.filter(leadsFor);
  if (firsts.length > 0) return;
  if (hasLead || leads.length > 0) {
    for (const input of left) lower(input, 'backing vocal', 0.8);
    return;
  }
  // Where a cast sings, a musician's voice leads nobody.
  if (parts.length > 0) return;
  if (left.length === 1) {
    const only = left[0];
    if (only) lower(only, 'lead vocal', byRole.length > 0 ? 0.8 : 0.9);
    return;
  }
  chooseLead(work, left);
}

/** What the line-up says of the singer: a lead, or one of the backing voices; null where it says nothing. */
function roleOf(work: Work, input: WorkInput): SourceKind | null {
  const performer = work.performers.find((it) => it.name === input.read.performer);
  if (!performer) return null;
  if (
    /\b(?:lead|main|haupt|principal|leader|hoofd)/i.test(performer.role) &&
    !/lead[\s-]*(?:guit|git|gtr)/i.test(performer.role)
  )
    return 'lead vocal';
  if (/\b(?:back|bv|bgv|bg|chor|choeur|ch[oœ]|coro|harmon|koor|achtergrond)/i.test(performer.role))
    return 'backing vocal';
  return null;
}

const isWorn = (input: WorkInput) =>
  /head ?-?(?:set|worn)|lava?l|kopfb[uü]gel|serre-t[eê]te|diadema|archetto/i.test(
    `${input.read.name} ${input.read.pickUpModel}`,
  );

/** A word for a voice or for singing. */
const voiceWord = /vo[xc]|ges(?:ang)?\b|chant|vo[zc]e?\b|voix|zang|sing|stem|stimm/i;

/** A part in a play that is named with a microphone to wear and no word of singing: no backing vocal. */
const isPart = (input: WorkInput) =>
  isWorn(input) && input.name.besides.length === 0 && !voiceWord.test(input.read.name);

/** The voices that may be the lead: no cast, none that is said to stand behind, no microphone for anybody. */
function openVoices(work: Work): { open: WorkInput[]; parts: WorkInput[] } {
  const cast = ofKind(work, 'vocal').filter(isPart);
  const parts = cast.length >= leastCast ? cast : [];
  for (const input of parts) lower(input, 'vocal', 0.75);
  for (const input of ofKind(work, 'vocal'))
    if (isBehind(input) && !parts.includes(input)) lower(input, 'backing vocal', 0.8);
  const open = ofKind(work, 'vocal').filter(
    (input) =>
      !isForAnyone(input) && !isWet(input) && !/beat ?box/i.test(input.read.name) && !parts.includes(input),
  );
  return { open, parts };
}

/** Who is said to sing most of it leads. */
const isFirst = ({ read, found }: WorkInput) =>
  /\b(?:sings? (?:most|nearly (?:everything|all)|almost (?:everything|all)|the lot)|main singer|(?:fast|beinahe) alles|singt (?:am meisten|das meiste|hauptsachlich)|chante (?:presque tout|la plupart|le plus)|(?:casi|quasi|quase) tud?t?o|casi todo|canta (?:la mayoria|quasi sempre|a maior parte|di piu)|zingt (?:bijna alles|het meeste|meestal))/.test(
    fold([read.name, ...found.details.notes].join(' ')),
  );

const singer =
  /^(?:singers?|chanteu(?:r|se)s?|s[aä]nger(?:in(?:nen)?)?|cantantes?|cantor(?:es|as?)?|zanger(?:es(?:sen)?|s)?|vocalistas?|rappers?|cante)\b/iu;

/** "Singer 1" beside a lead, and the second who sings a "cante": they sing, and nobody says that they lead. */
function settleSingers(work: Work): void {
  const leads = ofKind(work, 'lead vocal');
  const singers = leads.filter(({ read }) => singer.test(read.name));
  const isLed = leads.length > singers.length;
  for (const input of isLed ? singers : singers.slice(1)) lower(input, 'vocal', 0.8);
}

/** A voice out of an effect: it is not what the singer sings into. */
const isWet = ({ read, name }: WorkInput) =>
  name.besides.includes('effect return') ||
  /\b(?:vocoder|vocodeur|effe[ck]t\p{L}*|effets?|efectos?|effetti|efeitos?|wet)(?!\p{L})/iu.test(read.name);

/** A voice that comes out of pedals, beside the singer's own microphone, is what the effects make of it. */
function settleWet(work: Work): void {
  for (const input of ofKind(work, 'vocal').filter(isWet)) {
    const { read } = input;
    const isSecond = work.inputs.some(
      (it) => it !== input && it.read.performer !== null && it.read.performer === read.performer,
    );
    if (read.pickUp === 'di' || (isSecond && read.pickUp === null)) lower(input, 'effect return', 0.75);
  }
}

/** What is said of a voice that is not the lead. */
const isBehind = ({ read, found }: WorkInput) =>
  /\b(?:shouts|screams|refrains?|refreinen|refr[aã]o|refr[oõ]es|estribillos?|ritornelli|choruses|hooks|(?:2nd|second|zweite|2\.|deuxième|segunda|seconda|tweede) (?:voice|vocal|stimme|voix|voz|voce|stem)|trio|harmon\p{L}*)(?!\p{L})/iu.test(
    `${read.name} ${found.details.notes.join(' ')}`,
  );

const isForAnyone = (input: WorkInput) =>
  input.read.performer === null &&
  /\bhand|bast[aã]o|micro (?:à )?main|de mano|a mano/i.test(input.read.name) &&
  !voiceWord.test(input.read.name);

/** A cast or a choir of so many has no one lead. */
const mostSingers = 6;
/** So many who all wear their microphones play parts. */
const leastCast = 2;

function chooseLead(work: Work, vocals: readonly WorkInput[]): void {
  const isCast = vocals.every((input) => input.name.stem === null || isWorn(input));
  if (isCast && vocals.length >= (vocals.every(isWorn) ? leastCast : mostSingers)) return;
  const free = vocals.find(
    (input) =>
      input.name.besides.every((stem) => stem === 'other' || groupOfStem(stem) === 'vocals') &&
      !input.name.stageSide &&
      input.name.sides.size === 0,
  );
  const centre = vocals.find((input) => input.name.sides.has('centre') && input.name.besides.length === 0);
  const numbered = vocals.find((input) => input.name.ordinal === 1);
  const guess = centre ?? numbered ?? free ?? vocals[0];
  if (!guess) return;
  const answer = work.asker.ask({
    matter: 'lead vocal',
    at: guess.read.lines[0] ?? null,
    ask: 'Which voice is the lead?',
    options: [
      { value: guess.read.key, label: `${guess.read.channel} ${shorten(guess.read.name)}` },
      ...vocals
        .filter((input) => input !== guess)
        .map((input) => ({
          value: input.read.key,
          label: `${input.read.channel} ${shorten(input.read.name)}`,
        })),
      { value: 'all', label: 'All of them are leads' },
    ] as [{ value: string; label: string }, { value: string; label: string }],
    guessConfidence: centre ? 0.8 : 0.6,
    weight: weights.leadVocal,
  });
  for (const input of vocals) {
    const lead = answer === 'all' || (answer ?? guess.read.key) === input.read.key;
    // Nobody said that the others stand behind.
    lower(input, lead ? 'lead vocal' : 'vocal', answer ? 1 : 0.72);
  }
}
