import type { SourceGroup } from '../../show/source-kinds.ts';
import type { WordTable } from './table.ts';

/** Words of a wish that name many sources at once. */
export type GroupWord = SourceGroup | 'everything' | 'rest' | 'rhythm' | 'lead vocals' | 'backing vocals';

export const groupWords: WordTable<GroupWord> = {
  rest: {
    trade:
      'everything else, rest, the rest, others, everyone else, all others, the others, all else, all other, the rest of the band, rest of the band, rest of band, all the rest, remaining, everybody else, other instruments, rest of mix',
    de: 'rest, der rest, alles andere, alle anderen, den rest, die anderen, alles übrige, übrige, restliche, die übrigen, restliche band, rest der band, vom rest, sonst alles',
    fr: 'le reste, tout le reste, les autres, reste, du reste, autres',
    es: 'el resto, todo lo demás, los demás, resto, lo demás, demás',
    it: 'il resto, tutto il resto, gli altri, resto, altri, altro',
    nl: 'de rest, al het andere, de anderen, rest, overige, al de rest',
    pt: 'o resto, todo o resto, os outros, resto, restante, o restante',
  },
  everything: {
    trade:
      'everything, full mix, band mix, all, full band, band, foh mix, the band, whole band, all instruments, cd mix, l/r mix, main mix, all channels, everyone, entire band, all sources, complete mix, whole mix, full mix of everything, a full mix, balanced mix, overall mix, house mix, general mix, everybody, complete band, mix of everything, a mix of everything, cd style mix, record mix, foh l r, stereo mix, all inputs, bit of everything, all of it, of everything, album mix, nice mix, good mix',
    de: 'alles, gesamte band, ganze band, gesamtmix, bandmix, alle, band, komplette band, kompletter mix, komplettmix, summe, foh mix, voller mix, alle instrumente, die band, von allem, allem, ganzer mix, gesamter mix, von allen, cd mix, die ganze band, kompletten mix, ausgewogener mix, gesamtsumme, von allem etwas',
    fr: 'tout, tout le groupe, groupe, mix complet, mix général, tous, toutes, tout le monde, le groupe, mix façade, ensemble, tous les instruments, façade, mix global, tout le mix, l ensemble',
    es: 'todo, toda la banda, banda, mezcla completa, mezcla general, la banda, todos, mezcla de sala, todos los instrumentos, mezcla full, todo el grupo, el grupo, mezcla l/r, todo en general, general',
    it: 'tutto, tutta la band, band, mix completo, mix generale, tutti, la band, tutti gli strumenti, mix di sala, tutto il gruppo, mix foh',
    nl: 'alles, hele band, band, volledige mix, iedereen, de band, complete mix, de hele band, totale mix, alle instrumenten, van alles, zaalmix',
    pt: 'tudo, toda a banda, banda, mix completa, mix geral, todos, a banda, todos os instrumentos, mix da pa, mistura geral, mix completo',
  },
  rhythm: {
    trade: 'rhythm section, rhythm group, riddim section, drums and bass section',
    de: 'rhythmusgruppe, rhythmussektion, rhythmus',
    fr: 'section rythmique, rythmique',
    es: 'sección rítmica, base rítmica',
    it: 'sezione ritmica, ritmica',
    nl: 'ritmesectie',
    pt: 'seção rítmica, secção rítmica',
  },
  'lead vocals': {
    trade:
      'lead vocals, leads, lead vocal, lead vox, lead voice, lead singer, lead voc, lead, lv, lead voices, main vocal, main vocals, singer, frontman, front vocal',
    de: 'leadgesang, lead gesang, hauptgesang, leadstimme, hauptstimme, sänger, sängerin, leadsängerin, leadsänger, lead stimme',
    fr: 'chant lead, voix lead, chant principal, voix principale, chanteur, chanteuse, lead',
    es: 'voz principal, voz líder, cantante, voz lead, voces principales',
    it: 'voce principale, voce leader, voce solista, cantante',
    nl: 'leadzang, hoofdzang, zanger, zangeres, lead zang',
    pt: 'voz principal, cantor, cantora, vocal principal',
  },
  'backing vocals': {
    trade:
      'backing vocals, bvs, bgvs, backings, background vocals, backup vocals, bv, bgv, other vocals, harmonies, harmony vocals, harmony, backing vocal, backing vox, bvox, backing voices, backing singers, bgv s, bv s, backing, bg vox, bg vocals, backups',
    de: 'backings, chöre, chor, background, backgroundgesang, hintergrundgesang, chorgesang, backgrounds, background gesang, backing gesang, backing',
    fr: 'choeurs, chœurs, choristes, choeur, chœur, les choeurs',
    es: 'coros, los coros, coristas, voces de apoyo',
    it: 'cori, i cori, coristi, coriste',
    nl: 'koor, koren, achtergrondzang, backings, backing',
    pt: 'coros, backing vocals, backs, vozes de apoio, coro',
  },
  drums: {
    trade:
      'drums, drum kit, kit, drumkit, drum, drumset, whole kit, full kit, drums overall, drum set, all drums, own drums',
    de: 'schlagzeug, drums, drumset',
    fr: 'batterie, la batterie, bat, batt',
    es: 'batería, la batería',
    it: 'batteria, la batteria',
    nl: 'drums, drumstel, slagwerk',
    pt: 'bateria, a bateria',
  },
  percussion: {
    trade: 'percussion, perc, percs',
    de: 'percussion, perkussion',
    fr: 'percussions, percus',
    es: 'percusión, percusiones, percu',
    it: 'percussioni',
    nl: 'percussie',
    pt: 'percussão',
  },
  bass: {
    trade: 'bass, bs, bass guitar, e bass',
    de: 'bass, bassgitarre',
    fr: 'basse',
    es: 'bajo',
    it: 'basso',
    nl: 'bas, basgitaar',
    pt: 'baixo, contrabaixo',
  },
  guitars: {
    trade: 'guitars, guitar, gtrs, gtr, gits, git, all guitars, both guitars, gt, gts, guits, guit',
    de: 'gitarren, gitarre, git, alle gitarren, beide gitarren, gits',
    fr: 'guitares, guitare, guit, les guitares',
    es: 'guitarras, guitarra, las guitarras',
    it: 'chitarre, chitarra, le chitarre, chit',
    nl: 'gitaren, gitaar, git',
    pt: 'guitarras, guitarra, as guitarras',
  },
  keys: {
    trade: 'keys, keyboards, keyboard, all keys, key, kbd, synths',
    de: 'tasten, keys, keyboards',
    fr: 'claviers, clavier',
    es: 'teclados, teclado, teclas',
    it: 'tastiere, tastiera',
    nl: 'toetsen, keys',
    pt: 'teclados, teclado, teclas',
  },
  playback: {
    trade:
      'playback, tracks, backing tracks, track, pb, sequences, loops, laptop, samples, computer, seq, trax, backing track, bt, stems',
    de: 'playback, zuspieler, einspieler, tracks, zuspielungen',
    fr: 'bandes, séquences, bande, samples, séquence',
    es: 'secuencias, pistas, secuencia',
    it: 'basi, sequenze, base',
    nl: 'tracks, playback',
    pt: 'bases, vs, sequências, playback',
  },
  click: {
    trade: 'click, click track, clicktrack, clk, metronome, clicks',
    de: 'klick, click, metronom',
    fr: 'clic, click, métronome',
    es: 'click, claqueta, metrónomo',
    it: 'click, metronomo',
    nl: 'click, klik',
    pt: 'click, metrónomo, clique',
  },
  brass: {
    trade: 'brass, horns, horn section, brass section, horn',
    de: 'bläser, blech, bläsersatz',
    fr: 'cuivres, les cuivres',
    es: 'vientos, metales, los vientos',
    it: 'fiati, ottoni, i fiati',
    nl: 'blazers',
    pt: 'sopros, metais',
  },
  woodwind: {
    trade: 'woodwind, woodwinds, saxes, winds, reeds',
    de: 'holzbläser, holz',
    fr: 'bois',
    es: 'maderas',
    it: 'legni',
    nl: 'houtblazers',
    pt: 'madeiras',
  },
  strings: {
    trade: 'strings, string section',
    de: 'streicher',
    fr: 'cordes',
    es: 'cuerdas',
    it: 'archi',
    nl: 'strijkers',
    pt: 'cordas',
  },
  folk: { trade: 'folk instruments' },
  vocals: {
    trade:
      'vocals, vox, voc, all vocals, vocal, voices, all vox, voice, all voices, vocs, vx, all vocs, singers, all vocal, all singers, every vocal, vocals all',
    de: 'gesang, gesänge, alle gesänge, stimmen, alle stimmen, vocals, ges, alle vocals, stimme, sämtliche gesänge, allen gesang, gesamter gesang',
    fr: 'voix, chants, toutes les voix, chant, les voix, tous les chants',
    es: 'voces, todas las voces, voz, las voces',
    it: 'voci, tutte le voci, voce, le voci',
    nl: 'zang, alle zang, stemmen, alle stemmen',
    pt: 'vozes, todas as vozes, voz, as vozes, vocais',
  },
  speech: { trade: 'talkback, talkbacks, speech, tb' },
  ambience: {
    trade:
      'ambience, audience, crowd, ambient, room, ambience mics, amb, crowd mics, audience mics, ambients, room mics, atmo',
    de: 'atmo, publikum, ambience, raum, raummikros',
    fr: 'ambiance, public, ambiances',
    es: 'ambiente, público, ambientes',
    it: 'ambiente, pubblico, ambienti',
    nl: 'publiek, ambience, sfeer',
    pt: 'ambiente, público, plateia',
  },
  effects: {
    trade: 'fx, effects, reverb, verb, delay, fx return, effect, some verb, rev, fx returns',
    de: 'effekte, hall, fx, effekt',
    fr: 'effets, réverb, reverb, delay, effet',
    es: 'efectos, reverb, efecto',
    it: 'effetti, riverbero, effetto',
    nl: 'effecten, galm',
    pt: 'efeitos, reverb',
  },
  other: {},
};

/** The listener's own sources: all of them, or only the voice. */
export const selfWords: WordTable<'self' | 'own voice' | 'own instrument' | 'own'> = {
  'own voice': {
    trade:
      'own vocal, own vocals, own vox, own voice, my voice, my vocal, my vocals, my vox, his own voice, her own voice, his voice, her voice, his vocal, her vocal, own voc, their own vocal, their vocal, own lead vocal, own bv, own mic, his own vocal, her own vocal, her own vocals, his own vocals, my own voice, my own vocal, my own vox, own backing vocal, vocals own, vox own, vocal own, their own voice, his vox, her vox, his own vox, her own vox, her mic, his mic, my mic, their voice, their vox, their own vocals, her vocals, his vocals, my own vocals',
    de: 'eigene stimme, eigener gesang, eigenen gesang, meine stimme, eigengesang, eigene vocals, ihre stimme, seine stimme, seinen gesang, ihren gesang, mein gesang, meinen gesang, eigener stimme, eigenem gesang, eigene voc, eigenes mikro, eigenen vocals, eig stimme, eig gesang, ihren eigenen gesang, seinen eigenen gesang, ihre eigene stimme, seine eigene stimme, eigen gesang, eigenstimme, eigene gesang, ihr gesang, sein gesang, gesang eigen',
    fr: 'sa voix, ma voix, propre voix, son chant, mon chant, sa propre voix, leur voix, voix perso, leurs voix, sa voix à lui, ma propre voix, voix propre, sa voix à elle',
    es: 'su voz, mi voz, voz propia, propia voz, su propia voz, mi propia voz, sus voces',
    it: 'la sua voce, la mia voce, propria voce, voce propria, sua voce, mia voce, la propria voce, voce sua, sua propria voce',
    nl: 'eigen stem, eigen zang, mijn stem, zijn stem, haar stem, mijn zang, zijn zang, haar zang',
    pt: 'sua voz, minha voz, própria voz, a minha voz, voz própria, a sua voz, sua própria voz',
  },
  'own instrument': {
    trade:
      'own instrument, my instrument, his instrument, her instrument, own instruments, their own instrument, his own instrument, her own instrument, their instrument, my own instrument',
    de: 'eigenes instrument, mein instrument, sein instrument, ihr instrument, eigenem instrument, eigene instrumente, eig instrument',
    fr: 'propre instrument, son instrument, mon instrument, leur instrument, son propre instrument',
    es: 'su instrumento, mi instrumento, propio instrumento, instrumento propio, su propio instrumento',
    it: 'proprio strumento, suo strumento, il proprio strumento, mio strumento',
    nl: 'eigen instrument, mijn instrument, zijn instrument, haar instrument',
    pt: 'seu instrumento, meu instrumento, próprio instrumento',
  },
  self: {
    trade:
      'me, myself, himself, herself, themselves, themself, self, themselve, own signal, own sound, own stuff, him self, her self, my self, own channel, him, her, them, own sources, his own, her own, my own, their own, own channels, own source, mine',
    de: 'mich, sich selbst, sich, mich selbst, eigenes signal, eigensignal, eigenes, selbst, mir, ich selbst, mich selber, sich selber, eigene signale, eigene, eigener, eigenem, eigenen, eig signal',
    fr: 'moi, lui même, elle même, moi même, lui, elle, soi, eux mêmes, soi même, propre signal, leur propre signal',
    es: 'sí mismo, sí misma, yo mismo, de sí mismo, de sí misma, lo suyo, ella misma, él mismo, conmigo, lo mío, mi señal, su señal, a mí, yo, mí',
    it: 'se stesso, se stessa, sé, me stesso, me stessa, sé stesso, sé stessa, se stessi, me',
    nl: 'zichzelf, mezelf, mijzelf, eigen signaal, mij, zelf, eigen geluid',
    pt: 'si mesmo, si mesma, eu mesmo, si próprio, mim, si própria, eu, próprio sinal',
  },
  own: {
    trade: 'own, my, his, her, their',
    de: 'eigene, eigenes, eigener, eigenen, mein, meine, meinen, sein, seine, seinen, ihr, ihre, ihren, eigen, eig',
    fr: 'son, sa, ses, mon, ma, mes, propre, propres, leur, leurs',
    es: 'su, sus, mi, mis, propio, propia, propios, propias',
    it: 'suo, sua, mio, mia, proprio, propria, propri, proprie',
    nl: 'eigen, mijn',
    pt: 'seu, sua, meu, minha, próprio, própria',
  },
};

/** The mix is told by naming another, or left to the day. */
export const wishMarks: WordTable<'same as' | 'open' | 'spacer'> = {
  'same as': {
    trade:
      'same as, like, as mix, same mix as, identical to, copy of, as in mix, same, as for, shared with, follows, as above, ditto, same as mix, same like, equals, shares with, shares mix with, shares, copy, similar to, identical, as',
    de: 'wie, gleich wie, identisch mit, genauso wie, wie mix, dasselbe wie, das gleiche wie, identisch zu, wie bei, selber mix wie, gleicher mix wie, dito, teilt sich mit, geteilt mit, so wie, wie oben, genau wie, gleiche wie, das selbe wie, kopie von',
    fr: 'comme, identique à, pareil que, même mix que, idem, comme le, idem que, la même chose que, même que, comme pour, identique au, pareil, identique, pareil au',
    es: 'igual que, como, lo mismo que, igual a, idéntico a, igual al, lo mismo, mismo que, misma mezcla que, ídem, compartido con, idem, igual',
    it: 'come, uguale a, stesso di, identico a, come il, uguale al, lo stesso di, stesso mix di, idem, come la, uguale',
    nl: 'zelfde als, zoals, hetzelfde als, gelijk aan, idem, dezelfde als, net als, zelfde mix als, als',
    pt: 'igual a, como, o mesmo que, igual ao, idem, igual à, mesmo que, igual, mesma mix que, mesmo mix que',
  },
  open: {
    trade:
      'tbd, tba, tbc, as last year, standard, after sound check, by hand signal, to be discussed, on the day, will tell you, see on the day, at soundcheck, in soundcheck, to be confirmed, to be determined, ask on the day, tell you later, will sort on the day, during soundcheck, usual, as usual, the usual, same as last time, as last time, to be advised, as discussed, tell you on the day, to taste, on site, same as usual, n/a yet, later, unknown, ?, ??',
    de: 'wie letztes jahr, nach absprache, beim soundcheck, wie immer, wird noch bekannt gegeben, standardmäßig, tba, folgt, noch offen, nach ansage, im soundcheck, wie üblich, wie gehabt, vor ort, nach zuruf, wie gewohnt, unklar, noch unklar, nach handzeichen, auf zuruf, wie beim letzten mal, wird noch geklärt, nach bedarf, siehe soundcheck',
    fr: 'à définir, comme d habitude, à voir, à préciser, au soundcheck, à la balance, à confirmer, pendant la balance, comme la dernière fois, à voir sur place, selon balance, à déterminer, comme l an dernier, sur place, standard',
    es: 'por definir, como siempre, a definir, en la prueba, por confirmar, en la prueba de sonido, a confirmar, como la última vez, se verá, durante la prueba, en prueba de sonido, estándar, lo de siempre, según prueba',
    it: 'da definire, come al solito, al soundcheck, da confermare, come sempre, durante il soundcheck, da decidere, in prova, standard, come la volta scorsa, sul posto',
    nl: 'nader te bepalen, zoals altijd, tijdens soundcheck, volgt nog, n.t.b., bij soundcheck, volgt later, ntb, zoals gewoonlijk, zoals vorig jaar, in overleg, standaard, nog onbekend',
    pt: 'a definir, como sempre, na passagem de som, a confirmar, no soundcheck, a combinar, padrão, como da última vez, durante a passagem de som',
  },
  spacer: {
    trade: 'etc, and so on',
    de: 'usw, etc',
    fr: 'etc',
    es: 'etcétera, etc',
    it: 'ecc, eccetera',
    nl: 'enz, enzovoort',
    pt: 'etc',
  },
};

/** What follows is left out of what went before: "everything except click". */
export const exceptions: WordTable<'except' | 'all except'> = {
  'all except': {
    trade: 'everything but, all but, full mix minus',
    es: 'todo menos',
    pt: 'tudo menos',
    fr: 'tout sauf',
    de: 'alles ausser',
    it: 'tutto tranne',
    nl: 'alles behalve',
  },
  except: {
    trade: 'except, except for, apart from, excluding, other than',
    de: 'außer, bis auf, ausgenommen',
    fr: 'sauf, excepté, à part, hormis',
    es: 'excepto, salvo, a excepción de',
    it: 'tranne, eccetto, salvo, a parte',
    nl: 'behalve, uitgezonderd',
    pt: 'exceto, excepto, salvo, menos a, menos o',
  },
};
