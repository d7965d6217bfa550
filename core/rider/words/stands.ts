import type { WordTable } from './table.ts';

/** Stands, as one list of words: the reading keeps the rider's own words for the patch person. */
export const stands: WordTable<'stand' | 'none'> = {
  none: {
    trade: 'no stand, without stand, none',
    de: 'ohne stativ, kein stativ, ohne',
    fr: 'sans pied, sans',
    es: 'sin pie, sin soporte, sin',
    it: 'senza asta, senza',
    nl: 'zonder statief, geen statief, geen',
    pt: 'sem pedestal, sem suporte, sem',
  },
  stand: {
    trade:
      'short boom, tall boom, boom, small boom, big boom, large boom, straight, round base, straight stand, stand, mic stand, short stand, tall stand, low stand, high stand, short, tall, small stand, short boom stand, tall boom stand, boom stand, table stand, desk stand, stereo bar, claw, low boom, high boom, mini boom, tripod, short straight, tall straight, lo, hi, low, big stand, large stand, boom short, boom tall, drum clamp, clamp, rim mount, rim clip, med boom, medium boom, clip, round base stand, on stand, sm boom, lg boom, sb, tb stand, kick stand, half boom, mini stand, std boom, boom arm, overhead stand, small, x stand, t bar, floor stand, pillow',
    de: 'kleines stativ, großes stativ, galgen, tischstativ, stativ, galgenstativ, kleiner galgen, großer galgen, klein galgen, groß galgen, kurzes stativ, hohes stativ, rundfuß, gerade, gerades stativ, kl stativ, gr stativ, klein, groß, niedriges stativ, mikrostativ, rundstativ, kl galgen, gr galgen, kurz, hoch, schwanenhals, klemme, klammer, halter, rundsockel, stereoschiene, niedrig, kurzer galgen, langer galgen, stativ klein, stativ groß, mit galgen, stativ mit galgen, kurzes galgenstativ, großes galgenstativ, kleines galgenstativ, galgen klein, galgen groß, stativ kurz, stativ hoch',
    fr: 'petit pied, grand pied, perche, pied, petit, grand, petite perche, grande perche, pied droit, pied perche, embase ronde, barre de couple, pince, petit pied perche, grand pied perche, pied rond, pied de table, moyen pied, col de cygne, embase, pied court, moyen, gp, pp pied, pied micro, droit, grand perche, petit perche, gde perche, pte perche',
    es: 'jirafa, base, soporte, pie corto, pie, jirafa corta, jirafa alta, jirafa grande, jirafa pequeña, pie alto, pie de micro, pie jirafa, base recta, pinza, pie recto, recto, trípode, pie bajo, base redonda, boom corto, boom largo, soporte corto, pie pequeño, pie grande, atril, pie jirafa corto, pie jirafa alto, stand corto, stand alto, corto, alto, bajo, mini jirafa, pie mediano, jirafa mediana, pedestal, clip',
    it: 'asta, giraffa, asta bassa, asta alta, asta giraffa, asta dritta, base tonda, pinza, asta corta, giraffa bassa, giraffa alta, asta piccola, asta grande, asta giraffa bassa, asta giraffa alta, asta da tavolo, bassa, alta, mini asta, asta a giraffa, giraffa corta, giraffina, piccola, grande, clip, asta tonda',
    nl: 'klein statief, groot statief, statief, hengel, klein hengel, groot hengel, kort statief, hoog statief, tafelstatief, klem, recht statief, ronde voet, laag statief, galg, klein, groot, statief met hengel, kleine hengel, grote hengel, kort, hoog, laag, middel',
    pt: 'pedestal, girafa, suporte, pedestal girafa, pedestal baixo, pedestal curto, pedestal alto, tripé, garra, pedestal reto, girafa pequena, girafa grande, tripé girafa, tripé pequeno, tripé grande, suporte baixo, pedestal pequeno, pedestal grande, clip, curto, girafa curta, girafa alta, mini pedestal, pedestal médio, base redonda',
  },
};
