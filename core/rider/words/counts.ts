import type { WordTable } from './table.ts';

/** Numbers written as words, from two on: "one" is an article in most languages and counts nothing. */
export type CountWord = '2' | '3' | '4' | '5' | '6' | '7' | '8';

export const counts: WordTable<CountWord> = {
  2: {
    trade: 'two, both, a pair of, pair of',
    de: 'zwei, beide, zwo, ein paar',
    fr: 'deux, une paire de, les deux',
    es: 'dos, un par de, ambos, ambas',
    it: 'due, un paio di, entrambi, entrambe',
    nl: 'twee, beide, een paar',
    pt: 'dois, duas, um par de, ambos, ambas',
  },
  3: { trade: 'three', de: 'drei', fr: 'trois', es: 'tres', it: 'tre', nl: 'drie', pt: 'três' },
  4: {
    trade: 'four',
    de: 'vier',
    fr: 'quatre',
    es: 'cuatro',
    it: 'quattro',
    nl: 'vier',
    pt: 'quatro',
  },
  5: { trade: 'five', de: 'fünf', fr: 'cinq', es: 'cinco', it: 'cinque', nl: 'vijf', pt: 'cinco' },
  6: { trade: 'six', de: 'sechs', es: 'seis', it: 'sei', nl: 'zes', pt: 'seis' },
  7: { trade: 'seven', de: 'sieben', fr: 'sept', es: 'siete', it: 'sette', nl: 'zeven', pt: 'sete' },
  8: { trade: 'eight', de: 'acht', fr: 'huit', es: 'ocho', it: 'otto', pt: 'oito' },
};
