import { fold } from '../language/text.ts';
import type { Aside } from '../words/titles.ts';

/**
 * Lines that are told at a glance to be something other than sources and mixes. First match holds; the pattern is
 * looked for in the folded text (lower case, no accents).
 */
const signs: { aside: Aside | 'greeting' | 'page' | 'mail'; pattern: RegExp }[] = [
  {
    aside: 'mail',
    pattern:
      /^(?:subject|betreff|objet|asunto|oggetto|onderwerp|assunto|from|to|von|an|cc|sent|gesendet|fwd|re)\s*:/,
  },
  {
    aside: 'contacts',
    pattern:
      /[\w.+-]+@[\w-]+\.\w+|\bwww\.|https?:|\btel(?:efono|efon|ephone)?\b[ .:]*\+?\d|\bphone\b|\bmobile\b|\bhandy\b|\bportable\b[ :]*\d|\+\d{2}[ \d()/-]{6,}|\b0\d{2,4}[ /-]\d{5,}/,
  },
  {
    aside: 'page',
    pattern:
      /^(?:page|seite|pagina|pag\.?|p\.)\s*\d+(?:\s*(?:of|von|de|di|van|\/)\s*\d+)?$|^\d+\s*\/\s*\d+$|^-\s*\d+\s*-$/,
  },
  {
    aside: 'greeting',
    pattern:
      /^(?:hi|hello|hey|hallo|dear|liebe|lieber|bonjour|salut|hola|ciao|buongiorno|ola|moin|beste|servus|good (?:morning|evening|afternoon)|guten tag)\b(?!.*\b(?:hat|mic|wedge)).{0,50}$|^(?:best|kind|many|warm)? ?(?:regards|wishes|thanks|cheers)\b.{0,40}$|^(?:bises|bisous|amities|amicalement|bien a (?:vous|toi)|a plus|besos|abrazos?|un abrazo|(?:un )?salut[oi]|cari saluti|tanti saluti|un abbraccio|baci|a presto|kusjes|liefs|groet|beijos?|beijinhos|abracos?|um abraco|ate (?:breve|ja|logo)|hasta (?:pronto|luego)|tschuss|mit freundlichen|herzliche|love|cheers|ciao|vorab danke)\b(?!.*\b(?:mic|wedge|di)\b)[^:]{0,60}$|^(?:thanks|thank you|thx|danke|merci|gracias|grazie|obrigad[oa]|bedankt|many thanks|viele grusse|liebe grusse|beste grusse|lg|vg|mfg|cordialement|saludos|un saludo|saluti|groetjes|groeten|met vriendelijke groet|abracos?|a bientot|see you|bis (?:bald|dann))\b.{0,60}$/,
  },
];

export const asideSigns = {
  contacts: 'A way to reach somebody.',
  page: 'A page number.',
  greeting: 'A greeting.',
  mail: 'The head of a mail.',
} as const;

/** What a line is at a glance, if it is none of a monitor plan's business. */
export function asideOf(text: string): keyof typeof asideSigns | null {
  const folded = fold(text);
  return (
    (signs.find(({ pattern }) => pattern.test(folded))?.aside as keyof typeof asideSigns | undefined) ?? null
  );
}
