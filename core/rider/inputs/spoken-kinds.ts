import { fold } from '../language/text.ts';
import type { Work } from '../page/work.ts';
import { lower, ofKind } from './settle-kind.ts';
import { blown, windWords } from './tuned-kinds.ts';

/** A conductor who is said to speak does so to the audience. */
export function settleConductors(work: Work): void {
  for (const input of ofKind(work, 'talkback'))
    if (
      input.name.stem === 'conductor' &&
      speaks.test(`${input.read.name} ${input.found.details.notes.join(' ')}`)
    )
      lower(input, 'presenter', 0.8);
}

const speaks =
  /\b(?:speaks?|speech|spricht|sprache|ansage\p{L}*|parle|parole|habla|parla|praat|spraak|spreekt|fala)\b/iu;

/** A voice that recites, or that only speaks, does not sing. */
export function settleSpeech(work: Work): void {
  const spoken = (['vocal', 'other', 'ambience'] as const).flatMap((kind) => ofKind(work, kind));
  for (const input of spoken) {
    const said = fold([input.read.name, ...input.found.details.notes].join(' '));
    const isTold = input.read.kind === 'vocal' ? recites.test(said) : toAudience.test(said);
    if (isTold || (toAudience.test(said) && !sings.test(said))) lower(input, 'presenter', 0.8);
  }
}

const recites =
  /\b(?:recita\p{L}*|recites?|rezitiert|rezitation|(?:only|just) (?:speaks|talks)|(?:speaks|talks|spoken) only|spricht nur|nur (?:sprech|text|sprache)\p{L}*|parle (?:seulement|uniquement)|ne chante pas|(?:solo|solamente|no canta) habla|solo habla|(?:solo parla|parla solo|soltanto parla)(?:ta|to)?|non canta|(?:spreekt|praat) alleen|alleen (?:spreken|praten|spreekt)|so fala|apenas fala|nao canta|doesn'?t sing|does not sing|singt nicht|zingt niet|no canta)(?!\p{L})/u;

const toAudience =
  /\b(?:sagt (?:die |den |das )?(?:\p{L}+ )?an\b|ansag\p{L}*|moderiert|announces|introduces|hosts|presente les|annonce|anuncia|presenta|annuncia|apresenta|presenteert|kondigt|(?:speaks?|talks?|talking|chats) (?:to|with) (?:the )?(?:audience|crowd|people)|(?:spricht|redet|sprechen|reden) (?:zum|mit dem) publikum|parler? (?:au|avec le) public|hablar? (?:al|con el) publico|parlar?e? (?:al|col|con il) pubblico|(?:praa?t|spreekt|praten|spreken|gesprekken) (?:tegen|met|tot) (?:het )?publiek|falar? (?:ao|com o|para o) publico)/u;

const sings = /\b(?:sings?|singt|chante|canta|zingt)\b/;

/** A voice that only the musicians hear talks to them. */
export function settleTalk(work: Work): void {
  for (const { read, found } of work.inputs) {
    const said = `${read.name} ${found.details.notes.join(' ')}`;
    const isSpoken = read.kind === 'presenter' && read.audience === 'monitors only';
    const isToldTo = ['presenter', 'vocal', 'other'].includes(read.kind) && toMusicians.test(fold(said));
    if (!isSpoken && !isToldTo) continue;
    read.kind = 'talkback';
    read.kindConfidence = 0.85;
  }
}

const toMusicians =
  /\b(?:(?:to|only|for|just)\s+(?:the\s+)?(?:band|musicians|ears)(?:\s+only)?\b|band only|(?:zur|an die|nur (?:fur |an )?(?:die )?)\s*(?:band|musiker)|(?:alleen\s+)?(?:naar|voor) de (?:muzikanten|band)|(?:vers|aux|pour les) musiciens|(?:a|para) los musicos|(?:ai|per i|solo) musicisti|(?:para|aos) (?:os )?musicos)/;

/** "MC Flocke" raps where there are beats; an "MC mic" by itself announces. */
export function settleRappers(work: Work): void {
  const beats = work.inputs.some(({ read }) => ['dj', 'playback', 'sampler'].includes(read.kind));
  if (!beats) return;
  for (const input of ofKind(work, 'presenter')) {
    const isNamed = input.name.unknown.length > 0 || input.read.performer !== null;
    if (/^mc\s/i.test(input.read.name) && isNamed) lower(input, 'lead vocal', 0.72);
  }
}

const inChoir =
  /^(?:chor|choir|ch[oœ]+e?urs?|koor|coro)\s+|\s*(?:\([^)]*\b(?:chor|ch[oœ]+e?ur|choir|koor|coro)\b[^)]*\)|(?:chor|choir|koor|coro))$/iu;

/** "Alt 2" and "Basses" beside a line of a choir are voices, no saxophone and no guitar. */
export function settleChoir(work: Work): void {
  const voices =
    /^(?:sopran\p{L}*|mezzo\p{L}*|[ck]ontralt\p{L}*|alt\p{L}?s?|t[eé]nor\p{L}*|barit[oó]n\p{L}*|bass(?:es|i|en)?|bas|b[aä]sse|bassen|bajos?|baixos?)\s*\d*$/iu;
  const isChoir = (at: number) => work.inputs[at]?.read.kind === 'choir';
  work.inputs.forEach((input, at) => {
    const name = input.read.name.replace(inChoir, '');
    // "Coro bajo" may be the bass player who sings.
    const isTold =
      name !== input.read.name && !/^(?:coro|koor)\s+(?:bajo|baixo|basso|bas)$/i.test(input.read.name);
    if (!voices.test(name) || !(isTold || isChoir(at - 1) || isChoir(at + 1))) return;
    input.read.kind = 'choir';
    input.read.kindConfidence = 0.85;
  });
}

/** "Solo mic" in front of a section is whoever steps forward: no voice, and no one instrument. */
export function settleSoloists(work: Work): void {
  const winds = work.inputs.filter(({ read }) => blown.has(read.kind)).length;
  for (const input of work.inputs) {
    const { read, name, found } = input;
    if (read.pickUp === 'wireless') continue;
    const isSolo =
      name.stem === 'soloist' || /^(?:mi[ck]\p{L}*\s+)?(?:solo|soli|assoli|solos)\b/iu.test(read.name);
    const said = [read.name, ...found.details.notes].join(' ');
    if (isSolo && ['lead vocal', 'brass', 'other'].includes(read.kind) && (windWords.test(said) || winds > 2))
      lower(input, 'other', 0.65);
  }
}
