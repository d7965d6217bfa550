import type { WordTable } from './table.ts';

/** What a title opens. Sections that are not part of a monitor plan are `aside`, with the reason in `asideReasons`. */
export type Section = 'inputs' | 'mixes' | 'line-up' | Aside;
export type Aside =
  | 'contacts'
  | 'power'
  | 'backline'
  | 'hospitality'
  | 'lights'
  | 'front of house'
  | 'stage'
  | 'schedule'
  | 'terms'
  | 'wireless'
  | 'plot';

export const titles: WordTable<Section> = {
  inputs: {
    trade:
      'input list, inputs, channel list, channels, patch list, patch, input patch, inputlist, channel sheet, input sheet, source list, patchlist, channellist, stage patch, input channels, foh inputs, line list, audio inputs, input channel list, instruments, mic list, input requirements, patch sheet, audio patch, lines, what we plug in, mic and line list, mics and lines, mics & di, what we bring to the stage, stage inputs, input plan, channel plan, channel overview, our inputs, mic/di list, tie lines, audio channels, sources',
    de: 'kanalliste, inputliste, kanalbelegung, belegungsplan, eingänge, eingangsliste, kanäle, belegung, patchliste, input liste, kanalplan, eingangskanäle, unsere kanäle, mikrofonliste, mikrofonplan, inputs, input list, was wir brauchen kanäle, mikrofonbedarf, mikrofonierung, abnahme, kanalübersicht, signalliste, eingangsbelegung, mikrofone und di, input plan, kanal liste',
    fr: 'liste des entrées, patch, patch list, entrées, liste des voies, fiche patch, patch son, input list, liste d entrées, patch console, tableau des entrées, feuille de patch, patch de scène, patch façade, patch in, liste de patch, liste des micros, prises de son, plan de patch, liste des sources, captation, liste voies, nos entrées, entrées console',
    es: 'lista de canales, lista de entradas, canales, entradas, listado de canales, input list, patch, canales de entrada, listado de entradas, lista de inputs, inputs, lista canales, lista de micrófonos, microfonía, microfonia, lista de fuentes, lista de patch, planilla de canales, planilla, lista de señales, canales y micros',
    it: 'lista canali, channel list, ingressi, canali, lista ingressi, lista dei canali, elenco canali, input list, elenco ingressi, lista input, scheda canali, lista microfoni, microfonazione, sorgenti, canali audio, lista sorgenti, patch list, ingressi audio, scheda ingressi',
    nl: 'kanalenlijst, inputlijst, kanalen, ingangen, priklijst, patchlijst, kanaallijst, prikschema, input lijst, ingangenlijst, inputs, microfoonlijst, microfoons, inputplan, kanaaloverzicht, lijst kanalen, kanaallijstje, inprikken, prik lijst, ingangslijst, ingangen en microfoons',
    pt: 'lista de canais, input list, canais, entradas, lista de entradas, mapa de canais, lista de inputs, relação de canais, lista de microfones, microfonação, mapa de inputs, inputs, lista de fontes, mapa de entradas, canais de entrada, lista dos canais',
  },
  mixes: {
    trade:
      'monitor mixes, monitors, monitor list, output list, outputs, monitoring, monitor wishes, mixes, monitor requirements, iem mixes, mix list, monitor mix, wedge mixes, iem requirements, mix requests, monitor requests, monitor section, foldback, outputs mixes, monitor world, iems, in ears, in ear monitoring, monitor sends, monitor needs, ear mixes, monitor world notes, monitor mix requests, stage monitors, mix wishes, what we want to hear, in ear mixes, output patch, monitor preferences, aux sends, wishes, monitor notes, monitor system, iem list, monitor mix wishes, what we want in the monitors, monitor send list, monitor sends please start here, foldback list, foldback mixes, what goes in the monitors, in the wedges, iem and wedges, what everyone wants, mix plan, monitor plan, wedges, wedges and ears, iem mix list, stage foldback, who hears what, listening, monitor requests per player, mons, mon mixes, mon list, mon requests, monitor bits, mons please',
    de: 'monitore, monitorwege, monitormixe, monitorwünsche, monitorliste, ausgänge, monitoring, monitormix, outputliste, auxwege, monitorwunsch, wünsche, in ear, monitor, ausspielwege, ausgangsliste, in ear mixe, output liste, monitormischungen, monitorbelegung, wege, mixwünsche, mithören, mithöre, wer hört was, monitorplan, monitor wünsche, monitorwünsche band, abhören, in ears, kopfhörermixe, monitormischung, bühnenmonitore, monitoranlage, monitor mix, bühnensound, was hören wir, monis, moni, monitorboxen, moniwege, ohrhörer, mixe, mixes, monitorbereich, monitor seite, hörwünsche, monitorsektion, mischungen, in ear mischungen, in ear wünsche, in ear wege, kopfhörermischungen, wedge mischungen, monitormischung wünsche, in ear wunsch, in ear mischung',
    fr: 'retours, circuits retours, retours de scène, sorties, monitoring, liste des retours, circuits de retour, mix retours, mixes retours, patch sorties, demandes retours, patch retours, ears, patch out, circuits, besoins retours, mixages retours, écoutes, retours et ears, qui entend quoi, plan de retours, plan retours, mix de scène, mix des retours, retour de scène, retours scène, besoins en retours, liste retours, moniteurs, départs retours, bains de pied, mixs, mixs retours, côté retours, les retours, niveau retours, partie retours, mixages, mix ears, mix in ear, mixages ears, souhaits retours, mix oreillettes',
    es: 'monitores, mezclas de monitores, mezclas, monitoreo, envíos, salidas, mezclas de monitor, lista de salidas, envíos de monitores, escenario monitores, lista de mezclas, lista de monitores, retornos, quién escucha qué, mezclas monitores, escuchas, qué va en cada monitor, plan de monitores, retornos de escenario, monitores y mezclas, lista de retornos, monitorización, monitorizacion, sonido de escenario, cuñas, escucha, monitores de suelo, monitores de piso, cuñas y in ears, nuestros monitores, parte de monitores, los monitores, mezclas in ear, mezclas de in ear, pedidos de monitores, mezclas de escenario',
    it: 'monitor, spie, mandate monitor, ascolti, uscite, monitoraggio, mix monitor, mandate, lista monitor, lista uscite, richieste monitor, lista ascolti, mandate spie, ascolti in palco, chi sente cosa, mix di palco, monitor di palco, mix spie, ascolti palco, linee monitor, monitor mix, monitor a terra, i monitor, le spie, richieste ascolti, monitoraggi, mix in ear, ascolti in ear, mix cuffie, mandate in ear, missaggi, mixaggi',
    nl: 'monitoren, monitormixen, monitorgroepen, uitgangen, monitoring, monitorwensen, monitor mixen, monitors, monitorlijst, outputlijst, wensen, monitormix, output lijst, wie hoort wat, monitorplan, meeluisteren, in ears, terugluisteren, podiummonitors, monis, de monitoren, onze monitors, monitorwensen band, de monitors, in ear mixen, in ear wensen, oortjes, mixwensen, mengsels, in ear mix',
    pt: 'monitores, vias de monitor, vias de retorno, monitoração, retornos, mixes de monitor, saídas, lista de monitores, monitorização, mandadas, vias, lista de saídas, munição, quem ouve o quê, mapa de monitores, escutas, plano de monitores, misturas de monitor, misturas, monição, retorno de palco, monitores de chão, os monitores, retorno, as vias, os retornos, misturas in ear, pedidos de monição, vias in ear, misturas de in ear',
  },
  'line-up': {
    trade:
      'line up, lineup, band members, musicians, personnel, members, the band, who is who, cast, band, line-up, performers, who we are, band line up, players, artists on stage, on stage, musicians on stage, touring party on stage, people on stage',
    de: 'besetzung, musiker, mitglieder, bandmitglieder, line up, wer ist wer, band, wer spielt was, die band, bandbesetzung, auf der bühne, mitwirkende, musikerinnen',
    fr: 'musiciens, composition du groupe, formation, line up, membres, le groupe, les musiciens, équipe artistique, qui joue quoi, sur scène, plateau artistique',
    es: 'músicos, integrantes, formación, line up, miembros, la banda, banda, integrantes de la banda, componentes, alineación, en escena',
    it: 'formazione, musicisti, componenti, line up, membri, la band, organico, band, sul palco, componenti del gruppo',
    nl: 'bezetting, muzikanten, bandleden, line up, leden, de band, wie speelt wat, op het podium',
    pt: 'formação, músicos, integrantes, line up, membros, a banda, banda, componentes, no palco',
  },
  contacts: {
    trade:
      'contacts, contact, contact info, crew, personnel contact, contact details, management, crew list, touring party, production contacts, contact information, team',
    de: 'kontakt, kontakte, ansprechpartner, crew, kontaktdaten, ansprechpartnerin',
    fr: 'contacts, contact, équipe technique, régie, équipe',
    es: 'contactos, contacto, equipo técnico, contacto técnico',
    it: 'contatti, contatto, referenti, referente tecnico, staff',
    nl: 'contact, contacten, contactpersonen, contactgegevens',
    pt: 'contatos, contato, contactos, equipe, contacto',
  },
  power: {
    trade:
      'power, power requirements, electricity, power drops, mains, ac power, electrical, stage power, power needs',
    de: 'strom, stromversorgung, stromanschlüsse, strombedarf, elektrik',
    fr: 'électricité, alimentation électrique, courant, besoins électriques, arrivées électriques',
    es: 'electricidad, corriente, energía, tomas de corriente, alimentación eléctrica, potencia',
    it: 'corrente, alimentazione elettrica, elettricità, corrente elettrica, prese',
    nl: 'stroom, stroomvoorziening, elektra, stroompunten',
    pt: 'energia, eletricidade, energia elétrica, ac, pontos de energia',
  },
  backline: {
    trade:
      'backline, back line, equipment, gear, amps, instruments provided, backline requirements, gear we bring, backline needed, what we bring, backline list',
    de: 'backline, equipment, instrumente und verstärker, verstärker, was wir mitbringen, wir bringen mit',
    fr: 'backline, matériel, instruments fournis, matériel apporté, matériel à fournir',
    es: 'backline, equipo, equipamiento, back line',
    it: 'backline, strumentazione, materiale, back line',
    nl: 'backline, apparatuur, instrumentarium',
    pt: 'backline, equipamento, equipamentos',
  },
  hospitality: {
    trade:
      'hospitality, catering, dressing room, accommodation, dressing rooms, food, drinks, rooming, hotel, parking, food & drinks, guest list, guestlist, merch, merchandise, merchandising, travel, towels',
    de: 'catering, garderobe, unterkunft, verpflegung, essen, getränke, hotel, parken, gästeliste, essen & trinken, anreise, parkplätze',
    fr: 'catering, loges, hébergement, repas, accueil, hôtel, restauration, loge, transport, parking, invitations',
    es: 'catering, camerinos, alojamiento, comida, hotel, camerino, hospedaje, bebidas, hospitalidad, estacionamiento, transporte',
    it: 'catering, camerini, ospitalità, alloggio, camerino, hotel, pasti, vitto e alloggio, parcheggio',
    nl: 'catering, kleedkamer, hotel, eten, hospitality, kleedkamers, verblijf, parkeren',
    pt: 'catering, camarim, hospedagem, alimentação, camarins, hotel, estadia, estacionamento',
  },
  lights: {
    trade:
      'lights, lighting, light, video, haze, backdrop, led wall, lx, lighting requirements, screens, banner, pyro, visuals, lighting plot',
    de: 'licht, beleuchtung, lichttechnik, video, nebel, lichtplan, lichtwünsche, backdrop',
    fr: 'lumière, lumières, éclairage, vidéo, plan de feu, plan feu',
    es: 'luces, iluminación, vídeo, video, plano de luces, luz',
    it: 'luci, illuminazione, video, piano luci, disegno luci',
    nl: 'licht, belichting, video, verlichting, lichtplan',
    pt: 'luz, iluminação, vídeo, luzes, mapa de luz',
  },
  'front of house': {
    trade:
      'pa, foh, p a, front of house, pa system, foh console, sound system, foh requirements, pa requirements, consoles, foh desk, pa & foh, console, mixing desk, foh equipment, sound, control, foh control, pa & control',
    de: 'pa, beschallung, foh, mischpult, pa system, beschallungsanlage, foh platz, tonanlage, ton, tontechnik, pult',
    fr: 'façade, diffusion, système de diffusion, régie façade, console façade, système son, sonorisation, régie son, son',
    es: 'sistema de pa, pa, foh, sistema de audio, sistema de sonido, consola foh, sala, consola, control foh, sonido, pa y foh',
    it: 'impianto, pa, foh, impianto audio, regia, regia foh, mixer di sala, audio',
    nl: 'pa, foh, zaalgeluid, geluidssysteem, geluid, mengtafel',
    pt: 'pa, sistema de som, foh, som, p a, mesa de som, console, sistema de pa',
  },
  stage: {
    trade:
      'stage, stage size, risers, staging, stage plot, stageplot, stage plan, stage requirements, risers & staging, set up, layout, stage layout, placement',
    de: 'bühne, bühnenplan, podeste, bühnengröße, bühnenaufbau, aufbau, bühnenanweisung, aufstellung',
    fr: 'scène, plan de scène, praticables, plateau, plan de plateau, espace scénique, disposition, placement',
    es: 'escenario, plano de escenario, tarimas, tarima, plano de escena, disposición, colocación',
    it: 'palco, stage plot, pedane, pianta palco, misure palco, disposizione',
    nl: 'podium, podiumplan, podiumplattegrond, risers, podiumplanning, opstelling',
    pt: 'palco, mapa de palco, praticáveis, rider de palco, disposição, disposição em palco, disposição no palco',
  },
  schedule: {
    trade:
      'schedule, sound check, soundcheck, timing, timetable, load in, times, running order, day schedule, get in, setlist, set list, changeover',
    de: 'zeitplan, soundcheck, ablauf, zeiten, ablaufplan, aufbauzeiten, timetable',
    fr: 'planning, balance, balances, horaires, montage, planning de la journée, déroulé',
    es: 'horarios, prueba de sonido, cronograma, horario, montaje, prueba',
    it: 'orari, sound check, programma, tempi, prova suono',
    nl: 'tijdschema, soundcheck, planning, tijden, draaiboek',
    pt: 'horários, passagem de som, cronograma, horário',
  },
  terms: {
    trade:
      'terms, conditions, agreement, contract, signature, insurance, security, general, general information, general notes, important, introduction, about, welcome, health and safety, dear promoter, preamble, contract rider, other bits, misc, miscellaneous, odds and ends, bits and bobs, anything else, other stuff, other things, other notes',
    de: 'bedingungen, vertrag, unterschrift, allgemeines, allgemein, wichtig, sicherheit, vorwort, sonstiges, vertragliches',
    fr: 'conditions, contrat, généralités, signature, sécurité, préambule, informations générales, divers, autres',
    es: 'condiciones, contrato, general, generalidades, seguridad, firma, información general, importante, introducción, varios, otros',
    it: 'condizioni, contratto, generale, sicurezza, firma, informazioni generali, premessa, varie, altro',
    nl: 'voorwaarden, contract, algemeen, veiligheid, handtekening, overig, inleiding, overige',
    pt: 'condições, contrato, geral, segurança, assinatura, informações gerais, introdução, vários, diversos, outros',
  },
  wireless: {
    trade:
      'wireless, frequencies, rf, radio frequencies, frequency list, wireless systems, rf list, frequency plan',
    de: 'funkstrecken, frequenzen, funk, frequenzliste',
    fr: 'fréquences, hf, liaisons hf, liste hf',
    es: 'frecuencias, sistemas inalámbricos, inalámbricos, rf',
    it: 'frequenze, radiofrequenze, radiomicrofoni',
    nl: 'frequenties, draadloos, zenders',
    pt: 'frequências, sistemas sem fio, rf',
  },
  plot: {
    trade: 'legend, key, legend stage plot',
    de: 'legende',
    fr: 'légende',
    es: 'leyenda',
    it: 'legenda',
    nl: 'legenda',
    pt: 'legenda',
  },
};

export const asideReasons: Record<Aside, string> = {
  contacts: 'Contacts are not part of a monitor plan.',
  power: 'Power is not part of a monitor plan.',
  backline: 'Backline is not part of a monitor plan.',
  hospitality: 'Hospitality is not part of a monitor plan.',
  lights: 'Light and video are not part of a monitor plan.',
  'front of house': 'The house system is not part of a monitor plan.',
  stage: 'The stage itself is not part of a monitor plan.',
  schedule: 'Times are not part of a monitor plan.',
  terms: 'General terms are not part of a monitor plan.',
  wireless: 'Frequencies belong to the wireless plan.',
  plot: 'A legend says nothing by itself.',
};
