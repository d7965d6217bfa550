import type { WordTable } from './table.ts';

/** Words for the numbers that stand for amounts: beside them a rider says what the numbers mean. */
export const scales: WordTable<'scale'> = {
  scale: {
    trade:
      'scale, numbers, number, figures, values, level, levels, starting levels, start levels, amounts, amount, rating, ratings, points, out of, volume, volumes, unity',
    de: 'skala, zahlen, werte, wert, pegel, startpegel, startwerte, stufen, stufe, punkte, angaben, lautstärke, lautstärken, ziffern, schulnoten',
    fr: 'échelle, chiffres, valeurs, niveau, niveaux, niveaux de départ, notes, note, notés, volume, volumes, quantité',
    es: 'escala, números, cifras, valores, nivel, niveles, niveles de partida, puntos, volumen, cantidades',
    it: 'scala, numeri, valori, livello, livelli, livelli di partenza, punti, volume, volumi, quantità, voti',
    nl: 'schaal, cijfer, cijfers, getallen, waarden, niveau, niveaus, startniveaus, punten, volume, hoeveelheid',
    pt: 'escala, números, valores, nível, níveis, níveis de partida, pontos, volume, volumes, quantidades',
  },
};
