import type { PhantomNeed, PickUp } from '../../show/words.ts';
import type { WordTable } from './table.ts';

/** How a line is picked up. Models are opaque text; only words of the trade are here. */
export const pickUps: WordTable<PickUp> = {
  wireless: {
    trade:
      'wireless, rf, radio, radio mic, cordless, uhf, bodypack, belt pack, beltpack, wireless mic, lavalier, lav, receiver, wl, w/l, wireless handheld, radio handheld, rf mic, receiver at stage side, wireless system',
    de: 'funk, drahtlos, funkmikro, funkstrecke, taschensender, sender, ansteckmikro, funk mic, funkmikrofon, funke',
    fr: 'hf, sans fil, micro hf, émetteur, sans fils, micro sans fil',
    es: 'inalámbrico, inalámbrica, inalambrico, inalamb, micro inalámbrico, inal',
    it: 'radiomicrofono, senza fili, radio, wireless, radio microfono',
    nl: 'draadloos, draadloze, zender, draadloze mic',
    pt: 'sem fio, sem fios, microfone sem fio',
  },
  di: {
    trade:
      'di, d.i., direct, di box, dibox, active di, passive di, stereo di, direct box, amp direct out, direct out, di transformer, dibx, di active, di passive, 2x di, 2 x di, dis, di out, d i box, pcdi, line di, transformer di, act di, pass di, di st, di stereo, mono di, di l, di r, di (active), di (passive), pre di, post di, direct injection, usb di, laptop di',
    de: 'di aktiv, di passiv, aktive di, passive di, di boxen, aktive di box, passive di box, stereo di box, di-box',
    fr: 'di active, di passive, boîte de direct, boite de direct, boîtier de direct, di actif, di passif, directe, d.i. active, boitier direct',
    es: 'caja directa, caja di, di activa, di pasiva, cajas directas, caja de inyección, caja de inyección directa, inyección directa, caja inyección, di activo, di pasivo',
    it: 'di attiva, di passiva, scatola di, scatola diretta, di box attiva, di attivo',
    nl: 'di actief, di passief, actieve di, passieve di, di kast',
    pt: 'caixa direta, direct box, di ativa, di passiva, di activa, di ativo',
  },
  mic: {
    trade:
      'mic, mics, microphone, mike, dynamic, condenser, dyn, cond, ribbon, clip, clip on, clip mic, boundary, cardioid, large condenser, small condenser, sdc, ldc, dynamic mic, condenser mic, vocal mic, instrument mic, kick mic, own mic, tube mic, shotgun, gooseneck, omni, hypercardioid, supercardioid, pencil, large diaphragm, small diaphragm, lapel, contact mic, pencil condenser, wired mic, clip-on mic, overhead mic, drum mic, wired, drum clip, handheld mic, miked, overhead condenser, tom clip, mic clip, ld condenser, sd condenser, plate mic, boundary mic, electret',
    de: 'mikro, mikrofon, mikros, dynamisch, kondensator, bändchen, großmembran, kleinmembran, grenzfläche, clipmikro, kondensatormikro, dynamisches mikro, mikrophon, großmembraner, kleinmembraner, gesangsmikro, gesangsmikrofon, kondensatormikrofon, dyn mikro, dynamisches, ansteckmikrofon, clip mikro, niere, superniere, mikrofone, kond, grenzflächenmikro, grenzflächenmikrofon, bändchenmikro, overheadmikro',
    fr: 'micro, micros, dynamique, statique, ruban, pince, micro pince, cardioïde, microphone, électret, micro dynamique, micro statique, micro chant, dyn, stat, cravate, micro cravate, plaque, micro plaque',
    es: 'micro, micrófono, micrófonos, dinámico, condensador, cinta, pinza, micro pinza, micro de voz, micro dinámico, mic dinámico, micro de condensador, din, cond, mic condensador, micro de pinza, solapa, diadema, micro de contacto',
    it: 'microfono, microfoni, dinamico, condensatore, a condensatore, nastro, a nastro, clip, pinza, microfono dinamico, microfono a condensatore, panoramico mic, din, mic dinamico',
    nl: 'microfoon, microfoons, dynamisch, condensator, clip, lint, grensvlak, condensatormic, condensatormicrofoon, dynamische mic, micro, grensvlakmicrofoon',
    pt: 'microfone, microfones, dinâmico, condensador, fita, clip, garra, microfone dinâmico, din, mic dinâmico, microfone de lapela, auricular mic',
  },
  line: {
    trade:
      'line, xlr, jack, line level, xlr out, trs, jack line, mini jack, minijack, rca, usb, aes, line in, xlr line, out of rack, xlr out of rack, from rack, balanced, xlr direct, xlr male, xlr m, balanced line, line out, line xlr, multi, loom, snake, balanced xlr, bal xlr, symmetrical, playback rack, 2x xlr, 2 x xlr, ts, tails, xlr tails, dsub, optical, madi, symmetric, bal, line level xlr, headphone jack, audio jack, cinch',
    de: 'linie, klinke, symmetrisch, cinch, xlr symmetrisch, line pegel, miniklinke, linepegel',
    fr: 'ligne, jack, xlr, symétrique, niveau ligne, mini jack, sym',
    es: 'línea, linea, plug, xlr, balanceada, balanceado, nivel de línea, mini plug, miniplug',
    it: 'linea, xlr, bilanciato, bilanciata, livello linea, mini jack',
    nl: 'lijn, xlr, gebalanceerd, lijnniveau',
    pt: 'linha, xlr, balanceado, p10, nível de linha, p2, balanceada',
  },
};

/** What the words say of phantom power. A condenser asks for it; a ribbon may be destroyed by it. No word is
 * `not said`: engineers ask for the mark because nobody knows every model. */
export const phantomWords: WordTable<Exclude<PhantomNeed, 'not said'>> = {
  harmful: {
    trade:
      'ribbon, ribbon mic, no 48v, no +48, no 48, never 48v, no p48, without 48v, no phantom, no phantom power, no phantom please, 48v off, phantom off, no +48v, not 48v, 48v no, phantom no',
    de: 'bändchen, keine phantomspeisung, kein phantom, kein 48v, ohne phantom, keine phantom, keine 48v, ohne 48v, ohne phantomspeisung, bändchenmikro, kein p48, kein 48 volt',
    fr: 'ruban, pas de 48v, sans 48v, pas de phantom, sans phantom, pas d alimentation fantôme, pas de fantôme, sans alim fantôme, à ruban, micro ruban',
    es: 'cinta, sin phantom, sin 48v, no phantom, micro de cinta, sin alimentación phantom',
    it: 'nastro, senza phantom, no phantom, senza 48v, a nastro, niente phantom',
    nl: 'lint, geen phantom, geen 48v, zonder phantom, geen fantoomvoeding, lintmicrofoon, zonder 48v',
    pt: 'fita, sem phantom, sem 48v',
  },
  'not needed': {
    trade:
      'passive, passive di, own supply, own power, transformer di, battery, self powered, di transformer, pass di, own psu, passive stereo di, powered by band, di passive',
    de: 'passiv, passive di, eigene speisung, eigenes netzteil, batterie, di passiv, passive di box, batteriebetrieben, eigenes speisegerät',
    fr: 'passive, di passive, alim propre, pile, sur pile, di passif',
    es: 'pasiva, di pasiva, caja pasiva, pasivo, di pasivo, pila, fuente propia, con pila',
    it: 'passiva, di passiva, batteria interna, passivo, alimentazione propria',
    nl: 'passief, passieve di, eigen voeding, di passief',
    pt: 'passiva, di passiva, fonte própria, passivo',
  },
  needed: {
    trade:
      '48v, +48v, 48 v, +48, p48, 48, ph, phantom, 48 volt, 48 volts, phantom power, condenser, cond, needs power, large condenser, small condenser, sdc, ldc, condenser mic, pencil condenser, electret, 48vdc, +48 v, phant, phtm, pp, pwr',
    de: 'phantomspeisung, kondensator, phantom, kondensatormikro, kondensatormikrofon, kond, speisung, großmembraner, kleinmembraner, 48 volt, p48, großmembran kondensator, kleinmembran, großmembran',
    fr: 'statique, alimentation fantôme, fantôme, micro statique, électret, stat, alim fantôme, alim 48v, 48 volts, statiques',
    es: 'condensador, alimentación phantom, micro de condensador, phantom, condensadores, mic condensador',
    it: 'condensatore, a condensatore, alimentazione phantom, phantom',
    nl: 'condensator, fantoomvoeding, fantoom, phantom, condensatormic, condensatormicrofoon',
    pt: 'condensador, alimentação phantom, phantom',
  },
};
