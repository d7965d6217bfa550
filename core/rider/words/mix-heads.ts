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

/** Between a listener and their device: "the horns on two wedges", "wedge for Ada". */
export const joints: WordTable<'on' | 'for'> = {
  on: {
    trade:
      'on, via, through, over, with, w/, wearing, off, from, at, in, behind, is on, are on, both on, all on',
    de: 'auf, über, mit, an, am, im, hinter, vor, per, beide auf, alle auf',
    fr: 'sur, avec, en, dans, par, via, au, aux, derrière, est sur, sont sur, tous en',
    es: 'en, con, por, sobre, tras, detrás de, van con, va con',
    it: 'su, con, in, sul, sulla, sulle, via, dietro, tutti in',
    nl: 'op, met, via, over, achter, aan, in, beiden op, allemaal op',
    pt: 'em, com, no, na, nos, nas, por, via, atrás de',
  },
  for: {
    trade: 'for, for the, of, of the, belongs to',
    de: 'für, für die, für den, für das, fürs, von, vom, der, des',
    fr: 'pour, pour le, pour la, pour les, de, du, des, pour l',
    es: 'para, para el, para la, para los, para las, de, del, de la, de los',
    it: 'per, per il, per la, per i, per gli, per le, per l, di, del, della, dei, delle, dello',
    nl: 'voor, voor de, voor het, van, van de, van het',
    pt: 'para, para o, para a, para os, para as, de, do, da, dos, das, pra, pro',
  },
};
