import { fold, tidy } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import type { Work } from '../page/work.ts';

/** "Because the amp is loud enough": why something is wished wishes nothing. */
const reasons =
  /(?<![\p{L}])(?:because|cause|cos|since (?:he|she|they|i|we|it)|as (?:he|she|they|i|we) (?:is|are|am|has|have|can|hears?)|so (?:that )?(?:he|she|they|i|we) (?:can|could|hears?)|weil|denn|damit|da (?:er|sie|ich|wir)|parce qu['’]?(?:e|il|elle)?|car il|car elle|pour qu['’]|puisqu['’]?|porque|ya que|pues|perch[eé]|poich[eé]|siccome|se (?:ne|ce|c['’]è|si|lo|avete|potete|volete|possibile)|omdat|want|zodat|pois|j[aá] que|para que)(?![\p{L}])[^,;.\n]*/giu;

/** "They are loud enough", "elle est assez forte": it tells of something that was named, and wishes nothing. */
export const isRemark = (segment: string) =>
  /^(?:(?:they|it|that|those|these|he|she)(?:['’](?:s|re)| is| are| sounds?)|(?:die|sie|er|es|das|der) (?:ist|sind|klingt|klingen|hört)|(?:ça|elle|il|elles|ils|c['’])\s?(?:est|sont|sonne)|(?:ya|eso|ella|él) (?:suena|está|es|se oye)|(?:è|sono|suona|si sente) (?:già|abbastanza)|(?:die|dat|het|ze) (?:is|zijn|staat|klinkt)|(?:já|ela|ele|isso) (?:soa|está|é|se ouve))(?!\p{L})/iu.test(
    segment,
  );

/** A word with a full stop behind it and another word. */
const stopped = /(?<!\p{L})(\p{L}+)\.\s+(?=\p{L})/gu;
/** Known as they are, and no words by themselves. */
const shortened =
  /^(?:ges|git|guit|gtr|voc|akk|ak|el|kl|gr|perc|trp|tpt|trb|pos|chit|batt|tast|acust|elettr|bat|cl|ch|izq|der|dcha|princ|ppal|lead|st|ac|elec|acou|contrabb?|cb|sass|tamb|fisarm|tromb?|clar|clarin|keyb|acord|acc|trpt|tpa|tbn|perk|schlagz|bck|back|coro?|orq|orch)$/;

/** No word by itself but the beginning of a source's: "contrabb". */
const isCutFromSource = (key: string) =>
  key.length >= 4 &&
  !wishWords.tokens.has(key) &&
  [...wishWords.senses].some(
    ([word, senses]) => word.startsWith(key) && senses.some(({ subject }) => subject === 'source'),
  );

/**
 * "Ges. Merle", "contrabb. pick-up": the full stop of a shortened word ends no wish (common practice). A shortened
 * word is none that is known, but the beginning of one that is.
 */
function withoutShortStops(text: string, { tongue }: Work): string {
  return text.replace(stopped, (whole, word: string) => {
    const key = fold(word);
    if (tongue.names.has(key) || tongue.people.has(key)) return whole;
    return shortened.test(key) || isCutFromSource(key) ? `${word} ` : whole;
  });
}

/** "Rubens Stimme", "Odile's keys", "Joss' vocal": whose it is, in the name's own spelling. */
const withPlainNames = (text: string, { tongue }: Work): string =>
  text.replace(/(?<!\p{L})(\p{Lu}\p{L}+?)(?:['’]s|s['’]?|['’])(?!\p{L})/gu, (whole, name: string) =>
    tongue.names.has(fold(name)) && !tongue.names.has(fold(whole)) ? name : whole,
  );

/** "Tuba! Tuba! Tuba!" */
const cheered = /(?<!\p{L})(\p{L}+)!(?:\s+\1!)+/giu;

/** A mark or an "and" that a piece begins with: the Portuguese "e" is also short for the left side. */
const leading =
  /^[-–*\s]+(?=\p{L})|^(?:and|und|et|y|e|ed|en|plus(?! d)|sowie|dazu|puis|poi|luego|dan|depois)\s+(?=\p{L})|^(?:più|más|mais)\s+(?=(?:il?|la|le|lo|gli|el|los|las|sus?|[oa]s?)\s)/iu;

/** The pieces of a text of wishes: between commas, full stops, bullets and dashes. */
export function segmentsOf(work: Work, text: string): string[] {
  return withoutShortStops(
    withPlainNames(
      text
        .replace(/(\d),(\d)/g, '$1.$2')
        .replace(reasons, '')
        .replace(cheered, '$1!!'),
      work,
    ),
    work,
  )
    .split(
      /\s*[,;•·\n]\s*|\.\s+(?=\p{L})|(?<=!)\s+(?=\p{Lu})|\s+\/\s+|(?<=\p{L}{3})\/(?=\p{L}{3})|\s+[-–—]\s+(?=\p{L})/u,
    )
    .map((segment) => tidy(segment.replace(leading, '').replace(/[.\s]+$|(?<!!)!$/gu, '')))
    .filter((segment) => segment !== '');
}
