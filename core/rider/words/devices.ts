import type { DeviceKind } from '../../show/words.ts';
import type { WordTable } from './table.ts';

/** What a performer listens through. */
export const deviceWords: WordTable<DeviceKind> = {
  'drum fill': {
    trade:
      'drum fill, drumfill, drum sub, drum fill + sub, df, drum monitor, drum fill sub, drum fills, texas headphones, drums fill, drum wedge sub, drum monitor sub, drum fill w sub, drum fill with sub, drummer fill, drummer sub, drum monitor with sub, texas, drum stack, drum box, butt kicker, bum shaker, shaker seat, drum seat shaker, thumper, tactile, tactile shaker, throne shaker, sub for drums',
    de: 'drumfill, drum sub, drum fill, drum monitor, drummonitor, schlagzeugmonitor, schlagzeugfill, drumfill mit sub, drumfill mit subwoofer, drummer sub, drumhocker shaker, sitzshaker, körperschallwandler, rüttler',
    fr: 'drum fill, fill batterie, drumfill, fill drum, sub batterie, retour batterie avec sub, drum fill avec sub, retour batteur avec sub, siège vibrant, vibreur',
    es: 'drum fill, monitor de batería, drumfill, drumfill con sub, drum fill con sub, monitor batería con sub, subwoofer batería, sub de batería, sub batería, drums fill, vibrador de asiento',
    it: 'drum fill, drumfill, drum fill con sub, monitor batteria, sub batteria, drumfill con sub, fill batteria, vibratore sedile',
    nl: 'drumfill, drum fill, drum fill met sub, drummonitor, drum monitor, drum sub, drumfill met sub, zadelshaker, trilstoel',
    pt: 'drum fill, monitor de bateria, drumfill, fill bateria, drum fill com sub, sub bateria, sub de bateria, drum fill com subwoofer, vibrador de banco',
  },
  'side fill': {
    trade:
      'side fill, sidefill, side fills, sidefills, sf, sides, side, sfl, sfr, sf l, sf r, sidefill pair, side fill pair, stage sides, side wash, cross fill, cross stage, crossfill, crossfills, side stacks',
    de: 'sidefill, seitenfill, sidefills, seitenfills, seitenlautsprecher, side fills, seitliche monitore, seitenmonitore, bühnensides',
    fr: 'side, sides, side fill, sidefill, side fills, latéraux, retours latéraux',
    es: 'sides, side fill, sidefill, side fills, laterales, monitores laterales, side, sidefills, relleno lateral',
    it: 'side, side fill, sidefill, sides, side fills, sidefills, laterali, monitor laterali',
    nl: 'sidefill, sidefills, side fill, side fills, zijfills, zijfill, zijmonitors, sides',
    pt: 'side, side fill, sidefill, sides, side fills, sidefills, laterais, retornos laterais',
  },
  'front fill': {
    trade: 'front fill, frontfill, ff, frontfills, front fills, near fill, nearfill, lip fill, lip fills',
    de: 'frontfill',
    fr: 'front fill',
    es: 'front fill',
    it: 'front fill',
    nl: 'frontfill',
    pt: 'front fill',
  },
  'in-ear': {
    trade:
      'iem, iems, in ear, in ears, inear, inears, ears, in ear monitor, in ear monitors, in ear monitoring, in ear pack, pack, packs, bodypack, beltpack, belt pack, wireless iem, iem wireless, wired iem, iem wired, headphones, earphones, ear monitors, moulds, headphone, hp, wired ears, personal monitor, earphone, headphone amp, wireless ears, in ear system, iem system, iem pack, cans, buds, ear buds, pm, personal mixer, iem mix, in ear mix, wl iem, headphone mix, iem rf, ear mix, earpieces, headphones amp, in-ears wireless, iem packs, iem beltpack, ear packs, ear pack, wired belt pack, wired pack, headphone feed, in ear feed, in ears mix, hardwired iem, hard wired ears, in ear mons, hardwired ears, cans mix, earbuds, in-ear wired, iem bodypack, over ears, headset phones, drum ears, closed headphones, wireless packs, in ear receivers, monitor headphones, headphones mix, iem feed, jh style ears, moulded ears, custom moulds, iem receivers, phones',
    de: 'in ear, inear, kopfhörer, taschenempfänger, ohrhörer, inears, in ears, funk in ear, in ear funk, in ear kabel, kabel in ear, in ear system, in ear strecke, funk iem, ohrenhörer, drahtlos in ear, in ear kabelgebunden, kopfhörerverstärker, knopf im ohr, in ears kabel, kabel in ears, in ear sender, in ear empfänger, inear kabel, kopfhörer kabelgebunden, kabelgebundene in ears, kopfhörerweg, kopfhörermix, ohrstöpsel, inear system, in ear taschenempfänger, funk in ears, in ear mix, iem system, otoplastiken, kabelgebundener kopfhörer, stöpsel, in ears funk, in ear funkstrecke, kopfhörern, inears kabelgebunden, taschenempfänger in ear, ear, kabel iem, iem kabel, iem kabelgebunden, ohrhörer kabel',
    fr: 'in ear, ear monitor, ear monitors, oreillettes, oreillette, casque, ears, retour casque, ear, écouteurs, système in ear, in ears, ear hf, ears hf, ears filaires, in ear monitors, système hf in ear, ampli casque, retour in ear, casque filaire, oreillettes hf, oreillettes filaires, ear monitor hf, système ear, système ears, in ear filaire, in ear hf, écouteurs intra, intras, intra auriculaires, intra, retour oreillettes, retours oreillettes, ear filaire, système oreillette, in ear sans fil, casques, bouchons moulés, oreillettes moulées, récepteur in ear, boîtier in ear',
    es: 'in ear, in ears, auriculares, audífonos, inears, monitor in ear, sistema in ear, monitores in ear, auricular, pinganillo, inear, in ears inalámbricos, cascos, petaca, in ear inalámbrico, in ear inalámbricos, in ear por cable, in ears por cable, audífono, auriculares por cable, sistemas in ear, sistema de in ear, monitores in ears, in ear cableado, inears inalámbricos, inear inalámbrico, monitor inalámbrico, auriculares inalámbricos, intrauditivos, intraauriculares, monitores intraurales, inear por cable, petacas, in ear de cable, ear, ears, pinganillos',
    it: 'in ear, inear, cuffie, auricolari, in ears, cuffia, ear monitor, sistema in ear, auricolare, radio in ear, ear monitors, cuffia cablata, cuffie cablate, in ear cablato, in ear wireless, in ear radio, cuffie wireless, cuffiette, ear radio, sistemi in ear, auricolari wireless, in ear via cavo, in ear monitor, ear monitoring, cuffia via cavo, bodypack in ear, inears, cuffia chiusa, auricolari cablati, ricevitore in ear, cuffie chiuse, in-ear via radio, ear, ears, ear via cavo, ear cablato',
    nl: 'in ear, in ears, oortjes, koptelefoon, inears, in ear systeem, oordopjes, oortje, inear, draadloze in ear, draadloze in ears, bedrade in ears, in ear bedraad, in ear draadloos, in ear ontvanger, hoofdtelefoon, hoofdtelefoons, koptelefoons, in ear set, in ear sets, oortjes bedraad, oordoppen, oorknopjes, iem set, in-ear bedraad, oortjes draadloos, bedrade oortjes, draadloze oortjes, in ear zender, inear set, kop telefoon, ear, oortelefoon, oortelefoons',
    pt: 'in ear, in ears, fones, fone, auriculares, ponto, fone de ouvido, auscultadores, in ear monitor, fone com fio, in ear sem fio, in ear com fio, fones de ouvido, fones com fio, sistema in ear, auscultador, monitor in ear, monitores in ear, auriculares sem fio, sistema de in ear, pontos, ponto eletrônico, auricular com fio, in ears sem fio, in ear por cabo, fones sem fio, headphones, headphone, amplificador de fones, ear, ears, auricular',
  },
  wedge: {
    trade:
      'wedge, wedges, floor monitor, floor monitors, monitor, monitors, floor wedge, floor wedges, monitor wedge, monitor wedges, wdg, 1x15, 1x12, 2x12, 2x15, 15", 12", mon wedge, wedge monitor, bi amp wedge, foldback, stage monitor, speaker, spot monitor, hot spot, fold back, mons, wedge pair, pair of wedges, 15 inch wedge, 12 inch wedge, active monitor, passive monitor, floor mon, wdgs, floormonitor, stage monitors, foldback wedge, powered wedge, monitor speaker, monitor speakers, 12 wedge, 15 wedge, 12/2, 15/2, floor box, floor speaker, floor speakers, 1 x 12, 1 x 15, 2 x 12, stage wedge, stage wedges, mon wedges, mon, slant monitor, low profile wedge, biamp wedge, floor monitor wedge, vocal wedge, vox wedge, wedge monitors, 10 inch wedge, monitor box, stage speaker, nearfield, personal wedge, small wedge, big wedge, large wedge, vocal wedges, drum wedge, drum wedges',
    de: 'bodenmonitor, floormonitor, monitorbox, wedge, monitorboxen, bodenmonitore, floormonitore, monitor, keil, monitore, monitorlautsprecher, box, boxen, bühnenmonitor, monitorkeil, floorwedge, wedges, lautsprecher, bodenlautsprecher, keile, bodenmonitorbox, bodenbox, bodenboxen, monitorwedge, monitor wedge, bühnenmonitore, schrägmonitor, floor monitor, floor monitore, aktivmonitor, aktiver monitor, monis, moni, flacher monitor, bodenlautsprecher monitor, aktivboxen, bodenwedge, wedge paar, wedge-paar, wedgepaar, monitorpaar, monitor paar, drumwedge, schlagzeugwedge, schlagzeug wedge, drum wedge',
    fr: 'retour, retours, bain de pied, bains de pied, wedge, retour de scène, wedges, retours de scène, moniteur, bdp, enceinte de retour, moniteurs, retour sol, retour au sol, enceinte, retour wedge, retour de sol, retours de sol, moniteur de sol, moniteurs de sol, retour bain de pied, retours bain de pied, enceintes de retour, retour scène, enceintes, bains, retour plateau, enceinte retour, moniteur de scène',
    es: 'monitor de piso, monitores de piso, cuña, cuñas, monitor, monitores, monitor de suelo, wedge, monitores de suelo, piso, monitor de escenario, de piso, cuña de monitor, wedges, bafle, monitor piso, monitores piso, cuña de piso, cuñas de piso, monitor cuña, monitor de cuña, monitores de cuña, retorno de piso, monitor de suelo activo, bafles, parlante de piso, caja de monitor, monitores de escenario, monitor de retorno, retorno de escenario, cajas de monitor, monitor tipo cuña, altavoz de suelo, parlantes de piso, suelo',
    it: 'spia, spie, monitor, wedge, spia palco, monitor da palco, monitor a terra, cassa spia, spie da palco, wedges, spia a terra, monitor da terra, monitor da pavimento, monitor spia, casse spia, spia monitor, diffusore da terra, casse monitor, monitor palco, cassa monitor, spie a terra, monitors, spia attiva, spie attive, a terra',
    nl: 'vloermonitor, monitor, wedge, vloermonitors, monitors, wedges, vloermonitoren, monitorbox, floormonitor, luidspreker, vloerwedge, podiummonitor, podiummonitors, vloerbox, monitorboxen, monitorluidspreker, grondmonitor, vloer monitor, vloer monitors, monitorkast, monitorkasten, spreker op de vloer, drumwedge, drum wedge',
    pt: 'monitor de chão, retorno, retornos, monitor, monitores, spot, caixa de retorno, monitor de piso, cunha, monição, caixas de retorno, monitores de chão, wedge, via de retorno, via de chão, vias de chão, retorno de chão, retornos de chão, retorno de palco, monitor de palco, monitores de palco, cunhas, caixa de chão, munição, munições, munição de chão, colunas de munição, coluna de munição, caixas de chão, monitores de piso, spot de chão, spots, monição de chão, wedges, caixa de monitor, coluna de chão, chão',
  },
};

export const formatWords: WordTable<'mono' | 'stereo'> = {
  stereo: {
    trade:
      'stereo, st, l/r, lr, ster, in stereo, stereo please, l+r, 2 ch, two channel, stereo mix, in st, st mix, stereo pair, left and right, left right, dual, 2ch',
    de: 'stereo, in stereo, stereomix, zweikanalig, links und rechts',
    fr: 'stéréo, en stéréo, stereo, gauche et droite, deux canaux, en stereo',
    es: 'estéreo, en estéreo, stereo, dos canales, en stereo, estereofónico, l y r',
    it: 'stereo, in stereo, due canali, stereofonico',
    nl: 'stereo, in stereo, tweekanaals, stereomix, links en rechts',
    pt: 'estéreo, em estéreo, stereo, em stereo, dois canais, estereofónico',
  },
  mono: {
    trade:
      'mono, m, in mono, mono mix, monaural, single, one ear, in one ear, 1 ch, one channel, summed, mono sum, mn, in parallel, paralleled, linked, daisy chained, y split, parallel',
    de: 'mono, in mono, einkanalig, monosignal, monomix, nur ein ohr, parallel, parallel geschaltet, gelinkt, parallel gelinkt, durchgeschleift',
    fr: 'mono, monophonique, en mono, un seul canal, mono sommé, en parallèle, linkés, chaînés',
    es: 'mono, en mono, un canal, monofónico, mono sumado, en paralelo, linkeados, encadenados',
    it: 'mono, in mono, un canale, monofonico, in parallelo, linkate, in link',
    nl: 'mono, in mono, eenkanaals, monomix, parallel, doorgelust, gelinkt',
    pt: 'mono, em mono, um canal, monofónico, monofônico, em paralelo, linkados',
  },
};

/** The mix is made on the band's own desk. */
export const elsewhereWords: WordTable<'elsewhere'> = {
  elsewhere: {
    trade:
      'own desk, own mixer, mix ourselves, own rack, own console, own monitor desk, we mix ourselves, mixes ourselves, self mixed, our own desk, our own mixer, mixed by band, own iem rack, own split, own monitor mixer, from our rack, from band rack, band rack, own iem mixer, from own desk, own monitor console, mixed from our rack, own iem desk, own in ear rack, mixed on our own desk, control our own mix, from our own desk, from our own mixer, we mix our own ears, mixed by tablet, in ear rack, iem rack, self mixing, our rack, own console and own iem rack, own iem console, we carry our own iem, we carry our own monitor desk, we carry our own desk, our iem rack, own mon desk, own monitor engineer and desk, own monitor rig, self contained monitors, self contained iem, self contained iems, self contained in ears, band mixes own monitors, mixes own ears, own ear mixer, own digital mixer, personal mixers, we mix our own monitors, we run our own ears, we run our own monitors, we do our own monitors, mix our own, mix from tablets, mix via tablet, own split and desk, our iem mixer, own monitor system, own iem system and desk',
    de: 'eigenes pult, eigener mixer, mischen selbst, eigenes rack, eigenes monitorpult, wir mischen selbst, eigenes in ear rack, eigenes mischpult, eigener monitormixer, eigenes monitorrack, eigenem pult, eigenem rack, eigenem mischpult, mischen uns selbst, mischen wir selbst, eigenes inear rack, in ear rack, monitorrack, selbst gemischt, eigener in ear mixer, wir bringen unser eigenes monitorpult, mischen per tablet, tablet selbst, eigenes monitorsystem, eigener splitter, eigenes in ear pult, eigene monitorkonsole, eigene konsole, mischt sich selbst, mischen sich selbst, eigenes monitormischpult, eigener digitalmixer, per app selbst, unser rack, unser eigenes pult',
    fr: 'propre console, notre console, console retour perso, notre propre console, rack in ear, mixons nous mêmes, gérons nos retours, propre rack, notre rack, notre propre rack, console perso, autonome en retours, autonomes en retours, autonomes, notre propre système de retours, on se mixe, on se mixe nous mêmes, console de retours perso, mixage par tablette, nos propres retours, notre rack ear, notre console retours, propre console retours, splitter perso, rack ears autonome, autonome, gèrent leurs retours, se mixent eux mêmes',
    es: 'propia consola, nuestra consola, mesa propia, nuestra mesa, rack propio, nuestro rack, consola propia, propia mesa, nuestro propio rack, mezclamos nosotros, nos mezclamos, mezcla propia, autónomos, nos mezclamos solos, mezclamos por tablet, propio rack de in ears, rack de in ears propio, nuestra propia mesa de monitores, consola de monitores propia, mezclan ellos mismos, mesa de monitores propia, autónomo, propio rack, sistema propio de mezcla, se mezclan solos',
    it: 'proprio mixer, nostro mixer, mixer proprio, nostro banco, rack proprio, nostro rack, banco proprio, autonomi, ci mixiamo da soli, mixer nostro, rack in ear nostro, mixer monitor nostro, ci gestiamo i monitor, ci gestiamo da soli, gestione autonoma, monitor autonomi, via tablet, rack in ear proprio, proprio rack, nostro rack in ear, mixer ear nostro, ascolti autonomi, autonomo',
    nl: 'eigen mixer, eigen tafel, mixen zelf, eigen rack, eigen mengtafel, eigen monitortafel, eigen in ear rack, wij mixen zelf, via tablet, eigen monitorrack, eigen iem rack, eigen in ear mixer, eigen splitter, eigen digitale tafel, eigen systeem met mixer, eigen monitormixer, regelen zelf, zelf mixen',
    pt: 'própria mesa, nossa mesa, mesa própria, nosso rack, rack próprio, mixagem própria, mesa digital própria, nossa própria mesa, mesa de monitores própria, rack de in ear próprio, misturamos nós, fazemos a nossa mistura, mix via tablet, rack próprio de in ear, autónomos, autônomos, nosso próprio rack, misturam-se sozinhos, mesa de monição própria',
  },
};

/** What a mix is called before its number. */
export const mixLabels: WordTable<'mix'> = {
  mix: {
    trade:
      'mix, mon, monitor, aux, iem, ears, wedge, monitor mix, stage mix, monitor mix no, monitor no, send, bus, out, output, in ear, m, mx, monmix, mon mix, iem mix, aux send, mixes, wedge mix, w, pack, iems, monitor send, ear mix, monitors, mtx, sf, foldback, mix no, mix nr, mon no, wedges, sends, output mix, mon send, bus mix, stereo mix, iem send, listen mix, ear, cue mix',
    de: 'weg, monitorweg, auxweg, monitor, mix, aux, weg nr, monitorwege, aux weg, monitormix, wege, monitor weg, in ear weg, inear, mix nr, monitormix nr, in ear mix, hörweg, mithörweg, mon weg, mon',
    fr: 'retour, circuit, mix, aux, départ, circuit retour, départ retour, retours, circuits, ligne de retour, canal retour, circuit de retour, retour n, mix retour, ear, mon',
    es: 'mezcla, envío, monitor, mix, auxiliar, aux, salida, mezcla monitor, envio, línea de monitor, linea de monitores, monitor mezcla, mezcla de monitor, via, vía, retorno, envío monitor, mix monitor, mezcla in ear, mon, salida monitor, cuña',
    it: 'mandata, ascolto, spia, mix, aux, monitor, uscita, ascolti, linea monitor, linea di monitoraggio, mandate, mix monitor, via, aux monitor, ear, mon, linea spia, linea ascolto, spie',
    nl: 'groep, monitorgroep, mix, aux, monitor, monitormix, monitorgroepen, monitor groep, monitoruitgang, uitgang, mon groep, monitorweg, in ear mix, mon, monitorlijn, retour',
    pt: 'via, mix, mandada, retorno, auxiliar, aux, monitor, saída, envio, via de monitor, via de retorno, mistura, via monitor, retorno via, mix monitor, linha de monitor, mistura monitor, mon, mandada monitor, munição, monição',
  },
};

/** The same device as the listener before has. */
export const sameDeviceWords: WordTable<'same device'> = {
  'same device': {
    trade:
      'same system, same kit, same device, same setup, same set up, same gear, same rig, same equipment, same type of monitor, the same kit, the same system, same monitors, same again kit wise',
    de: 'gleiches system, gleiche ausstattung, gleiches gerät, gleiche technik, dasselbe system, selbes system, selbe ausstattung, gleiches equipment, das gleiche system, die gleiche ausstattung',
    fr: 'même système, même équipement, même matériel, même dispositif, même matos, le même système, le même matériel',
    es: 'igual de equipo, mismo equipo, el mismo equipo, mismo sistema, el mismo sistema, igual equipo, igual sistema',
    it: 'stesso sistema, stesso impianto, stessa attrezzatura, stesso apparecchio, lo stesso sistema, stessa dotazione',
    nl: 'zelfde systeem, hetzelfde systeem, zelfde set, zelfde uitrusting, dezelfde set, zelfde apparatuur',
    pt: 'mesmo sistema, o mesmo sistema, mesmo equipamento, o mesmo equipamento, igual de equipamento',
  },
};

/** How the device is fed; it says that a device is meant and no more. */
export const linkWords: WordTable<'wired' | 'wireless'> = {
  wired: {
    trade: 'wired, cabled, hardwired, hard wired, on a cable',
    de: 'kabelgebunden, verkabelt, mit kabel, per kabel, am kabel',
    fr: 'filaire, filaires, en filaire, câblé',
    es: 'por cable, cableado, cableados, con cable',
    it: 'cablato, cablata, cablati, via cavo, col cavo, a filo',
    nl: 'bedraad, bedrade, met kabel, aan een kabel',
    pt: 'com fio, por cabo, cabeado, de fio',
  },
  wireless: {
    trade: 'wireless, radio, rf',
    de: 'funk, drahtlos, per funk',
    fr: 'hf, sans fil',
    es: 'inalámbrico, inalámbricos, inalámbrica, sin cable, sin hilos',
    it: 'via radio, wireless, senza fili, radio',
    nl: 'draadloos, draadloze, zender',
    pt: 'sem fio, sem fios',
  },
};
