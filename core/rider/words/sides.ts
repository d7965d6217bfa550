import type { WordTable } from './table.ts';

/** Left and right of a pair. Words of the house's view (jardin, cour) only name the two sides of a pair here. */
export type SideWord = 'left' | 'right' | 'centre' | 'both' | 'stereo';

export const sides: WordTable<SideWord> = {
  both: {
    trade:
      'l/r, lr, l+r, l&r, l-r, left right, left and right, left + right, left & right, r/l, l and r, l & r, lt/rt, sl sr, sr sl, stage left stage right, l n r, l / r stereo',
    de: 'li/re, links rechts, links und rechts, links/rechts, re/li, l u r, l und r',
    fr: 'g/d, gauche droite, gauche et droite, gauche/droite, jar/cour, jardin cour, jardin/cour, cour/jardin, j/c, g et d',
    es: 'i/d, izq/der, izquierda derecha, izquierda/derecha, izquierda y derecha, izq y der, izq der, l y r, izq/dcha, dcha/izq',
    it: 'sx/dx, dx/sx, sinistra destra, sinistra/destra, sinistro destro, sx e dx, sx dx',
    nl: 'links/rechts, links en rechts, l en r',
    pt: 'e/d, esq/dir, esquerda direita, esquerda/direita, esq dir, esquerda e direita, l e r',
  },
  stereo: {
    trade: 'stereo, st, ster, in stereo, stereo pair, pair, stereo di, xy, ab, ortf, stereo out',
    de: 'stereo, paar, stereopaar, in stereo',
    fr: 'stéréo, couple, paire, en stéréo, couple stéréo',
    es: 'estéreo, par, estereo, en estéreo, par estéreo',
    it: 'stereo, coppia, in stereo',
    nl: 'stereo, paar, in stereo',
    pt: 'estéreo, par, em estéreo, estereo',
  },
  left: {
    trade: 'l, left, lt, lft, stage left, sl, lh, left side, hl, house left',
    de: 'links, li, linke, linkes, lks, ganz links',
    fr: 'gauche, g, jardin, jar, gche, à jardin, côté jardin, coté jardin',
    es: 'izquierda, izq, izquierdo, i, izda, izqda',
    it: 'sx, sinistra, sinistro, sin',
    nl: 'links, li, linker',
    pt: 'esquerda, esq, esquerdo, e',
  },
  right: {
    trade: 'r, right, rt, rgt, rght, stage right, sr, rh, right side, hr, house right',
    de: 'rechts, re, rechte, rechtes, rts, ganz rechts',
    fr: 'droite, d, cour, dte, drt, à cour, côté cour, coté cour, droit',
    es: 'derecha, der, dcha, derecho, d, dch',
    it: 'dx, destra, destro, des',
    nl: 'rechts, re, rechter',
    pt: 'direita, dir, direito, d',
  },
  centre: {
    trade: 'c, centre, center, ctr, sc, dsc, middle, mid, mono, front',
    de: 'mitte, mittig',
    fr: 'centre, milieu',
    es: 'centro, central',
    it: 'centro, centrale',
    nl: 'midden',
    pt: 'centro, meio',
  },
};
