import type { WordTable } from './table.ts';

/** Words at which a wish turns: from what is heard to what is not, to something beside it, or to a comparison. */
export const wishTurns: WordTable<'without' | 'with' | 'than' | 'level' | 'when'> = {
  without: {
    trade: 'without, w/o, minus',
    de: 'ohne',
    fr: 'sans',
    es: 'sin',
    it: 'senza',
    nl: 'zonder',
    pt: 'sem',
  },
  with: {
    trade: 'with, w, but, plus, along with, together with',
    de: 'mit, aber, dazu, zusammen mit, jedoch',
    fr: 'avec, mais, plus',
    es: 'con, pero, junto con',
    it: 'con, ma, però, insieme a',
    nl: 'met, maar, samen met',
    pt: 'com, mas, junto com, porém',
  },
  than: {
    trade: 'than',
    de: 'als',
    fr: 'que, que de, que la, que le, que les',
    es: 'que, que de',
    it: 'che, rispetto a, rispetto alla, rispetto al',
    nl: 'dan',
    pt: 'que, do que',
  },
  level: {
    trade:
      'under, below, underneath, beneath, just under, just below, a notch below, a notch above, above, just above, over, as loud as, as quiet as, as much as, same level as, the same level as, equal to, on par with, level with, in relation to, relative to, half as loud as, twice as loud as',
    de: 'unter, unter den, unter der, unter dem, über der, über den, knapp unter, knapp über, so laut wie, so leise wie, so viel wie, genauso laut wie, genauso viel wie, gleich laut wie, gleichauf mit, im verhältnis zu, halb so laut wie, doppelt so laut wie',
    fr: 'sous, en dessous de, en dessous du, en dessous des, au dessous de, au dessus de la, au dessus du, au dessus des, aussi fort que, aussi forte que, autant que, autant de, au même niveau que, par rapport à, par rapport au, moitié moins que',
    es: 'por debajo de, por debajo del, debajo de, debajo del, por encima del, por encima de la, tan fuerte como, tan alto como, tan alta como, tanto como, al mismo nivel que, al nivel de, al nivel del, respecto a, la mitad que, el doble que',
    it: 'sotto la, sotto il, sotto le, sotto i, sopra la, sopra il, sopra le, sopra i, forte come, alto come, alta come, tanto quanto, quanto la, quanto il, allo stesso livello di, al livello di, al livello della, pari a, pari alla, la metà della, la metà del, il doppio della, il doppio del',
    nl: 'onder de, onder het, boven de, boven het, net onder, net boven, even hard als, even luid als, net zo hard als, net zoveel als, zo hard als, op gelijk niveau met, ten opzichte van, half zo hard als, dubbel zo hard als',
    pt: 'abaixo de, abaixo da, abaixo do, abaixo das, abaixo dos, acima da, acima do, acima das, acima dos, tão alto como, tão alto quanto, tão alta como, tanto quanto, tanto como, ao mesmo nível de, ao mesmo nível da, ao nível da, ao nível do, em relação à, em relação ao, metade da, metade do, o dobro da, o dobro do',
  },
  when: {
    trade: 'in, on, if, when, for, during, where, at, until, while, whenever, from',
    de: 'bei, beim, wenn, im, in, während, falls, für, zum, ab, bis, solange',
    fr: 'dans, pendant, si, quand, sur, pour, lors, aux, au, à, en, jusqu',
    es: 'en, si, cuando, durante, para, hasta, mientras',
    it: 'nel, nella, nei, nelle, se, quando, durante, per, in, fino, sul, sui',
    nl: 'bij, als, in, tijdens, wanneer, voor, tot, zolang',
    pt: 'no, na, nos, nas, se, quando, durante, para, em, até, enquanto',
  },
};
