import type { WordTable } from './table.ts';

/** Words by which a band says that it does not know yet whether a line will be there, or what it will be. */
export const doubts: WordTable<'doubt'> = {
  doubt: {
    trade:
      'tbc, tbd, tba, to be confirmed, to be decided, not confirmed, unconfirmed, maybe, perhaps, possibly, might, may not, may come, not sure, unsure, don t know, do not know, depends, depending on, if he comes, if she comes, if they come, if he makes it, if she makes it, we ll see, we will see, undecided, not decided, we ll confirm, we will confirm, will confirm, still open, to be seen, not certain, if it is not raining, in two minds, let you know, if he can make it, if she can make it, if around, most likely, probably',
    de: 'vielleicht, evtl, eventuell, noch offen, noch unklar, unklar, nicht sicher, noch nicht sicher, wissen noch nicht, weiß noch nicht, mal sehen, falls er kommt, falls sie kommt, wenn er kommt, wenn sie kommt, falls er dabei ist, falls sie dabei ist, hängt davon ab, kommt drauf an, kommt darauf an, zu klären, wird noch geklärt, zu bestätigen, unter vorbehalt, entscheidet sich, steht noch nicht fest, geben bescheid, sagen bescheid, unbestätigt, womöglich, möglicherweise, wird noch bestätigt, nicht bestätigt, wahrscheinlich',
    fr: 'peut être, à voir, à confirmer, à décider, à définir, pas sûr, pas sûre, pas sûrs, pas certain, on ne sait pas, on sait pas, sais pas, on verra, s il vient, si elle vient, s ils viennent, éventuel, éventuelle, éventuellement, sous réserve, on vous confirme, on confirme, confirmation, dépend, ça dépend, pas encore décidé, non confirmé, non confirmée, probablement',
    es: 'quizás, quizá, tal vez, a lo mejor, por confirmar, a confirmar, sin confirmar, no sabemos, no lo sabemos, no sé, ya veremos, depende, si viene, si vienen, si puede venir, por ver, por decidir, creo, os confirmamos, les confirmamos, confirmaremos, puede que, probablemente, pendiente de confirmar',
    it: 'forse, da confermare, da decidere, da vedere, non sappiamo, non sappiamo ancora, non so, vediamo, vedremo, se viene, se vengono, se c è, dipende, eventuale, eventualmente, magari, vi confermiamo, confermeremo, non confermato, non confermata, probabilmente, non è sicuro, non è detto',
    nl: 'misschien, wellicht, nog niet zeker, niet zeker, weet niet, weten niet, weten nog niet, weet nog niet, weten we nog niet, onder voorbehoud, als hij komt, als ze komt, als zij komt, hangt ervan af, hangt af van, te bevestigen, nog te bepalen, nog onbekend, eventueel, zien we nog, kijken we nog, waarschijnlijk, mogelijk, niet bevestigd',
    pt: 'talvez, a confirmar, por confirmar, a decidir, não sabemos, ainda não sabemos, não sei, se vier, se vierem, se puder vir, depende, ainda em testes, em testes, a ver, logo se vê, eventual, eventualmente, pode ser que, confirmamos, por definir, provavelmente, não confirmado, não confirmada',
  },
};
