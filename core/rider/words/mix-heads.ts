import type { WordTable } from './table.ts';

/** Several listeners hear one mix, or stand at one wedge. */
export const sharing: WordTable<'together'> = {
  together: {
    trade:
      'together, shared, sharing, share, shares, both share, jointly, in common, as one, between them, to share, joint, all together, share one, have to share, are sharing',
    de: 'zusammen, gemeinsam, gemeinsamer, gemeinsame, gemeinsames, teilen, teilen sich, teilt, geteilt, geteilter, geteiltes, zu zweit, zu dritt, zu viert, miteinander, beide zusammen, gemeinsam genutzt',
    fr: 'ensemble, en commun, commun, commune, partagé, partagée, partagés, partagées, se partagent, partagent, à deux, à trois, à quatre, à partager, en partage',
    es: 'juntos, juntas, en común, común, compartido, compartida, compartidos, compartidas, comparten, compartiendo, a medias, entre los dos, entre las dos, entre ambos',
    it: 'insieme, in comune, comune, condiviso, condivisa, condivisi, condivise, condividono, si dividono, dividono, in condivisione, in due, in tre',
    nl: 'samen, gezamenlijk, gezamenlijke, gedeeld, gedeelde, delen, deelt, met zijn tweeën, met z n tweeën, met z n drieën, met elkaar',
    pt: 'juntos, juntas, em comum, comum, partilhado, partilhada, partilhados, partilhadas, partilham, compartilham, compartilhado, compartilhada, compartilhados, dividem, a meias, em conjunto',
  },
};

/** Between a listener and their device: "the horns on two wedges", "wedge for Ada", "the wedge of Ada". */
export const joints: WordTable<'on' | 'for' | 'of'> = {
  on: {
    trade:
      'on, via, through, over, with, w/, wearing, off, from, at, in, behind, is on, are on, both on, all on, is in, are in',
    de: 'auf, über, mit, an, am, im, hinter, vor, per, beide auf, alle auf, in, bei',
    fr: 'sur, avec, en, dans, par, via, au, aux, derrière, est sur, sont sur, tous en, dans le, dans la, dans les, chez, est en',
    es: 'en, con, por, sobre, tras, detrás de, van con, va con, en la, en el, en los, en las, está con, va en, van en',
    it: 'su, con, in, sul, sulla, sulle, via, dietro, tutti in, nella, nel, nelle, negli, nei, sta con, è con, è in',
    nl: 'op, met, via, over, achter, aan, in, beiden op, allemaal op, bij, zit op, in de, op de',
    pt: 'em, com, no, na, nos, nas, por, via, atrás de, está com, fica com, está em',
  },
  for: {
    trade: 'for, for the, belongs to',
    de: 'für, für die, für den, für das, fürs',
    fr: 'pour, pour le, pour la, pour les, pour l',
    es: 'para, para el, para la, para los, para las',
    it: 'per, per il, per la, per i, per gli, per le, per l',
    nl: 'voor, voor de, voor het',
    pt: 'para, para o, para a, para os, para as, pra, pro, para o da, para a da',
  },
  of: {
    trade: 'of, of the',
    de: 'von, vom, der, des',
    fr: 'de, du, des, de la, de l, d',
    es: 'de, del, de la, de los',
    it: 'di, del, della, dei, delle, dello, dell',
    nl: 'van, van de, van het',
    pt: 'de, do, da, dos, das',
  },
};

/** Before a listener at the beginning of a sentence, where a list is told in prose. */
export const openers: WordTable<'and then' | 'please'> = {
  'and then': {
    trade:
      'and, then, also, next, finally, last, lastly, plus, as for, and then, and finally, last but not least, after that',
    de: 'und, dann, dann noch, außerdem, schließlich, zuletzt, zum schluss, sowie, und dann, und zum schluss, dazu, ferner, was betrifft',
    fr: 'et, puis, ensuite, enfin, quant à, et puis, et enfin, pour finir, aussi, sinon',
    es: 'y, luego, después, por último, en cuanto a, y luego, finalmente, además, y por último',
    it: 'e, poi, infine, quanto a, e poi, e infine, inoltre, per finire',
    nl: 'en, dan, verder, tot slot, als laatste, en dan, daarna, ook, ten slotte, tenslotte',
    pt: 'e, depois, por fim, quanto a, quanto ao, quanto à, finalmente, e depois, e por fim, a seguir',
  },
  please: {
    trade:
      'please give, please send, please put, could you give, can you give, give, please, could, can, could we give, please let, let',
    de: 'bitte, bitte gebt, gebt, gib, bitte gib, geben sie, bei',
    fr: 'merci de mettre, mettez, mettre, merci de donner, donnez, svp, chez, merci de prévoir',
    es: 'por favor, poned, poner, ponedle, ponle a, denle a, dadle a',
    it: 'per favore, date, mettete, date a, mettete a, dare a',
    nl: 'graag, graag voor, geef, bij, gelieve, geef aan',
    pt: 'por favor, deem, deem à, deem ao, dar à, dar ao, ponham, dêem',
  },
};
