import type { WordTable } from './table.ts';

/** What a column holds. */
export type ColumnRole =
  | 'channel'
  | 'source'
  | 'performer'
  | 'pick-up'
  | 'second choice'
  | 'stand'
  | 'phantom'
  | 'position'
  | 'socket'
  | 'group'
  | 'side'
  | 'supplied'
  | 'notes'
  | 'insert'
  | 'connector'
  | 'mix'
  | 'device'
  | 'format'
  | 'wishes'
  | 'exclusions'
  | 'role'
  | 'own'
  | 'count';

export const headerWords: WordTable<ColumnRole> = {
  channel: {
    trade:
      'ch, ch., ch#, pack, pack no, belt pack, tx, radio mic, ch #, channel, chan, #, no, no., nr, nr., n°, nº, n, num, number, input no, input number, input nr, chnl, line, line no, input #, inp, ip, line #, ch no, ch nr, pos nr, input ch, channel no, chl, foh ch, chan no, channel number, console ch, desk ch, foh, mon ch, tail, tail no, strip, fader, patch #, in #, row, item',
    de: 'kanal, nummer, kan, lfd nr, kanal nr, eingang nr, ch nr, kanalnummer, kn, pult kanal, lfd, ka, kan nr, nr kanal',
    fr: 'tranche, voie, n° voie, piste, numéro, patch, tr, voies, console, n° tranche, entrée n°, canal, ligne, n° de voie',
    es: 'canal, número, núm, nro, can, ch num, n° canal, línea, nº canal, canales, nro canal, entrada nº',
    it: 'canale, numero, can, num canale, n canale, n° canale, canali, ch canale',
    nl: 'kanaal, nummer, kan, kanaalnr, kanaal nr, kan nr, lijn',
    pt: 'canal, número, núm, via canal, nº canal, canais',
  },
  source: {
    trade:
      'source, instrument, input, character, name, sources, instruments, input source, signal, description, input name, what, inputs, channel name, input list, line name, source name, sound source, instrument source, input description, title, label, patch, source instrument, instr, instrument voice, item name, in, instrumentation, source description, ch name, track name, sender',
    de: 'quelle, bezeichnung, eingang, signal, quelle instrument, instrument quelle, kanalname, signalquelle, bezeichner, belegung, eingangssignal, kanalbelegung, klangquelle, tonquelle, beschreibung, eingänge, instrument stimme',
    fr: 'instrument, source, désignation, instruments, entrée, nom, sources, entrées, libellé, intitulé, signal, source instrument, instru',
    es: 'instrumento, fuente, entrada, nombre, descripción, señal, instrumentos, fuentes, fuente de sonido, entradas, instrumento fuente',
    it: 'strumento, sorgente, ingresso, nome, descrizione, strumenti, sorgenti, segnale, ingressi, fonte',
    nl: 'bron, instrument, omschrijving, naam, ingang, signaal, instrumenten, bronnen, geluidsbron, beschrijving',
    pt: 'instrumento, fonte, entrada, nome, descrição, sinal, instrumentos, fontes, entradas',
  },
  performer: {
    trade:
      'player, performer, musician, who, artist, member, person, player name, band member, played by, musicians, performers, listener, mix for, heard by, name of musician, people, user, for, whom',
    de: 'musiker, musikerin, wer, spieler, künstler, person, musiker name, hörer, für, für wen, name musiker, bandmitglied, mitwirkende, spielerin',
    fr: 'musicien, musicienne, artiste, qui, interprète, nom du musicien, pour, musiciens, pour qui, destinataire, interprètes',
    es: 'músico, musico, artista, quién, intérprete, músicos, para, para quién, integrante, ejecutante',
    it: 'musicista, artista, chi, esecutore, musicisti, per, per chi, interprete, destinatario',
    nl: 'muzikant, wie, speler, artiest, voor, voor wie, muzikanten, bandlid',
    pt: 'músico, artista, quem, intérprete, músicos, para, para quem, integrante',
  },
  'second choice': {
    trade:
      '2nd choice, second choice, alternative, alt mic, alternate, alternatives, alt, second option, option 2, replacement, substitute, alternative mic, backup mic choice, 2nd option, mic alt, mic option 2, mic 2nd choice, alternate mic, or, fallback, sub',
    de: 'alternative, ersatz, 2 wahl, zweite wahl, alternativ, alternativen, ausweich, ersatztyp',
    fr: '2ème choix, second choix, alternative, micro 2, 2e choix, remplacement, deuxième choix, choix 2, équivalence, micro 2ème choix',
    es: 'alternativa, segunda opción, opción 2, alternativo, 2ª opción, 2da opción, reemplazo, opción b',
    it: 'alternativa, seconda scelta, alternativo, 2a scelta, in alternativa, sostituto',
    nl: 'alternatief, tweede keus, 2e keus, vervanging',
    pt: 'alternativa, segunda opção, 2ª opção, opção 2',
  },
  'pick-up': {
    trade:
      'mic, mic or line, mic/line/di, mic/di, microphone, mics, mic / di, mic di, mic or di, di, pick up, pickup, mic type, preferred mic, suggested mic, mic choice, mic preference, mic/line, mic/di/line, mike, mic model, input type, microphone/di, mic pref, mic/d.i., transducer, mic & di, capture, mic selection, microphone type, mics/di, preferred, 1st choice, first choice, mic 1st choice, mic or d.i., mic/di preference, requested mic, mic request, mic suggestion, suggested mic/di, mic/di box, type, mics & di, mic / line, mic option 1, mic/ di type, equipment, gear, microphones',
    de: 'mikrofon, mikro, mikro oder di, mikro oder line, mikro/line, mikro/linie, mikrofon oder di, mikro/di, mikrofon/di, mikrofonierung, abnahme, mikrofon / di, mikrofontyp, mic/di, mikrofonwunsch, wunschmikro, mikrofonvorschlag, mikro / di, typ, mik, mikrophon, mikrofone, abnahme art, wunschmikrofon, mic bevorzugt, mikrowunsch, mikrofon di box, 1 wahl, art, mikro di',
    fr: 'micro, micro ou ligne, micro/ligne, micro/di, micros, micro / di, captation, type micro, micro souhaité, prise de son, micro ou di, capteur, 1er choix, type, microphone, reprise, micro 1er choix, micro 1, premier choix, micro di, choix 1, mic/di',
    es: 'micro, micro o línea, micro/línea, mic o línea, mic o di, micrófono o di, cómo se recoge, micrófono, mic/di, micrófono/di, microfonía, mic, toma, tipo, micro/di, captación, microfonia, micro / di, microfono, micrófonos, micro o di, mic sugerido, modelo',
    it: 'microfono, mic o linea, mic/linea, microfono o linea, microfono o di, mic o di, collegamento, mic/di, microfono/di, mic, microfoni, ripresa, tipo, microfono / di, mic / di, microfonazione, mic richiesto, captazione, mic consigliato',
    nl: 'microfoon, mic of lijn, mic/lijn, mic of di, microfoon of di, mic/di, microfoon/di, mic, type, microfoon / di, voorkeur mic, microfoonvoorkeur, opname, microfoontype',
    pt: 'microfone, microfone ou di, mic ou di, mic/di, microfone/di, mic, captação, tipo, microfonação, microfone / di, microfones',
  },
  stand: {
    trade:
      'stand, stands, mic stand, stand type, mount, mounting, boom, mic stands, stand/clip, stand/mount, support',
    de: 'stativ, stative, ständer, befestigung, halterung, stativ/clip',
    fr: 'pied, pieds, pied de micro, support, fixation, pieds micro, pied micro',
    es: 'pie, soporte, pies, base, atril, pedestal, soportes, pie de micro, jirafa',
    it: 'asta, aste, supporto, stativo, stand, aste microfoniche, asta mic',
    nl: 'statief, standaard, statieven, bevestiging',
    pt: 'pedestal, suporte, pedestais, tripé, suportes, tripés',
  },
  phantom: {
    trade:
      '48v, +48v, phantom, p48, 48, +48, phantom power, 48 v, ph, +48 v, phant, 48 volt, phantom 48v, 48v?, pwr, phantom?, p 48',
    de: 'phantom, phantomspeisung, speisung, 48v, 48 volt',
    fr: 'alim, fantôme, alimentation fantôme, alim 48v, 48v, alimentation, alim fantôme',
    es: 'phantom, alimentación, 48v, alim phantom',
    it: 'phantom, alimentazione, 48v',
    nl: 'fantoom, phantom, fantoomvoeding, voeding',
    pt: 'phantom, alimentação, 48v',
  },
  position: {
    trade:
      'position, pos, stage position, location, where, place, stage pos, stage location, pos., placement, stage, riser, zone, stage place, area, side of stage',
    de: 'position, platz, bühnenposition, ort, standort, pos., bühne, wo, bühnenplatz',
    fr: 'position, emplacement, place, placement, où, position scène, lieu, zone, implantation',
    es: 'posición, ubicación, lugar, pos, ubicacion, posicion, escenario, zona',
    it: 'posizione, posto, collocazione, pos, dove, palco, posizione palco',
    nl: 'positie, plaats, plek, pos, locatie, podium',
    pt: 'posição, local, lugar, pos, localização, palco',
  },
  socket: {
    trade:
      'patch, stage box, stagebox, sub snake, snake, box, patch (stage), stage patch, sub-snake, drop, socket, box/line, snake no, multi, multicore, sub box, stage multi, subsnake, sb, sub, sub snake ch, input patch, sub core, loom, stage input, splitter, split, box no, socket no, patch point, floor box, panel, stage box no',
    de: 'stagebox, multicore, unterverteilung, stagebox nr, bühnenkasten, box nr, sub multicore, patch bühne, steckplatz',
    fr: 'boîtier, multipaire, sous patch, patch scène, boitier, boîtier de scène, boitier scène, patch plateau, sous-patch, plateau',
    es: 'caja de escenario, manguera, stage box, subsnake, medusa, cajetín, submanguera, patch escenario',
    it: 'stage box, ciabatta, stagebox, frusta, ciabattina, patch palco',
    nl: 'stagebox, multikabel, subsnake, wandbox, podiumblok',
    pt: 'medusa, stage box, multicabo, caixa de palco, sub snake',
  },
  group: {
    trade:
      'group, section, dca, vca, department, family, section name, instrument group, category, grp, vca/dca, dca/vca, mute group, grp.',
    de: 'gruppe, sektion, abteilung, bereich, instrumentengruppe, kategorie',
    fr: 'groupe, section, pupitre, famille, vca, dca, catégorie',
    es: 'grupo, sección, cuerda, familia',
    it: 'gruppo, sezione, categoria',
    nl: 'groep, sectie, categorie',
    pt: 'grupo, seção, secção, naipe',
  },
  side: {
    trade: 'l/r, side, lr, stereo/mono, st/mono, mono/stereo, m/s, stereo?',
    de: 'seite, mono/stereo, stereo/mono',
    fr: 'côté, g/d, mono/stéréo',
    es: 'lado, mono/estéreo',
    it: 'lato, mono/stereo',
    nl: 'kant, mono/stereo',
    pt: 'lado, mono/estéreo',
  },
  supplied: {
    trade:
      'supplied by, provided by, supplied, provided, supply, by, from, ownership, brought by, provider, who brings, band/house, house/band, supplier, who supplies, source of, we bring, gear from, furnished by, band supplies, artist/house, who provides, provision',
    de: 'gestellt von, von wem, bringt, wer bringt, bereitgestellt von, gestellt durch, bereitstellung, kommt von, stellt, mitgebracht von, gestellt, besitz, eigentum, band/haus, mitgebracht',
    fr: 'fourni par, fourniture, apporté par, fourni, qui fournit, à fournir par, fournisseur, provenance, matériel fourni par',
    es: 'provisto por, aporta, proveedor, suministrado por, provee, trae, aportado por, quién aporta, quien aporta, suministra, lo trae, a cargo de',
    it: 'fornito da, fornitura, a cura di, a carico di, porta, a carico, chi porta, chi fornisce',
    nl: 'geleverd door, door, van wie, levering, wie levert, leverancier, meegenomen door',
    pt: 'fornecido por, quem fornece, fornecedor, quem traz, fornece, fornecimento',
  },
  exclusions: {
    trade:
      'no, not, none of, without, exclude, do not send, excluded, never, exclusions, please no, does not want, not wanted, don t want, nothing of, leave out, off',
    de: 'ohne, nicht, kein, ausgeschlossen, nicht gewünscht, bitte nicht, keinesfalls',
    fr: 'sans, pas de, exclure, à exclure, exclusions',
    es: 'sin, excluir, nada de, no quiere',
    it: 'senza, escludere, niente, esclusi',
    nl: 'zonder, geen, niet, uitsluiten',
    pt: 'sem, excluir, nada de',
  },
  notes: {
    trade:
      'notes, note, info, remarks, comments, comment, remark, additional, details, misc, further info, observations, additional info, other, extra, extra info, special, more info, annotation',
    de: 'bemerkung, bemerkungen, anmerkung, anmerkungen, hinweis, hinweise, notizen, sonstiges, kommentar, notiz, zusatz, anm, bem, infos, info',
    fr: 'commentaire, commentaires, note, notes, remarque, remarques, observations, obs, infos, divers, précisions, observation',
    es: 'notas, observaciones, comentarios, nota, obs, observación, comentario, detalles, aclaraciones',
    it: 'note, osservazioni, commenti, nota, annotazioni, commento, dettagli',
    nl: 'opmerkingen, opmerking, notities, notes, bijzonderheden, opm',
    pt: 'observações, notas, comentários, obs, nota, observação, detalhes',
  },
  insert: {
    trade:
      'insert, inserts, gate, comp, dynamics, processing, gate/comp, comp/gate, outboard, eq, fx, ins, insert/comp, dyn, comp gate, noise gate, insert fx, gates, compressor, insert gate, insert comp, hpf, low cut, pad, phase, polarity, comp./gate, eff, plugins',
    de: 'insert, dynamik, kompressor, effekte, bearbeitung, gate/kompressor, effekt, effektwunsch',
    fr: 'insert, inserts, dynamique, traitement, traitements, effets, compresseur, effet',
    es: 'inserto, insertos, procesamiento, dinámica, efectos, compresor, proceso, procesos, insert',
    it: 'insert, dinamica, effetti, processori, inserti, compressore, outboard',
    nl: 'insert, bewerking, dynamiek, effecten, inserts, compressor',
    pt: 'insert, processamento, dinâmica, inserts, efeitos, compressor',
  },
  connector: {
    trade:
      'connector, connection, conn, plug, xlr/jack, cable, connection type, interface, connectors, signal type, level, signal from, output type, format in, cabling, line type',
    de: 'anschluss, stecker, verbindung, kabel, anschluß, buchse, signal von, pegel',
    fr: 'connecteur, connexion, connectique, câble, prise',
    es: 'conector, conexión, cable, conexion, conectores, conexionado',
    it: 'connettore, connessione, cavo, connessioni',
    nl: 'aansluiting, connector, plug, kabel',
    pt: 'conector, conexão, cabo, ligação',
  },
  mix: {
    trade:
      'mix, mix no, aux, mon, mix #, mix nr, out, output, mon mix, monitor mix, aux no, send, bus, output no, aux #, mix number, monitor, monitors, out no, output #, mix no., aux send, mon #, monitor no, mon no, out #, mix name, iem mix, outputs, mix id, monitor send, monitor mixes, mon mix no, aux nr, mixes, output ch, ear mix, wedge no, send to mixes, to mixes, in mixes, goes to, send to, sent to, wanted in, mon sends, feeds mixes',
    de: 'weg, monitorweg, aux, ausgang, mix nr, auf wege, auf weg, in wege, in mixe, weg nr, monitor nr, auxweg, monitormix, ausspielweg, monitorwege, aux nr, ausgang nr, aux weg, out nr',
    fr: 'retour, circuit, départ, n° retour, vers retours, dans les retours, envoyé dans, aux, sortie, n° circuit, mix, retours, circuits, n° mix, sorties, n° de circuit, départs',
    es: 'mezcla, envío, salida, mezcla nº, va a, enviar a, a mezclas, aux, mezcla n°, envio, auxiliar, n° mezcla, mix, nº mezcla, salidas, línea de monitor, envíos, monitor nº',
    it: 'mandata, uscita, ascolto, mix, va in, nei mix, alle mandate, aux, n mandata, monitor n, uscite, linea, n° mandata, mandate',
    nl: 'groep nr, monitorgroep, uitgang, naar mix, naar mixen, naar groepen, mix, aux, mix nr, monitor nr, uitgang nr',
    pt: 'via, saída, mandada, mix, vai para, enviar para, nas vias, aux, auxiliar, saídas, vias',
  },
  device: {
    trade:
      'device, wedge/iem, iem/wedge, type of monitor, monitor type, listening, system, monitoring, equipment type, wedge / iem, iem / wedge, wedge/ear, monitor system, speaker, listening device, wedge or iem, iem or wedge, output type, ears/wedge, wedge/ears, monitor kind, speaker type, kind, iem or wedges, wedges/iem, wedge or ears, destination, device type, hears on, listens on, monitor equipment, how, wedge, iem',
    de: 'gerät, art, monitorart, lautsprecher, system, monitortyp, abhöre, monitoring, wedge/in ear, wedge/iem, in ear/wedge, geräte, hörgerät, lautsprechertyp, ziel',
    fr: 'système, type de retour, matériel, écoute, diffusion, enceinte, wedge/ear, type de monitoring, système d écoute, ears/wedge',
    es: 'sistema, tipo de monitor, equipo, escucha, monitoreo, parlante, cuña/in ear, tipo de monitoreo, in ear/cuña, destino',
    it: 'sistema, tipo di monitor, tipo monitor, diffusore, spia/in ear, monitoraggio, tipologia, spia/iem, cuffia/spia',
    nl: 'systeem, soort, monitortype, luidspreker, soort monitor, apparaat',
    pt: 'sistema, tipo de monitor, equipamento, monitoração, tipo de retorno, fone/caixa',
  },
  format: {
    trade:
      'mono/stereo, stereo/mono, format, st/mono, mono / stereo, stereo, width, mono or stereo, m/s, stereo / mono, st/m, mono, channels, mono/st',
    de: 'mono/stereo, stereo/mono, format, mono / stereo, stereo',
    fr: 'mono/stéréo, stéréo/mono, format, stéréo',
    es: 'mono/estéreo, estéreo/mono, formato, estéreo',
    it: 'mono/stereo, stereo/mono, formato, stereo',
    nl: 'mono/stereo, stereo/mono, formaat, stereo',
    pt: 'mono/estéreo, estéreo/mono, formato, estéreo',
  },
  wishes: {
    trade:
      'content, wishes, mix content, needs, contents, requirements, wants, what they hear, mix wishes, mix contains, requests, request, wants to hear, levels, desired mix, mix details, monitor wishes, wish, in the mix, mix requirements, hears, monitor needs, what do you want, include, includes, i want, wanted, monitor content, signals wanted, in mix, signals, sends, mix request, content of mix, instruments in mix, please send, contains, desired, priority, must have',
    de: 'inhalt, wünsche, mixwunsch, monitorwunsch, mix inhalt, bedürfnisse, braucht, wunsch, monitorwünsche, was wird gewünscht, mixwünsche, hört, signale, monitorinhalt, gewünschte signale, gewünscht, möchte hören',
    fr: 'contenu, souhaits, besoins, demande, contenu du mix, à envoyer, mix souhaité, contenu du retour, demandes, dans le retour, envois',
    es: 'contenido, pedidos, necesidades, deseos, contenido de mezcla, qué escucha, requiere, quiere, necesita, pedido, mezcla deseada, qué quiere',
    it: 'contenuto, richieste, esigenze, contenuto mix, richiesta, cosa sente, desiderata, cosa vuole, contenuti',
    nl: 'inhoud, wensen, behoefte, mixwensen, wens, wat hoort, gewenst',
    pt: 'conteúdo, pedidos, necessidades, o que ouve, pedido, conteúdo da via, deseja',
  },
  role: {
    trade: 'role, function, plays, job, instrument(s), part, playing',
    de: 'rolle, funktion, aufgabe, spielt, instrumente',
    fr: 'rôle, fonction, poste, joue',
    es: 'rol, función, cargo, toca',
    it: 'ruolo, funzione, suona',
    nl: 'rol, functie, speelt',
    pt: 'função, papel, toca',
  },
  own: {
    trade:
      'own, own?, own gear, own iem, brings own, own system, band owned, own pack, own iem?, own/house, house/own, own equipment, own packs',
    de: 'eigen, eigenes, eigenes system, eigen?, eigene geräte, eigen/haus, eigenes iem',
    fr: 'perso, propre, propre système, système perso, perso?',
    es: 'propio, propio?, equipo propio, sistema propio',
    it: 'proprio, proprio?, sistema proprio',
    nl: 'eigen, eigen?, eigen systeem',
    pt: 'próprio, próprio?, sistema próprio',
  },
  count: {
    trade: 'qty, quantity, amount, count, pcs, pieces, how many, qt, units',
    de: 'anzahl, menge, stück, stk, anz',
    fr: 'qté, quantité, nombre, nb, qte',
    es: 'cantidad, cant, cant., unidades',
    it: 'quantità, qtà, qta, numero pezzi, pz',
    nl: 'aantal, stuks, aant',
    pt: 'quantidade, qtd, qtde, quant',
  },
};
