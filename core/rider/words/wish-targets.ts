import type { SourceGroup } from '../../show/source-kinds.ts';
import type { WordTable } from './table.ts';

/** Words of a wish that name many sources at once. */
export type GroupWord =
  | SourceGroup
  | 'everything'
  | 'rest'
  | 'rhythm'
  | 'lead vocals'
  | 'backing vocals'
  | 'one voice'
  | 'winds'
  | 'soloists'
  | 'saxophones';

export const groupWords: WordTable<GroupWord> = {
  rest: {
    trade:
      'everything else, rest, the rest, others, everyone else, all others, the others, all else, all other, the rest of the band, rest of the band, rest of band, all the rest, remaining, everybody else, other instruments, rest of mix, what s left, other stuff, everyone else on stage, everything remaining, the remaining, the remainder, remainder, other, rest of the',
    de: 'rest, der rest, alles andere, alle anderen, den rest, die anderen, alles übrige, übrige, restliche, die übrigen, restliche band, rest der band, vom rest, sonst alles, sonstiges, alles sonst, alles sonstige, restlichen, die restlichen, übriges, das übrige, vom übrigen, den übrigen, andere, anderen, anderer, übrigen',
    fr: 'le reste, tout le reste, les autres, reste, du reste, autres, le reste du groupe, tous les autres, reste du groupe, pour le reste, le reste de la formation, autre, des autres',
    es: 'el resto, todo lo demás, los demás, resto, lo demás, demás, el resto de la banda, resto de la banda, todo el resto, los otros, los restantes, resto del grupo, lo otro, otros, otras, otro, otra',
    it: 'il resto, tutto il resto, gli altri, resto, altri, altro, resto della band, il resto della band, tutti gli altri, le altre cose, rimanente, il rimanente, altre, altra, gli altri strumenti, degli altri',
    nl: 'de rest, al het andere, de anderen, rest, overige, al de rest, rest van de band, de rest van de band, al het overige, de overigen, het overige, overigen, alle anderen, andere, overig',
    pt: 'o resto, todo o resto, os outros, resto, restante, o restante, o resto da banda, resto da banda, todos os outros, os restantes, os demais, demais, tudo o mais, outros, outras, outro, outra',
  },
  everything: {
    trade:
      'everything, full mix, band mix, all, full band, band, foh mix, the band, whole band, all instruments, cd mix, l/r mix, main mix, all channels, everyone, entire band, all sources, complete mix, whole mix, full mix of everything, a full mix, balanced mix, overall mix, house mix, general mix, everybody, complete band, mix of everything, a mix of everything, cd style mix, record mix, foh l r, stereo mix, all inputs, all of it, of everything, album mix, nice mix, good mix, whole lot, the lot, the whole lot, full band mix, everything equally, equal mix, all of the band, all band, everyone equally, all round mix, overall band, all stage, blend of everything, good overall mix, all the band, stereo full mix, foh copy, copy of foh, pa mix, house feed, whole show, like the record, as on the record, as on the album, like the album, like on the record, like on the album, sounds like the record, album style mix, cd sound, radio mix, record style mix, mix like the record, studio mix',
    de: 'alles, gesamte band, ganze band, gesamtmix, bandmix, alle, band, komplette band, kompletter mix, komplettmix, summe, foh mix, voller mix, alle instrumente, die band, von allem, allem, ganzer mix, gesamter mix, von allen, cd mix, die ganze band, kompletten mix, ausgewogener mix, gesamtsumme, alles zusammen, gesamtes, gesamte gruppe, die ganze truppe, gesamtsound, gesamtbild, summenmix, alles gleichmäßig, alles ausgewogen, hauptmix, foh summe, saalmix, gesamter bandmix, alle musiker, die ganze kapelle, alle zusammen, gesamter bandsound, mix wie foh, wie auf der platte, wie auf dem album, wie auf cd, wie auf der cd, plattensound, cd sound, albumsound, wie im studio, mix wie auf der platte, wie die platte',
    fr: 'tout, tout le groupe, groupe, mix complet, mix général, tous, toutes, tout le monde, le groupe, mix façade, ensemble, tous les instruments, façade, mix global, tout le mix, l ensemble, l ensemble du groupe, tout l orchestre, ensemble du groupe, tout l ensemble, mix façade complet, tout équilibré, mix équilibré, mix général équilibré, tout le plateau, tous les musiciens, copie façade, tout pareil, comme sur le disque, comme sur l album, façon disque, son album, mix façon disque, mix disque, comme le disque, comme sur l enregistrement, le tout, tout ça',
    es: 'todo, toda la banda, banda, mezcla completa, mezcla general, la banda, todos, mezcla de sala, todos los instrumentos, mezcla full, todo el grupo, el grupo, mezcla l/r, todo en general, todo el mundo, todos por igual, mezcla completa equilibrada, mezcla equilibrada, toda la mezcla, todo parejo, todo equilibrado, mezcla de pa, toda la orquesta, todo el conjunto, mezcla total, de todo, de todo un poco, mezcla pareja, general, como en el disco, como en la grabación, como el disco, mezcla de disco, mezcla tipo disco, sonido de disco',
    it: 'tutto, tutta la band, band, mix completo, mix generale, tutti, la band, tutti gli strumenti, mix di sala, tutto il gruppo, mix foh, mix equilibrato, tutto equilibrato, tutto insieme, mix totale, tutto il mix, mix di tutto, tutta l orchestra, mix generale equilibrato, tutto quanto, mix pa, tutto il resto del gruppo insieme, come sul disco, come nel disco, come sull album, mix da disco, suono del disco, come da disco',
    nl: 'alles, hele band, band, volledige mix, iedereen, de band, complete mix, de hele band, totale mix, alle instrumenten, van alles, zaalmix, van alles wat, alles evenwichtig, gebalanceerde mix, alles samen, totaalmix, hele mix, algemene mix, het geheel, foh mix, mooie mix, alles gelijk, heel de band, hele groep, iedereen gelijk, een mix van alles, gewone mix, zoals op de plaat, als op de plaat, zoals op het album, net als op de plaat, cd klank, zoals op cd, allemaal, alles bij elkaar',
    pt: 'tudo, toda a banda, banda, mix completa, mix geral, todos, a banda, todos os instrumentos, mix da pa, mistura geral, mix completo, mix equilibrada, mistura equilibrada, tudo equilibrado, mix total, todo o grupo, todo o conjunto, mistura completa, de tudo um pouco, toda a gente, todos por igual, tudo igual, toda a mix, como no disco, como no álbum, mix de disco, som de disco, como na gravação, tipo disco',
  },
  rhythm: {
    trade:
      'rhythm section, rhythm group, riddim section, drums and bass section, drums & bass, bass & drums, rhythm, backline rhythm, groove section',
    de: 'rhythmusgruppe, rhythmussektion, rhythmus, bass und schlagzeug, schlagzeug und bass, groove',
    fr: 'section rythmique, rythmique, basse batterie, batterie basse',
    es: 'sección rítmica, base rítmica, sección rítmica completa, la base',
    it: 'sezione ritmica, ritmica, base ritmica, basso e batteria',
    nl: 'ritmesectie, ritme sectie, ritme',
    pt: 'seção rítmica, secção rítmica, base rítmica, cozinha, secção ritmica',
  },
  'lead vocals': {
    trade:
      'lead vocals, leads, lead vocal, lead vox, lead voice, lead singer, lead voc, lead, lv, lead voices, main vocal, main vocals, singer, frontman, front vocal, ld vox, ld vocal, both leads, main vox, main voice, lead vocalist, main singer, leadvox, lead singers, front vox, front voice, vox main, principal vocal, frontwoman',
    de: 'leadgesang, lead gesang, hauptgesang, leadstimme, hauptstimme, sänger, sängerin, leadsängerin, leadsänger, lead stimme, leadvocal, hauptgesänge, hauptsängerin, hauptsänger, frontgesang, leadvocals, die sängerin, den sänger, der sänger',
    fr: 'chant lead, voix lead, chant principal, voix principale, chanteur, chanteuse, lead, voix leads, chanteur lead, chanteuse lead, chant leader, voix leader, la chanteuse, le chanteur, voix principales, chants lead',
    es: 'voz principal, voz líder, cantante, voz lead, voces principales, voces líder, voz lider, la cantante, el cantante, cantante principal, vocalista, voz leader, primera voz',
    it: 'voce principale, voce leader, voce solista, cantante, voce lead, voci principali, voci soliste, cantante principale, la cantante, il cantante, prima voce, voce princ',
    nl: 'leadzang, hoofdzang, zanger, zangeres, lead zang, lead vocal, hoofdstem, leadvocals, leadzanger, leadzangeres, de zanger, de zangeres, leadstem',
    pt: 'voz principal, cantor, cantora, vocal principal, voz lead, vocais principais, vocalista, o cantor, a cantora, voz líder, voz solo, vozes principais, vocal lead',
  },
  'backing vocals': {
    trade:
      'backing vocals, bvs, bgvs, backings, background vocals, backup vocals, bv, bgv, harmonies, harmony vocals, harmony, backing vocal, backing vox, bvox, backing voices, backing singers, bgv s, bv s, backing, bg vox, bg vocals, backups, back vox, all bvs, all backings, bkgs, bg v, bg voc, all bv, backvox, backing voc, bvs all, harms, back ups, backup, all harmonies, second vocals, backing vocs, vocals bv, bgs, choir',
    de: 'backings, chöre, chor, background, backgroundgesang, hintergrundgesang, chorgesang, backgrounds, background gesang, backing gesang, backing, alle chöre, background stimmen, zweitstimmen, alle backings, backgroundstimmen, bg, bgs, background voc, chorstimmen, den chor, alle background, mehrstimmiger gesang, zweite stimme, zweite stimmen',
    fr: 'choeurs, chœurs, choristes, choeur, chœur, les choeurs, toutes les choeurs, tous les choeurs, tous les chœurs, les chœurs, secondes voix, seconde voix, backs, chant choeurs, backing, voix choeurs, les choristes, voix de chœur',
    es: 'coros, los coros, coristas, voces de apoyo, todos los coros, coro, segundas voces, segunda voz, voces de coro, las coristas, backing, backs, coros todos, voces secundarias, acompañamientos',
    it: 'cori, i cori, coristi, coriste, tutti i cori, le coriste, seconde voci, seconda voce, backing, i coristi, coro, controcanti, voci di supporto',
    nl: 'koor, koren, achtergrondzang, backings, backing, alle koren, alle backings, tweede stem, tweede stemmen, backing vocals, koortjes, alle achtergrondzang, bv s, achtergrondkoor, koorzang, achtergrond',
    pt: 'coros, backing vocals, backs, vozes de apoio, coro, todos os coros, segundas vozes, segunda voz, coristas, backing, os coros, vocais de apoio, back vocals, backing vocal',
  },
  soloists: {
    trade: 'soloists, solo voices, solo vocals, solo singers, solos, the soloists',
    de: 'soli, solostimmen, solistinnen, solisten, die soli, die solisten, die solostimmen, solosänger',
    fr: 'solistes, les solistes, voix solistes',
    es: 'solistas, los solistas, las solistas, voces solistas',
    it: 'soli, solisti, i solisti, le soliste, voci soliste, soliste',
    nl: 'solisten, de solisten, solostemmen',
    pt: 'solistas, os solistas, vozes solo, vozes solistas, as solistas',
  },
  drums: {
    trade:
      'drums, drum kit, kit, drumkit, drum, drumset, whole kit, full kit, drums overall, drum set, all drums, own drums, drum mix, kit overall, overall kit, drum kit mix, full drums, drums mix, complete kit, entire kit, the drums, the kit',
    de: 'schlagzeug, drums, drumset, schlagzeug gesamt, drumkit, ganzes schlagzeug, das schlagzeug, gesamtes schlagzeug, komplettes schlagzeug, drums gesamt, trommeln, ganzes drumset, schlagzeugmix, alle trommeln',
    fr: 'batterie, la batterie, bat, batt, batterie complète, toute la batterie, mix batterie, kit batterie, drums, ensemble batterie, batterie globale, fûts, les fûts',
    es: 'batería, la batería, toda la batería, batería completa, mezcla de batería, drums, bataca, batería general, set de batería',
    it: 'batteria, la batteria, tutta la batteria, batteria completa, mix batteria, drums, batteria intera, batt, batteria generale',
    nl: 'drums, drumstel, slagwerk, hele drumstel, hele drums, drumkit, slagwerk totaal, het drumstel, volledige drums, drumset, alle drums, trommels, alle trommels',
    pt: 'bateria, a bateria, bateria completa, toda a bateria, bateria toda, drums, mix bateria, bateria geral',
  },
  percussion: {
    trade: 'percussion, perc, percs, all percussion, all perc, percussions, percussion mics, perc mix',
    de: 'percussion, perkussion, perkussionen, alle percussion, gesamte percussion, percussions',
    fr: 'percussions, percus, toutes les percussions, toutes les percus, percu, percussion',
    es: 'percusión, percusiones, percu, toda la percusión, percusiones menores, percus, percusion',
    it: 'percussioni, tutte le percussioni, percussione, perc',
    nl: 'percussie, alle percussie, percussion',
    pt: 'percussão, toda a percussão, percussões',
  },
  bass: {
    trade: 'bass, bs, bass guitar, e bass, the bass, bass gtr, all bass',
    de: 'bass, bassgitarre, bässe, den bass, der bass, e-bass, basssignal',
    fr: 'basse, la basse, basses, contrebasse et basse',
    es: 'bajo, el bajo, bajos',
    it: 'basso, il basso, bassi',
    nl: 'bas, basgitaar, de bas, bassen',
    pt: 'baixo, contrabaixo, o baixo, baixos, contrabaixos',
  },
  guitars: {
    trade:
      'guitars, guitar, gtrs, gtr, gits, git, all guitars, both guitars, gt, gts, guits, guit, all gtrs, both gtrs, all gits, the guitars, gtr s, every guitar',
    de: 'gitarren, gitarre, git, alle gitarren, beide gitarren, gits, beide gits, alle gits, sämtliche gitarren, die gitarren, e gitarren und akustik, die gitarre',
    fr: 'guitares, guitare, guit, les guitares, toutes les guitares, les deux guitares, la guitare, toutes guitares',
    es: 'guitarras, guitarra, las guitarras, todas las guitarras, ambas guitarras, las dos guitarras, la guitarra',
    it: 'chitarre, chitarra, le chitarre, chit, tutte le chitarre, entrambe le chitarre, le due chitarre, la chitarra',
    nl: 'gitaren, gitaar, git, alle gitaren, beide gitaren, de gitaren, de gitaar',
    pt: 'guitarras, guitarra, as guitarras, todas as guitarras, ambas as guitarras, as duas guitarras, a guitarra, cordas dedilhadas',
  },
  keys: {
    trade:
      'keys, keyboards, keyboard, all keys, key, kbd, synths, all keyboards, keys mix, the keys, both keys, both keyboards, all synths, keyboard mix, keybs',
    de: 'tasten, keys, keyboards, alle tasten, alle keyboards, keyboard, beide keyboards, sämtliche tasten, die tasten, alle synths, synthies',
    fr: 'claviers, clavier, tous les claviers, les claviers, le clavier, synthés',
    es: 'teclados, teclado, teclas, todos los teclados, los teclados, sintes, el teclado',
    it: 'tastiere, tastiera, tutte le tastiere, le tastiere, la tastiera, synth tutti',
    nl: 'toetsen, keys, alle toetsen, de toetsen, keyboards, keyboard, alle keyboards',
    pt: 'teclados, teclado, teclas, todos os teclados, os teclados, o teclado',
  },
  playback: {
    trade:
      'playback, tracks, backing tracks, track, pb, sequences, seq, trax, backing track, bt, stems, all tracks, all playback, playback tracks, trax mix, sequence, bts, the tracks, all backing tracks, sound effects, effects tracks, sequencer, music track, video sound, jingles, loops, laptop, samples, computer',
    de: 'playback, zuspieler, einspieler, tracks, zuspielungen, alle tracks, alle zuspieler, sequenzen, alle playbacks, playbacks, einspielungen, videoton, geräusche, zuspiel',
    fr: 'bandes, séquences, bande, séquence, toutes les bandes, les bandes, les séquences, bande son, bandes son, playback, bruitages, pistes, samples',
    es: 'secuencias, pistas, secuencia, las secuencias, las pistas, bases, playback, todas las secuencias, efectos de sonido',
    it: 'basi, sequenze, le basi, tutte le basi, playback, le sequenze, effetti sonori, basi musicali, contributi, base',
    nl: 'tracks, playback, alle tracks, sequences, backing tracks, banden, band mee, geluidsfragmenten, geluidseffecten, orkestband, jingles',
    pt: 'bases, vs, sequências, playback, todas as bases, as bases, pistas, trilhas, efeitos sonoros, as sequências, playbacks',
  },
  click: {
    trade:
      'click, click track, clicktrack, clk, metronome, clicks, click tracks, metronom, click guide, tempo click, the click',
    de: 'klick, click, metronom, klicktrack, klickspur, den klick, der klick, clicktrack, metronom klick',
    fr: 'clic, click, métronome, le clic, le click, piste clic, clics, clic track',
    es: 'click, claqueta, metrónomo, clic, el click, metronomo, el clic, pista de click',
    it: 'click, metronomo, il click, clic, traccia click, metronomi',
    nl: 'click, klik, de click, clicktrack, metronoom, de klik, klik track',
    pt: 'click, metrónomo, clique, o click, clicks, metronomo, pista de click',
  },
  // The voice, not the voices: whose it is depends on who asks.
  'one voice': {
    trade: 'vocal, voice, the vocal, the voice',
    de: 'stimme, die stimme',
    fr: 'la voix, une voix',
    es: 'voz, la voz',
    it: 'voce, la voce',
    nl: 'stem, de stem',
    pt: 'voz, a voz',
  },
  winds: {
    trade: 'winds, wind section, all winds, the winds, wind instruments, blowers',
    de: 'bläser, alle bläser, die bläser, gesamte bläser, bläsern',
    fr: 'vents, les vents, soufflants, tous les vents, les soufflants, section vents',
    es: 'vientos, los vientos, sección de vientos, todos los vientos, viento',
    it: 'fiati, i fiati, tutti i fiati, sezione fiati, dei fiati',
    nl: 'blazers, alle blazers, de blazers, blazerssectie',
    pt: 'sopros, todos os sopros, os sopros, naipe de sopros',
  },
  saxophones: {
    trade: 'saxes, all saxes, the saxes, sax section, saxophones, all saxophones, saxs, sax line',
    de: 'alle saxophone, saxe, saxofone, saxophonsatz, saxsatz, die saxe, saxophone',
    fr: 'saxos, tous les saxos, les sax, les saxos, les saxophones, saxophones, section sax',
    es: 'los saxos, saxos, saxofones, los saxofones, sección de saxos',
    it: 'i sax, tutti i sax, sassofoni, i sassofoni, sezione sax',
    nl: 'alle saxen, saxen, saxofoons, de saxen, saxsectie',
    pt: 'os saxes, saxes, saxofones, os saxofones, naipe de saxes',
  },
  brass: {
    trade:
      'brass, horns, horn section, brass section, horn, all horns, all brass, the horns, horns mix, brass mix, hornsection, horn mix, hrns',
    de: 'blech, bläsersatz, blechbläser, bläsersektion, blechsatz',
    fr: 'cuivres, les cuivres, tous les cuivres, section cuivres, section de cuivres',
    es: 'metales, los metales, bronces, todos los metales, metal',
    it: 'ottoni, gli ottoni, tutti gli ottoni, sezione ottoni',
    nl: 'koper, kopersectie, koperblazers',
    pt: 'metais, os metais, naipe de metais, naipe, todos os metais',
  },
  woodwind: {
    trade: 'woodwind, woodwinds, reeds, all reeds, all woodwind',
    de: 'holzbläser, holz, alle holzbläser',
    fr: 'bois, tous les bois, les bois',
    es: 'maderas, las maderas, todas las maderas',
    it: 'legni, i legni, tutti i legni',
    nl: 'houtblazers, de houtblazers',
    pt: 'madeiras, as madeiras, palhetas',
  },
  strings: {
    trade: 'strings, string section, all strings, the strings, string quartet, string mix',
    de: 'streicher, alle streicher, die streicher, streichquartett, streichersatz, gesamte streicher',
    fr: 'cordes, toutes les cordes, les cordes, section cordes',
    es: 'cuerdas, todas las cuerdas, las cuerdas, sección de cuerdas',
    it: 'archi, tutti gli archi, gli archi, sezione archi',
    nl: 'strijkers, alle strijkers, de strijkers, strijkkwartet',
    pt: 'cordas, todas as cordas, as cordas, naipe de cordas',
  },
  folk: { trade: 'folk instruments' },
  vocals: {
    trade:
      'vocals, vox, voc, all vocals, voices, all vox, all voices, vocs, vx, all vocs, singers, all vocal, all singers, every vocal, vocals all, every voice, the vocals, all singing, all voc, all the vocals, all mics, everyone s vocals, everybody s vocals, vocals mix, all vox mix, vocal mix, all vcls, all headsets, headsets, all singers mics',
    de: 'gesang, gesänge, alle gesänge, stimmen, alle stimmen, vocals, ges, alle vocals, sämtliche gesänge, allen gesang, gesamter gesang, alle voc, alle stimmen zusammen, sämtliche stimmen, die stimmen, alle sänger, gesamtgesang, gesamte gesänge, gesangsstimmen, alle headsets, headsets, alle sängerinnen, den gesang, alle gesangsmikros',
    fr: 'voix, chants, toutes les voix, chant, les voix, tous les chants, toutes voix, tous chants, les chants, toutes les voix égales, ensemble des voix, voix toutes, les micros chant',
    es: 'voces, todas las voces, las voces, las voces todas, todas voces, todas las voces por igual, los cantantes, vocales, todos los micros de voz, cantantes',
    it: 'voci, tutte le voci, le voci, tutte voci, tutti i cantanti, tutte le voci insieme, cantanti, canto, tutti i microfoni voce, le voci tutte',
    nl: 'zang, alle zang, stemmen, alle stemmen, alle zangers, alle stemmen samen, alle vocals, de zang, zangers, alle zangmics, vocals, de stemmen',
    pt: 'vozes, todas as vozes, as vozes, vocais, todas vozes, todos os vocais, todas as vozes por igual, cantores, os vocais, vocal, todos os cantores',
  },
  speech: {
    trade:
      'talkback, talkbacks, speech, tb, md talk, talk mics, talkback mics, all talkbacks, shout mic, shout mics, md mic',
    de: 'talkbacks, ansagen, alle talkbacks, sprechstellen, kommando',
    fr: 'ordres, micros ordres, talkbacks, micro d ordres',
    es: 'talkbacks, órdenes',
    it: 'talkback',
    nl: 'talkback, talkbacks, spreekmics',
    pt: 'talkback, talkbacks',
  },
  ambience: {
    trade:
      'ambience, audience, crowd, ambient, room, ambience mics, amb, crowd mics, audience mics, ambients, room mics, atmo, all ambience, audience mic, ambiance, ambients mix, atmos, some room, crowd noise, house mics, hall mics',
    de: 'atmo, publikum, ambience, raum, raummikros, atmos, publikumsmikros, alle atmos, raummikrofone, saalmikros, publikumsmikrofone',
    fr: 'ambiance, public, ambiances, micros ambiance, micros public, les ambiances, ambiance salle, le public',
    es: 'ambiente, público, ambientes, micros de ambiente, el público, ambiente de sala, ambientales',
    it: 'ambiente, pubblico, ambienti, microfoni ambiente, ambientali, il pubblico, ambiente sala',
    nl: 'publiek, ambience, sfeer, publieksmics, zaalmics, publieksmicrofoons, ambiance, zaalmicrofoons',
    pt: 'ambiente, público, plateia, microfones de ambiente, público e ambiente, ambiência, ambiências, a plateia',
  },
  effects: {
    trade:
      'fx, effects, reverb, verb, delay, fx return, effect, some verb, rev, fx returns, all fx, vocal fx, vocal reverb, vocal verb, own reverb, a little reverb, nice reverb, reverb on vocals, vocal delay, vox reverb, vox verb, echo, reverbs, delays, short reverb, some reverb, fx mix',
    de: 'effekte, hall, fx, effekt, hall auf der stimme, gesangshall, hall auf gesang, etwas hall, delay, halleffekt, echo, effekte auf stimme, stimmhall, reverb, nachhall',
    fr: 'effets, réverb, reverb, delay, effet, réverb voix, un peu de réverb, réverbe, réverbération, écho, effet voix, delays, réverb sur la voix, reverb voix',
    es: 'efectos, reverb, efecto, reverb en la voz, reverberación, eco, efecto en la voz, delay, algo de reverb, efectos de voz, rever',
    it: 'effetti, riverbero, effetto, riverbero sulla voce, reverb, eco, delay, effetto voce, un po di riverbero, riverbero voce, effetti voce',
    nl: 'effecten, galm, galm op zang, reverb, echo, delay, zanggalm, galm op stem, effect, effecten zang, wat galm',
    pt: 'efeitos, reverb, reverb na voz, reverberação, eco, delay, efeito na voz, efeito, algum reverb, efeitos voz',
  },
  other: {},
};

/** The listener's own sources: all of them, or only the voice. */
export const selfWords: WordTable<'self' | 'own voice' | 'own instrument' | 'own'> = {
  'own voice': {
    trade:
      'own vocal, own vocals, own vox, own voice, my voice, my vocal, my vocals, my vox, his own voice, her own voice, his voice, her voice, his vocal, her vocal, own voc, their own vocal, their vocal, own lead vocal, own bv, own mic, his own vocal, her own vocal, her own vocals, his own vocals, my own voice, my own vocal, my own vox, own backing vocal, vocals own, vox own, vocal own, their own voice, his vox, her vox, his own vox, her own vox, her mic, his mic, my mic, their voice, their vox, their own vocals, her vocals, his vocals, my own vocals, own lead, own headset, own singing, own vocal mic, own voc mic, their vocals, his singing, her singing, own handheld, his lead vocal, her lead vocal, her bv, his bv, his bvs, my bv, her harmony, own raps, own rap, his raps, her raps, their raps, my raps',
    de: 'eigene stimme, eigener gesang, eigenen gesang, meine stimme, eigengesang, eigene vocals, ihre stimme, seine stimme, seinen gesang, ihren gesang, mein gesang, meinen gesang, eigener stimme, eigenem gesang, eigene voc, eigenes mikro, eigenen vocals, eig stimme, eig gesang, ihren eigenen gesang, seinen eigenen gesang, ihre eigene stimme, seine eigene stimme, eigen gesang, eigenstimme, eigene gesang, ihr gesang, sein gesang, gesang eigen, meine eigene stimme, eigenes gesangsmikro, ihr eigener gesang, sein eigener gesang, ihrem gesang, seinem gesang, eigenem mikro, eigenes headset, seiner stimme, ihrer stimme, meiner stimme, die eigene stimme, den eigenen gesang, eigene Raps, eigener Rap, seine Raps, ihre Raps, ihre Stimmen, eigene Stimmen',
    fr: 'sa voix, ma voix, propre voix, son chant, mon chant, sa propre voix, leur voix, voix perso, leurs voix, sa voix à lui, ma propre voix, voix propre, sa voix à elle, son propre chant, leur propre voix, sa propre voix lead, son micro, mon micro, sa voix lead, voix à soi, leurs propres voix',
    es: 'su voz, mi voz, voz propia, propia voz, su propia voz, mi propia voz, sus voces, su propio micro, su micro, mi micro, voz de ella, voz de él, la voz propia, su propia voz principal, voz suya, mi propia voz principal, sus propias voces',
    it: 'la sua voce, la mia voce, propria voce, voce propria, sua voce, mia voce, la propria voce, voce sua, sua propria voce, la propria voce solista, il suo microfono, mio microfono, suo microfono, voce propria molto, proprio microfono, voce mia, voci proprie, le loro voci, la loro voce, loro voci, le proprie voci',
    nl: 'eigen stem, eigen zang, mijn stem, zijn stem, haar stem, mijn zang, zijn zang, haar zang, zijn eigen zang, haar eigen zang, zijn eigen stem, haar eigen stem, eigen mic, eigen microfoon, mijn eigen zang, mijn eigen stem, hun eigen zang, zang van zichzelf, eigen raps, eigen rap, hun stemmen, hun stem, zijn raps, haar raps, eigen stemmen',
    pt: 'sua voz, minha voz, própria voz, a minha voz, voz própria, a sua voz, sua própria voz, voz dela, voz dele, a própria voz, minha própria voz, própria voz dela, o seu microfone, seu microfone, meu microfone, voz do próprio, voz da própria, vozes deles, vozes delas, as vozes deles, as suas vozes',
  },
  'own instrument': {
    trade:
      'own instrument, my instrument, his instrument, her instrument, own instruments, their own instrument, his own instrument, her own instrument, their instrument, my own instrument, own guitar rig, her own instrument loud, his instruments, her instruments, their instruments, his own instruments, her own instruments',
    de: 'eigenes instrument, mein instrument, sein instrument, ihr instrument, eigenem instrument, eigene instrumente, eig instrument, sein eigenes instrument, ihr eigenes instrument, das eigene instrument, meinem instrument, mein eigenes instrument, seine Instrumente, ihre Instrumente, eigenen Instrumente, eigenen Instrumenten, seinen Instrumenten, ihren Instrumenten',
    fr: 'propre instrument, son instrument, mon instrument, leur instrument, son propre instrument, leur propre instrument, mon propre instrument, ses instruments, ses propres instruments, leurs instruments',
    es: 'su instrumento, mi instrumento, propio instrumento, instrumento propio, su propio instrumento, instrumento suyo, mi propio instrumento, sus instrumentos, sus propios instrumentos',
    it: 'proprio strumento, suo strumento, il proprio strumento, mio strumento, il suo strumento, il mio strumento, strumento proprio, strumento suo, i suoi strumenti, suoi strumenti, dei suoi strumenti, i propri strumenti, i loro strumenti, il loro strumento',
    nl: 'eigen instrument, mijn instrument, zijn instrument, haar instrument, zijn eigen instrument, haar eigen instrument, mijn eigen instrument, eigen instrumenten, zijn instrumenten, haar instrumenten',
    pt: 'seu instrumento, meu instrumento, próprio instrumento, instrumento dela, instrumento dele, o seu instrumento, instrumento próprio, meu próprio instrumento, instrumentos dele, instrumentos dela, os instrumentos dele, os instrumentos dela, os seus instrumentos',
  },
  self: {
    trade:
      'me, myself, himself, herself, themselves, themself, self, themselve, own signal, own sound, own stuff, him self, her self, my self, own channel, him, her, them, own sources, his own, her own, my own, their own, own channels, own source, mine, him or herself, our own, own mics, own lines, own mix only, own gear, his own stuff, her own stuff, their own stuff, his stuff, her stuff, own section, their own section',
    de: 'mich, sich selbst, mich selbst, eigenes signal, eigensignal, eigenes, selbst, mir, ich selbst, mich selber, sich selber, eigene signale, eigene, eigener, eigenem, eigenen, eig signal, eigenen kanal, eigener kanal, eigene kanäle, sein eigenes, ihr eigenes, uns selbst, von sich, von sich selbst, sich, eigenes Zeug, eigener Satz, eigenen Satz, vom eigenen Satz, eigene Sachen, seine Sachen, ihre Sachen',
    fr: 'moi, lui même, elle même, moi même, lui, elle, soi, eux mêmes, soi même, propre signal, leur propre signal, nous mêmes, elles mêmes, d elle même, de lui même, de moi, ses propres instruments à lui, leur pupitre, son propre pupitre',
    es: 'sí mismo, sí misma, yo mismo, de sí mismo, de sí misma, lo suyo, ella misma, él mismo, conmigo, lo mío, mi señal, su señal, a mí, yo, mí, ellos mismos, ellas mismas, su propia señal, señal propia, sí mismos, de él, de ella, nosotros mismos, lo propio, su propia sección, su sección',
    it: 'se stesso, se stessa, me stesso, me stessa, sé stesso, sé stessa, se stessi, me, lui stesso, lei stessa, sé stessi, di se stesso, di se stessa, noi stessi, il proprio segnale, sé, la propria sezione, la propria roba, roba sua',
    nl: 'zichzelf, mezelf, mijzelf, eigen signaal, mij, zelf, eigen geluid, hemzelf, haarzelf, henzelf, van zichzelf, onszelf, eigen kanaal, eigen spul, eigen spullen, zijn eigen spul, haar eigen spul',
    pt: 'si mesmo, si mesma, eu mesmo, si próprio, mim, si própria, eu, próprio sinal, ele mesmo, ela mesma, ele próprio, ela própria, dela, dele, delas, deles, si mesmos, dela própria, dele próprio, nós mesmos, o próprio naipe, as coisas dele, as coisas dela',
  },
  own: {
    trade: 'own, my, his, her, their',
    de: 'eigene, eigenes, eigener, eigenen, mein, meine, meinen, sein, seine, seinen, ihr, ihre, ihren, eigen, eig',
    fr: 'son, sa, ses, mon, ma, mes, propre, propres, leur, leurs',
    es: 'su, sus, mi, mis, propio, propia, propios, propias',
    it: 'suo, sua, mio, mia, proprio, propria, propri, proprie',
    nl: 'eigen, mijn, zijn, haar, hun, m n, z n',
    pt: 'seu, sua, meu, minha, próprio, própria',
  },
};

/** The mix is told by naming another, or left to the day. */
export const wishMarks: WordTable<'same as' | 'open' | 'spacer'> = {
  'same as': {
    trade:
      'same as, like, as mix, same mix as, identical to, copy of, as in mix, same, as for, shared with, follows, as above, ditto, same as mix, same like, equals, shares with, shares mix with, shares, copy, similar to, identical, as, matching, a copy of, the same as, same again as, mirror of, clone of, mirrors, same content as, on the same mix as, exactly as, exactly like, just like, much like, basically like, hears the same as, listens in on, shares a mix with, hangs on, on the same wedge as, listens to the mix of, piggybacks on, roughly like, a bit like, more or less like, pretty much like, roughly the same as, almost like, nearly the same as, about the same as',
    de: 'wie, gleich wie, identisch mit, genauso wie, wie mix, dasselbe wie, das gleiche wie, identisch zu, wie bei, selber mix wie, gleicher mix wie, dito, teilt sich mit, geteilt mit, so wie, wie oben, genau wie, gleiche wie, das selbe wie, kopie von, gleich, analog zu, exakt wie, entspricht, ebenso wie, hört dasselbe wie, selbe wie, teilt den mix mit, derselbe wie, identischer mix wie, wie der, hört bei, hört mit bei, hört mit, hört das gleiche wie, hängt an, hängt mit an, läuft mit auf, mit auf, ungefähr wie, in etwa wie, ähnlich wie, so ähnlich wie, fast wie, ungefähr dasselbe wie, im grunde wie',
    fr: 'comme, identique à, pareil que, même mix que, idem, comme le, idem que, la même chose que, même que, comme pour, identique au, pareil, identique, pareil au, copie de, exactement comme, la même chose, même chose, même retour que, la même que, partagé avec, même mélange que, tout comme, comme la, écoute la même chose que, sur le même retour que, même bain de pied que, à peu près comme, un peu comme, presque comme, à peu près pareil que, à peu près la même chose que, plus ou moins comme, similaire à',
    es: 'igual que, como, lo mismo que, igual a, idéntico a, igual al, lo mismo, mismo que, misma mezcla que, ídem, compartido con, idem, igual, copia de, exactamente como, la misma que, el mismo que, comparte con, comparte mezcla con, misma que, igualito a, igual q, escucha lo mismo que, en el mismo monitor que, comparte monitor con, más o menos como, parecido a, casi como, algo parecido a, casi igual que, parecido al, similar a',
    it: 'come, uguale a, stesso di, identico a, come il, uguale al, lo stesso di, stesso mix di, idem, come la, uguale, copia di, esattamente come, la stessa di, stessa di, condiviso con, identica a, uguale a quello di, come per, come quello di, sente come, sente lo stesso di, sulla stessa spia di, divide la spia con, più o meno come, simile a, quasi come, un po come, quasi uguale a, circa come',
    nl: 'zelfde als, zoals, hetzelfde als, gelijk aan, idem, dezelfde als, net als, zelfde mix als, als, kopie van, precies als, precies zoals, zelfde, hetzelfde, deelt met, gedeeld met, idem als, gelijk als, precies hetzelfde als, hoort hetzelfde als, luistert mee met, op dezelfde wedge als, deelt wedge met, ongeveer als, ongeveer zoals, bijna als, zo ongeveer als, ongeveer hetzelfde als, vergelijkbaar met',
    pt: 'igual a, como, o mesmo que, igual ao, idem, igual à, mesmo que, igual, mesma mix que, mesmo mix que, cópia de, exatamente como, a mesma que, o mesmo, partilhado com, compartilhado com, partilha com, mesma que, idêntico a, tal como, ouve o mesmo que, no mesmo monitor que, partilha monitor com, mais ou menos como, parecido com, quase como, quase igual a, quase igual ao, semelhante a',
  },
  open: {
    trade:
      'tbd, tba, tbc, as last year, standard, after sound check, by hand signal, to be discussed, on the day, will tell you, see on the day, at soundcheck, in soundcheck, to be confirmed, to be determined, ask on the day, tell you later, will sort on the day, during soundcheck, usual, as usual, the usual, same as last time, as last time, to be advised, as discussed, tell you on the day, to taste, on site, same as usual, n/a yet, later, unknown, ?, ??, tbd at soundcheck, will advise, to follow, we ll see, ask him, ask her, ask them, decide on the day, on request, call on the day, up to you, your choice, house standard, as you like, whatever, as needed, as required, no idea, dont know, don t know, tba on the day, by ear, will say, pending',
    de: 'wie letztes jahr, nach absprache, beim soundcheck, wie immer, wird noch bekannt gegeben, standardmäßig, tba, folgt, noch offen, nach ansage, im soundcheck, wie üblich, wie gehabt, vor ort, nach zuruf, wie gewohnt, unklar, noch unklar, nach handzeichen, auf zuruf, wie beim letzten mal, wird noch geklärt, nach bedarf, siehe soundcheck, entscheiden wir vor ort, klären wir vor ort, wird vor ort geklärt, noch nicht klar, nach wunsch, wissen wir noch nicht, kommt noch, wird nachgereicht, bitte erfragen, nach gefühl, egal, wie ihr wollt, offen, ansage vor ort, sagt er selbst, sagt sie selbst, noch zu klären, beim check, beim line check',
    fr: 'à définir, comme d habitude, à voir, à préciser, au soundcheck, à la balance, à confirmer, pendant la balance, comme la dernière fois, à voir sur place, selon balance, à déterminer, comme l an dernier, sur place, standard, à voir aux balances, aux balances, à la demande, on verra, on verra sur place, à voir ensemble, comme vous voulez, pas encore défini, selon besoin, selon besoins, à discuter, on vous dira, à voir avec lui, à voir avec elle, non défini, à voir le jour même',
    es: 'por definir, como siempre, a definir, en la prueba, por confirmar, en la prueba de sonido, a confirmar, como la última vez, se verá, durante la prueba, en prueba de sonido, estándar, lo de siempre, según prueba, a ver en la prueba, a ver, según necesidad, a convenir, por determinar, lo vemos en la prueba, lo vemos ahí, a gusto, como quieran, lo que quieran, a pedido, no definido, se avisa, por ver, en el momento, según el día',
    it: 'da definire, come al solito, al soundcheck, da confermare, come sempre, durante il soundcheck, da decidere, in prova, standard, come la volta scorsa, sul posto, da vedere, da vedere sul posto, da concordare, a richiesta, vediamo al soundcheck, vediamo sul posto, come volete, non ancora definito, da stabilire, al bisogno, da sentire, al check, in base al palco, secondo necessità',
    nl: 'nader te bepalen, zoals altijd, tijdens soundcheck, volgt nog, n.t.b., bij soundcheck, volgt later, ntb, zoals gewoonlijk, zoals vorig jaar, in overleg, standaard, nog onbekend, op verzoek, zien we wel, zien we ter plaatse, ter plaatse, nog te bepalen, naar wens, nog niet bekend, laten we weten, bij de soundcheck, vraag het hem, vraag het haar, zelf bepalen, maakt niet uit, wat jullie willen, nog open, volgt',
    pt: 'a definir, como sempre, na passagem de som, a confirmar, no soundcheck, a combinar, padrão, como da última vez, durante a passagem de som, a ver, a ver no soundcheck, a ver no local, a pedido, por definir, vemos no local, como quiserem, ainda não definido, a decidir, conforme necessário, logo se vê, a gosto, no ensaio de som, no check, a acertar, na hora',
  },
  spacer: {
    trade:
      'etc, and so on, nothing else, that s all, that s it, and that s it, and nothing else, nothing more',
    de: 'usw, etc, sonst nichts, mehr nicht, das war s, das wars, das reicht, sonst nix, weiter nichts',
    fr: 'etc, rien d autre, c est tout, et c est tout, rien de plus',
    es: 'etcétera, etc, nada más, eso es todo, y nada más, y ya está',
    it: 'ecc, eccetera, nient altro, e basta, basta così, tutto qui, e nient altro',
    nl: 'enz, enzovoort, verder niets, meer niet, dat is alles, verder niks, meer hoeft niet',
    pt: 'etc, mais nada, é tudo, só isso, e mais nada, e pronto',
  },
};

/** What follows is left out of what went before: "everything except click". */
export const exceptions: WordTable<'except' | 'all except'> = {
  'all except': {
    trade:
      'everything but, all but, full mix minus, all minus, everything except, everything apart from, everything minus, everything without, full mix except, full mix but, the lot except, all bar, everything bar, anything but, all apart from',
    es: 'todo menos, todo excepto, todo salvo, todo sin, todos menos, todos excepto, todo menos el, todo menos la, toda la banda menos',
    pt: 'tudo menos, tudo exceto, tudo excepto, tudo salvo, tudo sem, todos menos, tudo menos o, tudo menos a',
    fr: 'tout sauf, tout excepté, tout à part, tout sans, tout moins, tous sauf, toutes sauf, tout le monde sauf',
    de: 'alles ausser, alles bis auf, alles ohne, alles außer, alle außer, alle ausser, alle ohne, gesamter mix ohne, alle bis auf',
    it: 'tutto tranne, tutto eccetto, tutto salvo, tutto a parte, tutto meno, tutto senza, tutti tranne, tutti meno, tutto fuorché, tutto ma non',
    nl: 'alles behalve, alles buiten, alles uitgezonderd, alles zonder, iedereen behalve, alles op na, alles minus, allen behalve',
  },
  except: {
    trade:
      'except, except for, apart from, excluding, other than, bar, but no, but not, save for, with the exception of, minus the',
    de: 'außer, bis auf, ausgenommen, mit ausnahme von, aber nicht, nur nicht, nur kein, nur keine, aber kein, aber keine',
    fr: 'sauf, excepté, à part, hormis, mais pas, mais pas de, mais sans, à l exception de, à l exception du, fors, exception faite de, moins la, moins le',
    es: 'excepto, salvo, a excepción de, pero sin, pero no, menos el, menos la, menos los, menos las, a excepción del, quitando',
    it: 'tranne, eccetto, salvo, a parte, ma non, ma senza, ad eccezione di, escluso, esclusa, esclusi, fuorché, meno il, meno la',
    nl: 'behalve, uitgezonderd, maar geen, maar niet, maar zonder, met uitzondering van, op na, buiten',
    pt: 'exceto, excepto, salvo, menos a, menos o, mas sem, mas não, com exceção de, à exceção de, fora, tirando, menos os, menos as',
  },
};
