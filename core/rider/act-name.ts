import { fold, tidy } from './text.ts';

const labels =
  /^(?:band|artist|artiste|act|group|groupe|gruppe|banda|artista|grupo|gruppo|name of (?:the )?(?:band|act)|künstler|projekt|project|band name|bandname|artiest)\s*[:：=]\s*(.+)$/i;
const riderWords =
  /\b(?:technical|tech|audio|stage|monitor|sound)?\s*riders?\b|\btech(?:nical)? ?spec(?:s|ification)?\b|\btechrider\b|\bb[uü]hnenanweisung\b|\btechnikrider\b|\bfiche technique\b|\bscheda tecnica\b|\bt[eé]cnico\b|\bficha t[eé]cnica\b|\btechnische rider\b|\binput ?list\b|\bchannel ?list\b|\bkanalliste\b|\btechnische[rn]?\b|\bson\b|\bpatch ?list\b|\bversion\b|\bv\d+(?:\.\d+)?\b|\b(?:19|20)\d\d\b|\b\d{1,2}[./]\d{1,2}[./]?\d{0,4}\b|\bhospitality\b|\b(?:updated?|stand|date|datum|valid|rev(?:ision)?)\b.*$/gi;

/** The act's name where a line gives it ("Band: ..."), or where a title of the rider holds it; else null. */
export function actNameIn(text: string): string | null {
  const labelled = labels.exec(tidy(text))?.[1];
  if (labelled) return tidy(labelled).slice(0, 200);
  if (
    text.length > 90 ||
    !/rider|b[uü]hnenanweisung|fiche technique|scheda tecnica|ficha t[eé]cnica|tech ?spec/i.test(fold(text))
  )
    return null;
  const rest = tidy(text.replace(riderWords, ' ').replace(/[-–—|:,()/_#*"“”]+/g, ' '));
  const named = rest.replace(/^(?:for|of|von|für|de|du|of the|di|van|and|&)\s+/i, '');
  return /\p{L}{2,}/u.test(named) && named.split(' ').length <= 6 ? named : null;
}

/** "TECHNICAL RIDER" and nothing else. */
export function isRiderTitle(text: string): boolean {
  return (
    text.length < 60 &&
    /rider|fiche technique|scheda tecnica|ficha t[eé]cnica|b[uü]hnenanweisung/i.test(text) &&
    !/\p{L}{2}/u.test(text.replace(riderWords, ' '))
  );
}
