import type { WordTable } from './table.ts';

/** What bands ask for that is no sound: a sentence that wishes one of these wishes no mix. */
export const things: WordTable<'thing'> = {
  thing: {
    trade:
      'table, chair, chairs, stool, stools, bar stool, water, towel, towels, carpet, rug, power, socket, sockets, extension lead, parking, parking spot, van, meal, meals, food, dressing room, beer, coffee, tea, hotel, drum carpet, music stand, music stands, riser, risers, platform, ladder, mirror, fan, heater, key, merch, merch table, guest list, wifi, fire, smoke, haze, curtain, backdrop, banner, hands, stagehand, stagehands, ice, fridge, iron, fruit, snacks, sandwiches, buyout',
    de: 'tisch, tische, stuhl, stühle, hocker, barhocker, wasser, handtuch, handtücher, teppich, strom, steckdose, steckdosen, verlängerung, parkplatz, essen, garderobe, bier, kaffee, tee, hotel, notenpult, notenpulte, notenständer, podest, podeste, leiter, spiegel, heizung, schlüssel, gästeliste, wlan, nebel, vorhang, banner, helfer, kühlschrank, obst, brötchen, getränke, bank, bänke, lampe, pultlampe',
    fr: 'table, tables, chaise, chaises, tabouret, tabourets, eau, serviette, serviettes, tapis, courant, prise, prises, rallonge, parking, place de parking, repas, loge, loges, bière, café, thé, hôtel, pupitre, pupitres, praticable, praticables, échelle, miroir, chauffage, clé, invitations, wifi, fumée, rideau, banderole, glaçons, frigo, fruits, boissons, bancs, lampe',
    es: 'mesa, mesas, silla, sillas, banqueta, taburete, taburetes, agua, toalla, toallas, alfombra, corriente, enchufe, enchufes, alargador, estacionamiento, aparcamiento, comida, camerino, cerveza, café, té, hotel, atril, atriles, tarima, tarimas, escalera, espejo, calefacción, llave, invitados, wifi, humo, telón, hielo, nevera, fruta, bebidas, banco, lámpara, cena',
    it: 'tavolo, tavoli, tavolino, sedia, sedie, sgabello, sgabelli, acqua, asciugamano, asciugamani, tappeto, corrente, presa, prese, prolunga, parcheggio, pasto, pasti, cena, camerino, birra, caffè, tè, albergo, leggio, leggii, pedana, pedane, scala, specchio, riscaldamento, chiave, wifi, fumo, sipario, striscione, ghiaccio, frigo, frutta, bevande, panca, lampada',
    nl: 'tafel, tafels, stoel, stoelen, kruk, barkruk, water, handdoek, handdoeken, tapijt, kleed, stroom, stopcontact, verlengsnoer, parkeerplaats, parkeren, eten, maaltijd, kleedkamer, bier, koffie, thee, hotel, lessenaar, lessenaars, podiumdelen, ladder, spiegel, verwarming, sleutel, gastenlijst, wifi, rook, gordijn, doek, koelkast, fruit, broodjes, drank, bank, lampje',
    pt: 'mesa, mesas, cadeira, cadeiras, banco, bancos, água, toalha, toalhas, tapete, corrente, tomada, tomadas, extensão, estacionamento, refeição, refeições, jantar, camarim, cerveja, café, chá, hotel, estante, estantes, praticável, praticáveis, escada, espelho, aquecimento, chave, wifi, fumo, cortina, gelo, frigorífico, fruta, bebidas, candeeiro',
  },
};
