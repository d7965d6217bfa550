import type { WordTable } from './table.ts';

/** Between a performer and what they wish: "Anna needs lots of herself". */
export const verbs: WordTable<'wishes' | 'plays' | 'listens'> = {
  wishes: {
    trade:
      'needs, wants, would like, likes, need, want, requires, wishes, asks for, prefers, wants to hear, needs to hear, hears, would love, must have, should have, should get, gets, has to hear, will need, wants just, please give, only wants, only needs, loves',
    de: 'braucht, möchte, will, wünscht, hätte gern, hätte gerne, benötigt, brauchen, möchten, wünscht sich, hört, bekommt, will hören, hört gern, hört gerne, kriegt, wollen',
    fr: 'veut, voudrait, a besoin de, a besoin d, souhaite, aimerait, demande, entend, besoin de, veut entendre, désire, souhaiterait',
    es: 'quiere, necesita, pide, desea, le gusta, quiere oír, quiere escuchar, prefiere, necesita oír',
    it: 'vuole, vorrebbe, ha bisogno di, chiede, desidera, gradisce, vuole sentire, preferisce, necessita di',
    nl: 'wil, heeft nodig, wenst, heeft graag, hoort graag, wil graag, vraagt, wil horen, wil graag horen',
    pt: 'quer, precisa de, precisa, deseja, pede, gostaria de, gosta de, quer ouvir, gostaria',
  },
  plays: {
    trade: 'plays, sings, on, is on, plays the, sings lead, does, is playing, playing, singing',
    de: 'spielt, singt, ist, am, an der, an den, macht',
    fr: 'joue, chante, à la, au, joue de la, joue du, est à la, est au',
    es: 'toca, canta, en la, al',
    it: 'suona, canta, al, alla',
    nl: 'speelt, zingt, op',
    pt: 'toca, canta, na, no',
  },
  listens: {
    trade:
      'listens, uses, use, is on, are on, uses own, listens on, monitors on, we use, i use, using, on own, works with, with own, have own, brings own, plays with, wears',
    de: 'nutzt, benutzt, hört über, spielt mit, verwendet, benutzen, nutzen, verwenden, hören über',
    fr: 'utilise, utilisent, sur, est en, sont en, écoute sur',
    es: 'usa, usan, utiliza, escucha por, usamos, lleva',
    it: 'usa, usano, utilizza, ascolta in, usiamo',
    nl: 'gebruikt, gebruiken, luistert via, speelt met',
    pt: 'usa, usam, utiliza, escuta em, usamos',
  },
};
