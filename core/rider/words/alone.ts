/**
 * Everyday words that name a source only where nothing else in the name does: "Intro" is what is played back, an
 * "intro guitar" is a guitar. Folded and without spaces, as the words of a lexicon are kept.
 */
export const onlyAlone: ReadonlySet<string> = new Set(
  [
    'comp, pgm, tempo, intro, interlude, jingle, jingles, stings, video, hdmi, music, musik, musique, musica, muziek',
    'sons, suoni, sonidos, sounds, noises, cinta, nastro, diffusion, gravacao, gravacoes, trilha, trilhas, musiche, sigla',
    'applaus, applause, aplausos, applausi, sala, salle, sfeer, ruimte, zuschauer, echo, eco, ambi',
    'open, offen, leer, blank, empty, tba, vide, dispo, ras, vuoto, vacio, vacante, nada, leeg, vago, vazio, res, nn, na',
    'chico, menores, barras, semi, piedi, scatole, pentole, ollas, sementes, semillas, lastra, frusta, bellen',
    'egg, eggs, huevo, uovo, ei, eitje, contra, contras, cb, poly, arp, br, tr, leier, lira, lier, quartet, quartetto',
    'regie, regia, direccion, ordem, anweisung, zuruf, console, speaker, podium, pupitre, leggio, atril, maire, sindaco',
    'lessenaar, pult, lectern, master, base, toast, flow, copla, trova, apoio, resposta, respuestas, vozes, back1, compte, conta, chamadas, gids, solo',
    'reed, reeds, reed1, reed2, reed3, woodwind, woodwinds, winds, holzblaser, houtblazers, electronics, elektronik, elektronica, elettronica, electronica, eletronica, electronique, machines, machine',
    'grand, grande, libre, libres, libero, frei, free, vrij, livre, doubles, tres, hang, zink, stones, whip, jouets, tole, tuyaux, siren, sirens, serpent, bruitages, bruitage, gerausche, rumori, geluiden, tape, tenor, alto, bari, ance, rieten, koffer, mala, maleta, valise, valigia, suitcase, acoustique, criolla, electrica, eletrica, elektrisch, telefono, telefoon, telephone, deckel, choque, redo',
  ].flatMap((list) => list.split(', ')),
);
