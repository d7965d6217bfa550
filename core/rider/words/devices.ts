import type { DeviceKind } from '../../show/words.ts';
import type { WordTable } from './table.ts';

/** What a performer listens through. */
export const deviceWords: WordTable<DeviceKind> = {
  'drum fill': {
    trade:
      'drum fill, drumfill, drum sub, drum fill + sub, df, drum monitor, drum fill sub, drum fills, texas headphones, drums fill, drum wedge sub, drum monitor sub',
    de: 'drumfill, drum sub',
    fr: 'drum fill, fill batterie',
    es: 'drum fill, monitor de batería, drumfill',
    it: 'drum fill, drumfill',
    nl: 'drumfill, drum fill',
    pt: 'drum fill, monitor de bateria',
  },
  'side fill': {
    trade: 'side fill, sidefill, side fills, sidefills, sf, sides, side, sfl, sfr, sf l, sf r',
    de: 'sidefill, seitenfill, sidefills',
    fr: 'side, sides, side fill, sidefill',
    es: 'sides, side fill, sidefill, side fills',
    it: 'side, side fill, sidefill, sides',
    nl: 'sidefill, sidefills',
    pt: 'side, side fill, sidefill, sides',
  },
  'front fill': {
    trade: 'front fill, frontfill, ff',
    de: 'frontfill',
    fr: 'front fill',
    es: 'front fill',
    it: 'front fill',
    nl: 'frontfill',
    pt: 'front fill',
  },
  'in-ear': {
    trade:
      'iem, iems, in ear, in ears, inear, inears, ears, in ear monitor, in ear monitors, in ear monitoring, in ear pack, pack, packs, bodypack, beltpack, belt pack, wireless iem, iem wireless, wired iem, iem wired, headphones, earphones, ear monitors, moulds, headphone, hp, wired ears, personal monitor, earphone, headphone amp, phones, wireless ears, in ear system, iem system, iem pack, cans, buds, ear buds, pm, personal mixer, iem mix, in ear mix, wl iem, headphone mix, iem rf, ear mix, earpieces, headphones amp',
    de: 'in ear, inear, kopfhörer, taschenempfänger, ohrhörer, inears, in ears, funk in ear, in ear funk, in ear kabel, kabel in ear, in ear system, in ear strecke, funk iem, ohrenhörer, drahtlos in ear, in ear kabelgebunden, kopfhörerverstärker, knopf im ohr',
    fr: 'in ear, ear monitor, ear monitors, oreillettes, oreillette, casque, ears, retour casque, ear, écouteurs, système in ear, in ears, ear hf, ears hf, ears filaires, in ear monitors, système hf in ear, ampli casque, retour in ear',
    es: 'in ear, in ears, auriculares, audífonos, inears, monitor in ear, sistema in ear, monitores in ear, auricular, pinganillo, inear, in ears inalámbricos, cascos, petaca',
    it: 'in ear, inear, cuffie, auricolari, in ears, cuffia, ear monitor, sistema in ear, auricolare, radio in ear, ear monitors',
    nl: 'in ear, in ears, oortjes, koptelefoon, inears, in ear systeem, oordopjes, oortje, inear',
    pt: 'in ear, in ears, fones, fone, auriculares, ponto, fone de ouvido, auscultadores, in ear monitor, fone com fio',
  },
  wedge: {
    trade:
      'wedge, wedges, floor monitor, floor monitors, monitor, monitors, floor wedge, floor wedges, monitor wedge, monitor wedges, wdg, 1x15, 1x12, 2x12, 2x15, 15", 12", mon wedge, wedge monitor, bi amp wedge, foldback, stage monitor, speaker, spot monitor, hot spot, fold back, mons, wedge pair, pair of wedges, 15 inch wedge, 12 inch wedge, active monitor, passive monitor, floor mon, wdgs, floormonitor, stage monitors, foldback wedge, powered wedge, monitor speaker, monitor speakers, 12 wedge, 15 wedge, 12/2, 15/2',
    de: 'bodenmonitor, floormonitor, monitorbox, wedge, monitorboxen, bodenmonitore, floormonitore, monitor, keil, monitore, monitorlautsprecher, box, boxen, bühnenmonitor, monitorkeil, floorwedge, wedges, lautsprecher, bodenlautsprecher, keile',
    fr: 'retour, retours, bain de pied, bains de pied, wedge, retour de scène, wedges, retours de scène, moniteur, bdp, enceinte de retour, moniteurs, retour sol, retour au sol, enceinte, retour wedge',
    es: 'monitor de piso, monitores de piso, cuña, cuñas, monitor, monitores, monitor de suelo, wedge, monitores de suelo, piso, monitor de escenario, de piso, cuña de monitor, wedges, bafle, monitor piso',
    it: 'spia, spie, monitor, wedge, spia palco, monitor da palco, monitor a terra, cassa spia, spie da palco, wedges, spia a terra',
    nl: 'vloermonitor, monitor, wedge, vloermonitors, monitors, wedges, vloermonitoren, monitorbox, floormonitor, luidspreker',
    pt: 'monitor de chão, retorno, retornos, monitor, monitores, spot, caixa de retorno, monitor de piso, cunha, monição, caixas de retorno, monitores de chão, wedge, via de retorno',
  },
};

export const formatWords: WordTable<'mono' | 'stereo'> = {
  stereo: {
    trade: 'stereo, st, l/r, lr, ster, in stereo, stereo please, l+r, 2 ch, two channel, stereo mix',
    de: 'stereo',
    fr: 'stéréo, en stéréo',
    es: 'estéreo, en estéreo, stereo',
    it: 'stereo',
    nl: 'stereo',
    pt: 'estéreo, em estéreo, stereo',
  },
  mono: {
    trade: 'mono, m, in mono, mono mix, monaural, single',
    de: 'mono',
    fr: 'mono, monophonique',
    es: 'mono',
    it: 'mono',
    nl: 'mono',
    pt: 'mono',
  },
};

/** The mix is made on the band's own desk. */
export const elsewhereWords: WordTable<'elsewhere'> = {
  elsewhere: {
    trade:
      'own desk, own mixer, mix ourselves, own rack, own console, own monitor desk, we mix ourselves, mixes ourselves, self mixed, our own desk, our own mixer, mixed by band, own iem rack, own split, own monitor mixer, from our rack, from band rack, band rack, own iem mixer, from own desk, own monitor console, mixed from our rack, own iem desk, own in ear rack, mixed on our own desk, control our own mix, from our own desk, from our own mixer, we mix our own ears, mixed by tablet, in ear rack, iem rack, self mixing, our rack',
    de: 'eigenes pult, eigener mixer, mischen selbst, eigenes rack, eigenes monitorpult, wir mischen selbst, eigenes in ear rack, eigenes mischpult, eigener monitormixer, eigenes monitorrack, eigenem pult, eigenem rack, eigenem mischpult, mischen uns selbst, mischen wir selbst, eigenes inear rack, in ear rack, monitorrack, selbst gemischt',
    fr: 'propre console, notre console, console retour perso, notre propre console, rack in ear, mixons nous mêmes, gérons nos retours, propre rack, notre rack, notre propre rack, console perso, autonome en retours, autonomes en retours, autonomes',
    es: 'propia consola, nuestra consola, mesa propia, nuestra mesa, rack propio, nuestro rack, consola propia, propia mesa, nuestro propio rack, mezclamos nosotros, nos mezclamos, mezcla propia, autónomos',
    it: 'proprio mixer, nostro mixer, mixer proprio, nostro banco, rack proprio, nostro rack, banco proprio, autonomi, ci mixiamo da soli, mixer nostro',
    nl: 'eigen mixer, eigen tafel, mixen zelf, eigen rack, eigen mengtafel, eigen monitortafel, eigen in ear rack',
    pt: 'própria mesa, nossa mesa, mesa própria, nosso rack, rack próprio, mixagem própria, mesa digital própria',
  },
};

/** What a mix is called before its number. */
export const mixLabels: WordTable<'mix'> = {
  mix: {
    trade:
      'mix, mon, monitor, aux, iem, ears, wedge, monitor mix, stage mix, monitor mix no, monitor no, send, bus, out, output, in ear, m, mx, monmix, mon mix, iem mix, aux send, mixes, wedge mix, w, pack, iems, monitor send, ear mix, monitors, mtx, sf, foldback',
    de: 'weg, monitorweg, auxweg, monitor, mix, aux, weg nr, monitorwege, aux weg, monitormix, wege, monitor weg, in ear weg, inear',
    fr: 'retour, circuit, mix, aux, départ, circuit retour, départ retour, retours, circuits, ligne de retour, canal retour, circuit de retour',
    es: 'mezcla, envío, monitor, mix, auxiliar, aux, salida, mezcla monitor, envio, línea de monitor, linea de monitores, monitor mezcla, mezcla de monitor, via, vía',
    it: 'mandata, ascolto, spia, mix, aux, monitor, uscita, ascolti, linea monitor, linea di monitoraggio, mandate',
    nl: 'groep, monitorgroep, mix, aux, monitor, monitormix, monitorgroepen, monitor groep, monitoruitgang, uitgang, mon groep',
    pt: 'via, mix, mandada, retorno, auxiliar, aux, monitor, saída, envio, via de monitor, via de retorno, mistura',
  },
};
