import type { WordTable } from './table.ts';

/** Words beside a source's name that say which part of it, which one of several, or what it is for. */
export type Part =
  | 'inside'
  | 'outside'
  | 'top'
  | 'bottom'
  | 'high'
  | 'low'
  | 'middle'
  | 'lead'
  | 'backing'
  | 'spare'
  | 'guest'
  | 'acoustic'
  | 'electric'
  | 'amp'
  | 'synthetic'
  | 'optional';

export const parts: WordTable<Part> = {
  inside: {
    trade: 'in, inside, inner, boundary, inn, int, click mic',
    de: 'innen, drin',
    fr: 'intérieur, intérieure, dedans',
    es: 'dentro, interior, adentro',
    it: 'interno, interna, dentro',
    nl: 'binnen',
    pt: 'dentro, interno',
  },
  outside: {
    trade: 'out, outside, outer, ext, sub mic',
    de: 'außen, aussen',
    fr: 'extérieur, extérieure, dehors',
    es: 'fuera, exterior, afuera',
    it: 'esterno, esterna, fuori',
    nl: 'buiten, uit',
    pt: 'fora, externo',
  },
  top: {
    trade: 'top, up, upper, over',
    de: 'oben, ob',
    fr: 'dessus, haut',
    es: 'arriba, superior',
    it: 'sopra',
    nl: 'boven',
    pt: 'cima, em cima',
  },
  bottom: {
    trade: 'bottom, bot, btm, under, bott, botm, underneath, wires, dn, down',
    de: 'unten, unt',
    fr: 'dessous',
    es: 'abajo, inferior',
    it: 'sotto',
    nl: 'onder',
    pt: 'baixo, em baixo, embaixo',
  },
  high: {
    trade: 'hi, high, treble',
    de: 'hoch, hohe, diskant',
    fr: 'aigu, aigus',
    es: 'agudo, aguda, agudos',
    it: 'acuto, acuti, alto, alti',
    nl: 'hoog',
    pt: 'agudo, agudos, aguda',
  },
  middle: { trade: 'mid, middle', de: 'mitte', fr: 'medium, médium', es: 'medio', it: 'medio', nl: 'midden' },
  low: {
    trade: 'lo, low, floor',
    de: 'tief, tiefe, stand',
    fr: 'grave, graves, bas',
    es: 'grave, graves',
    it: 'grave, gravi, bassi, basso',
    nl: 'laag',
    pt: 'grave, graves',
  },
  lead: {
    trade: 'lead, main, ld, principal',
    de: 'haupt',
    fr: 'principal, principale, leader',
    es: 'principal, líder, solista',
    it: 'principale, solista',
    nl: 'hoofd',
    pt: 'principal, solo',
  },
  backing: { trade: 'backing, bg, back, backup', fr: 'choeurs' },
  spare: {
    trade: 'spare, backup mic',
    de: 'ersatz, reserve, havarie',
    fr: 'secours, rechange',
    es: 'repuesto, reserva',
    it: 'scorta, riserva',
    nl: 'reserve',
    pt: 'reserva, suplente',
  },
  guest: {
    trade: 'guest, guests, guest musician, guest player, special guest',
    de: 'gast, gäste, gastmusiker, gastmusikerin',
    fr: 'invité, invitée, invités, musicien invité',
    es: 'invitado, invitada, invitados, músico invitado',
    it: 'ospite, ospiti, musicista ospite',
    nl: 'gast, gasten, gastmuzikant, gastmuzikanten, gastspeler',
    pt: 'convidado, convidada, convidados, músico convidado',
  },
  acoustic: {
    trade:
      'acoustic, ac, nylon, acou, aco, classical, flamenco, gypsy, unplugged, piezo, acoust, twelve string, steel string',
    de: 'akustik, akustisch, akustische, western, ak, klassik, wandergitarre',
    fr: 'acoustique, folk, sèche, acou, classique, flamenca, manouche',
    es: 'acústica, acústico, española, criolla, acust, flamenca, flamenco, clásica',
    it: 'acustica, classica, acust, flamenca',
    nl: 'akoestisch, akoestische, ak, klassiek, klassieke, spaanse',
    pt: 'acústica, acústico, clássica',
  },
  electric: {
    trade:
      'electric, elec, el, electr, clean, dirty, distorted, semi acoustic, semiacoustic, semi hollow, hollow body, hollowbody, archtop',
    de: 'elektrisch, elektro, halbakustik, halbakustisch, halbakustische, halbresonanz, semiakustik, vollresonanz',
    fr: 'électrique, élec, demi caisse, semi acoustique',
    es: 'eléctrica, eléctrico, elec, semicaja, semi caja, semiacústica, semi acústica, semihueca',
    it: 'elettrica, elettrico, elet, semiacustica, semi acustica',
    nl: 'elektrisch, elektrische, semi akoestisch, semi akoestische, semiakoestisch, halfakoestisch',
    pt: 'elétrica, elétrico, eléctrica, semiacústica, semi acústica',
  },
  amp: {
    trade: 'amp, cab, cabinet, combo, amplifier, speaker, stack, head',
    de: 'verstärker, box, amp',
    fr: 'ampli, baffle',
    es: 'ampli, amplificador, pantalla',
    it: 'ampli, amplificatore',
    nl: 'versterker, kast',
    pt: 'amplificador, amp, caixa amp',
  },
  synthetic: {
    trade: 'synth, synthesizer, electronic, electronics',
    de: 'synth, elektronisch, elektronische, elektronisches',
    fr: 'synthé, électronique, électroniques',
    es: 'sinte, electrónico, electrónica, electrónicos',
    it: 'synth, elettronico, elettronica, elettronici',
    nl: 'elektronisch, elektronische',
    pt: 'eletrônico, eletrónico, eletrônica',
  },
  optional: {
    trade:
      'optional, opt, if needed, if available, if possible, nice to have, tbc, maybe, only on big stages, if required, when available',
    de: 'optional, falls vorhanden, wenn möglich, falls nötig, bei bedarf, evtl, eventuell, wenn vorhanden, falls möglich, ggf',
    fr: 'optionnel, optionnelle, en option, si possible, si besoin, facultatif, si disponible, éventuel',
    es: 'opcional, si es posible, si hay, si se puede, en caso necesario',
    it: 'opzionale, se possibile, facoltativo, se disponibile, eventuale',
    nl: 'optioneel, indien mogelijk, indien nodig, indien beschikbaar, eventueel',
    pt: 'opcional, se possível, se houver, se disponível',
  },
};
