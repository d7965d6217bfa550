import type { Amount } from '../../show/words.ts';
import type { WordTable } from './table.ts';

/** How much of a source is wished. Of two equal words, "a bit more" is little and "much more" is lots. */
export const amounts: WordTable<Amount> = {
  none: {
    trade:
      'no, none, without, off, nothing, out, w/o, not, zero, do not want, does not want, don t want, don t need, doesn t want, doesn t need, no need for, please no, not any, never, keep out, exclude, avoid, minus, cut, mute',
    de: 'kein, keine, keinen, keiner, keines, ohne, nicht, gar nicht, aus, null, nichts, überhaupt kein, gar kein, gar keine, bitte kein, bitte keine, auf keinen fall, niemals, keinerlei, weglassen, will kein, will keine',
    fr: 'sans, pas de, aucun, aucune, rien, pas d, pas du tout, surtout pas de, ne veut pas de, zéro, jamais, pas, surtout pas, point de, ni',
    es: 'sin, nada de, ningún, ninguna, no, nada, cero, no quiere, nunca, tampoco',
    it: 'senza, niente, nessun, nessuna, no, nessuno, zero, non, nulla, via, mai',
    nl: 'geen, niet, zonder, niks, nul, helemaal geen, niets, nooit, weg',
    pt: 'sem, nada de, nenhum, nenhuma, não, nada, zero, nao, nunca',
  },
  only: {
    trade: 'only, just, nothing but, solely, exclusively, just only',
    de: 'nur, ausschließlich, lediglich, bloß, nix außer, nichts außer',
    fr: 'seulement, uniquement, juste, que, exclusivement, rien que',
    es: 'solo, sólo, solamente, únicamente, nada más que, exclusivamente',
    it: 'solo, soltanto, solamente, unicamente, esclusivamente',
    nl: 'alleen, enkel, slechts, alleen maar, uitsluitend',
    pt: 'só, apenas, somente, unicamente',
  },
  little: {
    trade:
      'a bit of, a bit, little, a little, bit, touch, a touch of, a touch, hint, a hint of, a hint, low, quiet, quietly, soft, softly, slightly, small amount of, tiny bit of, a tad, tad, tad of, a tad of, subtle, background level, lower, little bit, a little bit of, little bit of, a bit more, a little more, slight, a dash of, dash, minimal, less, some low, down, underneath, way down, light, lightly, barely, a taste of, taste, a smidge of, smidge, hair, a hair of, not too much, not much, not so much, not too loud, not loud, tiny, a drop of, very little, just a little, just a touch of, just a bit of, just a hint of, only a little, only a bit of, low level, a whisper of, small, a small amount of, faint, quieter, bit of, just a bit, just a touch, softer, a sprinkle of, sprinkle of, low volume, tiny bit, tucked in',
    de: 'wenig, ein wenig, bisschen, ein bisschen, leise, dezent, minimal, hauch, einen hauch, leicht, ganz wenig, geringfügig, ein bißchen, weniger, nur wenig, nur etwas, sehr wenig, nicht so viel, nicht zu viel, nicht zu laut, einen hauch von, im hintergrund, nen hauch, bissl, bisserl, a bissl, eher leise, ganz leise, nur ein bisschen, schwach, kaum, ein klein wenig, ein kleines bisschen, nur leicht, nur ganz wenig, nur ein wenig, klein wenig, nur leise',
    fr: 'un peu de, un peu, peu de, peu, léger, légère, légèrement, un soupçon de, faible, doucement, discret, un petit peu de, un petit peu, très peu de, moins de, pas trop de, juste un peu de, une pointe de, un chouïa de, pas trop, un peu d, peu d, très peu, bas, un filet de, une touche de, en fond, pas trop fort, discrète, discrètement, un soupçon d, un tout petit peu de, juste un peu d, juste un peu, moins',
    es: 'poco, poca, un poco de, un poco, poquito, un poquito de, bajo, bajito, apenas, menos, muy poco, leve, ligero, algo menos de, suave, un pelín de, no mucho, no mucha, un toque de, pocos, pocas, un poquito, bajita, un pelín, de fondo, muy poca, no muy alto, un punto de',
    it: 'poco, poca, un po di, un po, un pochino, leggero, pochino, poco di, basso, meno, pochissimo, un pizzico di, pochi, poche, appena, un filo di, leggera, un pochino di, un po d, non troppo, non troppa, sotto, leggermente, non tanto, un tocco di, pochissima, di sottofondo, appena un po di',
    nl: 'weinig, beetje, een beetje, zacht, klein beetje, iets, een klein beetje, minder, heel weinig, licht, subtiel, een vleugje, niet te veel, niet te hard, vleugje, een tikje, zachtjes, op de achtergrond, een vleug, pietsie, heel zacht, niet te luid, wat minder, tikje',
    pt: 'pouco, pouca, um pouco de, um pouco, baixo, leve, menos, pouquinho, um pouquinho de, um toque de, suave, muito pouco, só um pouco de, um bocadinho de, um bocado de, um pouco da, um pouco do, um pouquinho, um bocadinho, muito pouca, baixinho, poucos',
  },
  some: {
    trade:
      'some, medium, normal, mid, moderate, a fair bit of, med, average, ok, present, moderately, decent, some of, medium level, moderate amount of, usual, standard level, regular, natural, even, nominal, balanced, fair amount of, yes, half',
    de: 'etwas, mittel, normal, mittlere, moderat, bisserl mehr, mittelviel, mäßig, mittellaut, ein bisschen mehr, halb, solide, ausgewogen, mittlerer, normale, normaler, ja',
    fr: 'un peu plus de, moyen, normal, moyenne, moyennement, du, de la, modéré, assez de, normale, normalement, modérément, un peu plus, correct, oui',
    es: 'algo de, medio, normal, moderado, algo, media, un poco más de, regular, medianamente, moderada, normales, sí, bastante normal',
    it: 'medio, normale, un po più di, media, moderato, abbastanza, del, della, dei, delle, discreto, moderata, normali, un po di più, sì',
    nl: 'wat, gemiddeld, normaal, medium, matig, wat meer, iets meer, redelijk wat, gewoon, ja, normale',
    pt: 'algum, médio, normal, média, moderado, alguma, um pouco mais de, regular, moderada, sim, mais ou menos, alguns',
  },
  lots: {
    trade:
      'lots of, lots, a lot of, a lot, loud, plenty, plenty of, up, full, more, much, very loud, high, high level, hot, heavy, heaps of, tons of, loads of, mainly, mostly, on top, first, 1st, priority, loudest, prominent, extra, max, maximum, loud please, much more, upfront, up front, big, strong, way up, really loud, dominant, above all, most of, cranked, main, important, nice and loud, louder, loud and clear, clear, high volume, as loud as possible, number one, front and centre, good amount of, a good amount of, good level of, good level, solid, lot of, a ton of, bit louder, a bit louder, all the, most important, primarily, very high, most, on top of everything, predominantly, a great deal of, heavier, in your face, boosted, massive, huge',
    de: 'viel, laut, viel mehr, voll, sehr laut, mehr, ordentlich, satt, deutlich, sehr viel, hauptsächlich, vor allem, vorrangig, oben drauf, an erster stelle, kräftig, präsent, lauter, gut laut, maximal, laute, lauten, reichlich, richtig laut, richtig viel, schön laut, fett, vorne, ganz vorne, dominant, laut und deutlich, ganz laut, viele, jede menge, überwiegend, möglichst laut, recht laut, obendrauf, sehr präsent, gut hörbar, massig, prominent, stark, priorität, ganz viel, vorwiegend, höher, in erster linie',
    fr: 'beaucoup de, beaucoup, fort, plein de, très fort, plus de, principalement, surtout, devant, énormément de, bien fort, à fond, forte, max, bien devant, priorité, plus, beaucoup d, pas mal de, un max de, plein, élevé, bien présent, en avant, essentiellement, très présent, bien présente, énormément, un maximum de, bien en avant, en priorité, plus d, haut, plus fort, forts, avant tout, énormément d, bien',
    es: 'mucho, mucha, bastante, fuerte, alto, más, mucho de, muy alto, muy fuerte, principalmente, sobre todo, harto, alta, a tope, muchos, muchas, mucho más, bien arriba, al frente, más de, bien alto, bien fuerte, a full, presente, prioridad, muchísimo, muchísima, arriba, bien presente, máximo, altos, fuertes, en primer plano, full, bastantes',
    it: 'molto, molta, forte, tanto, tanta, alto, più, tanto di, in evidenza, soprattutto, principalmente, parecchio, bello forte, moltissimo, alta, molti, molte, tanti, tante, davanti, più di, in primo piano, a palla, ben presente, presente, priorità, moltissima, parecchia, al massimo, alto volume, ben alto, bella forte, più forte',
    nl: 'veel, hard, luid, meer, heel veel, vol, flink, flink wat, vooral, duidelijk, erg veel, lekker hard, hoog, veel meer, harder, luider, bovenop, voornamelijk, prominent, ruim, goed hoorbaar, met name, hoofdzakelijk, volop, heel hard, lekker veel, erg hard, zeer luid, zeer veel, prioriteit, stevig',
    pt: 'muito, muita, bastante, alto, mais, bem alto, forte, principalmente, sobretudo, alta, muitos, muito mais, na frente, mais de, muitas, bem forte, no máximo, presente, bem presente, prioridade, muito alto, acima de tudo, em destaque, muito forte, altos, bem alta',
  },
};

/** Words that weaken or strengthen the amount beside them without being one. */
export const hedges: WordTable<'skip'> = {
  skip: {
    trade:
      'please, pls, want, wants, need, needs, like, likes, would like, in, of, the, a, an, with, for, and, plus, also, very, really, as, at, on, to, my, her, his, their, our, your, i, we, she, he, they, hear, is, are, be, it, mix, from, then, all in, level, should, must, can, have, get, has, me too, too, so, but, wish, wishes, hears, would, thanks, thank you, prefers, prefer, asks for, mostly just, will, want to hear, wants to hear, needs to hear, sound, in the, that, there, if possible, that s it, rather, quite, anything, any, else, s, into, in ears, d, ll, am, gets, required, require, requires, mic, mics, channel, pretty, monitor, signal, both, let, kind',
    de: 'bitte, möchte, braucht, will, brauche, brauchen, mit, und, plus, auch, sehr, der, die, das, den, dem, im, in, von, vom, auf, für, ich, wir, sie, er, sein, seine, ihr, ihre, mein, meine, dann, dazu, sonst, hören, wünscht, hätte gern, gerne, gern, hätte, sollte, soll, aber, ein, eine, einen, einem, zu, am, hört, wunsch, etwa, danke, ist, sind, haben, hat, noch, so, bekommt, bisl, signal, ganz',
    fr: 's il vous plaît, svp, veut, voudrait, besoin de, besoin, a besoin de, a besoin d, avec, et, le, la, les, l, de, des, d, du, dans, un, une, son, sa, ses, mon, ma, mes, je, nous, il, elle, aussi, puis, au, aux, très, plus de tout, souhaite, demande, mais, pour, en, merci, retour, ainsi que, entend, leur, leurs, est',
    es: 'por favor, quiere, necesita, necesito, quiero, con, y, el, la, los, las, de, del, en, un, una, su, sus, mi, mis, yo, también, muy, para, al, pero, además, e, desea, gracias, pide, más bien, escucha, prefiere, le gusta, señal',
    it: 'per favore, vuole, vorrebbe, serve, servono, con, e, ed, il, lo, la, i, gli, le, di, in, un, una, suo, sua, mio, mia, anche, nel, nella, l, d, ma, per, grazie, ha bisogno di, desidera, dal, dalla, preferisce, chiede, da, suoi, sue, sente',
    nl: 'graag, wil, nodig, heeft nodig, met, en, de, het, een, van, in, zijn, haar, mijn, ook, dan, erg, aub, alstublieft, op, heeft, wenst, maar, plus, voor, bedankt, hoort, moet, is, hebben, krijgt, willen, wel',
    pt: 'por favor, quer, precisa, precisa de, gostaria, com, e, o, a, os, as, de, do, da, em, um, uma, seu, sua, meu, minha, também, no, na, para, dos, das, mas, deseja, obrigado, gostaria de, pede, prefere',
  },
};
