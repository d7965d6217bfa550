import type { WordTable } from './table.ts';

/** Who brings a thing: the band itself or the house. */
export const ownership: WordTable<'band' | 'house'> = {
  band: {
    trade:
      'own, we bring, band, provided by band, supplied by band, by band, artist, brought by us, band brings, we carry, our own, from band, own gear, band provides, we provide, we have, we supply, carried, provided by artist, supplied by artist, ours, self, self provided, bring our own, brings own, owns, own system, own mic, bringing, bring, brings, brings his own, brings her own, with own, travels with, we travel with, us, personal, act, from artist, artist brings, private, his own, her own, their own, his own packs, brings their own',
    de: 'eigen, eigene, eigenes, eigener, eigenen, von uns, wird mitgebracht, bringen wir mit, bringt band, band bringt, haben wir dabei, vorhanden, selbst, mitgebracht, bringen wir, eig, haben wir selbst, bringt mit, wir bringen, künstler, bringt eigenes, bringen mit, haben wir, dabei, selber, bringt, seine eigenen, ihre eigenen, sein eigenes, ihr eigenes, unser eigenes, unsere eigenen, sein eigener, ihr eigener, eigenes gerät, hat er selbst, hat sie selbst, haben sie selbst, hat eigenes, hat eigene, bringt er mit, bringt sie mit, selbst dabei, eigenes system, eigene anlage, eigene sender, eigene technik',
    fr: 'nôtre, le nôtre, fourni par le groupe, fournis par le groupe, groupe, apporté par le groupe, perso, personnel, personnels, personnelle, propre, propres, nous apportons, on apporte, artiste, à nous, nous amenons, amené par le groupe, amène, apporte, fourni par nous, on amène, nous fournissons, nos propres, les siens, le sien, la sienne, les leurs, le leur, ses propres, leurs propres, sa propre, son propre, à lui, à elle, à eux, à elles, à moi, persos, système à nous, systèmes à nous, système perso, son système, leur système',
    es: 'propio, propia, propios, propias, traemos, nuestro, nuestra, aporta la banda, lo trae la banda, banda, artista, provee la banda, nuestros, llevamos, grupo, trae, de la banda, del grupo, provisto por la banda, aportado por el grupo, traído por la banda, trae el grupo, lo traemos, aporta el grupo, los suyos, las suyas, el suyo, la suya, sus propios, su propio, inalámbrica nuestra, inalámbrico nuestro, los nuestros, lo llevamos, lo lleva, los trae, de ella, de él, de ellos, sistema propio, sistemas propios, su sistema',
    it: 'nostro, nostra, proprio, propria, propri, portiamo noi, fornito dalla band, della band, gruppo, portato da noi, nostri, artista, personale, personali, porta, a carico della band, portiamo, fornito dal gruppo, del gruppo, abbiamo noi, i suoi, le sue, il suo, i propri, i loro, il proprio, le proprie, i nostri, la sua, il mio, le mie, i miei, la mia, ce l ha, ce l abbiamo, personali suoi, sistema proprio, sistema suo, sistemi nostri, sistema nostro',
    nl: 'eigen, zelf, nemen wij mee, brengen we mee, van de band, band neemt mee, wij brengen, meegebracht, nemen we mee, brengen wij mee, van ons, zelf mee, hebben we zelf, de zijne, de hare, van zichzelf, zijn eigen, haar eigen, hun eigen, onze eigen, van hem, van haar, heeft ze zelf, heeft hij zelf, hebben ze zelf, eigen spullen, brengt ze mee, brengt hij mee, eigen systeem, eigen zenders, eigen set',
    pt: 'próprio, própria, próprios, nosso, nossa, trazemos, da banda, levamos, nossos, a banda traz, banda leva, artista, trazido pela banda, fornecido pela banda, traz, os seus, os dela, os dele, o seu próprio, seus próprios, os nossos, dele mesmo, o próprio, própria dela, dele próprio, dela própria, temos os nossos, trazem, tem o seu, tem a sua, nossas, próprias, sistema próprio, sistemas próprios, sistema dela, sistema dele',
  },
  house: {
    trade:
      'house, house gear, please provide, to be provided, provided by house, venue, promoter, festival, pa company, local, supplied by house, needed, from house, by house, supplied by venue, provided by venue, by venue, from you, from venue, you provide, to provide, please supply, production, house supplied, supplier, in house, provided by promoter, organiser, organizer, by promoter, rental, we need, hire, from pa, yours, from your side, your packs, your system, you bring, house packs, festival packs, provided by you, supplied by you',
    de: 'haus, wird gestellt, bitte stellen, veranstalter, vom veranstalter, hausanlage, vor ort, wird benötigt, örtlich, stellen, wird gebraucht, vom haus, ton firma, pa firma, bitte bereitstellen, gestellt, benötigt, verleiher, technik, beschallungsfirma, brauchen wir, von euch, von ihnen, stellt ihr, von euch gestellt, hausseitig, bitte von euch, von eurer seite, haben wir gern, haben wir gerne, hätten wir gern, hätten wir gerne, bräuchten wir, wir hätten gern',
    fr: 'à fournir, fourni par le lieu, lieu, organisateur, fourni par l organisateur, salle, à prévoir, fourni par la salle, prestataire, sonorisateur, maison, festival, fourni, sur place, accueil, fourni par l organisation, organisation, nous avons besoin, fourni par vous, de chez vous, le vôtre, les vôtres, fournis par vous, à votre charge, à fournir par vous, par vous, de votre côté, fournis par la salle, de la salle, du festival, de l organisation',
    es: 'a proveer, local, sala, organización, promotor, de la casa, casa, por la organización, necesitamos, festival, producción, a cargo de la sala, provee la casa, aporta la sala, aporta la organización, proveer, empresa de sonido, organizador, de ustedes, de vosotros, vuestro, suministrado por ustedes, pone la sala, ponéis vosotros, ponen ustedes',
    it: 'da fornire, service, locale, organizzatore, fornito dal service, a carico del service, del locale, fornito dal locale, organizzazione, richiesto, fornito, fornire, serve, da voi, festival, fornito da voi, da voi fornito, fornita da voi, forniti da voi, a cura vostra, vostro, vostri, vostra',
    nl: 'van het huis, huis, zaal, te leveren, organisatie, graag leveren, door zaal, pa bedrijf, leveren, door organisatie, van zaal, nodig, locatie, van de zaal, festival, van jullie, door jullie, jullie leveren, van u, uw kant, graag van jullie',
    pt: 'da casa, casa, a fornecer, organização, fornecido pela casa, contratante, produção, precisamos, empresa de som, locadora, local, festival, fornecer, fornecido por vocês, de vocês, vosso, vossos, da vossa parte, por vocês',
  },
};

/** Marks that what is written may be replaced by something like it. */
export const alternatives: WordTable<'or'> = {
  or: {
    trade:
      'or equivalent, or similar, or equiv, or sim, or better, or alike, alternatively, or like, or equal, or comparable, or same, preferred, preferably, equivalent, similar, or',
    de: 'oder ähnlich, o ä, oder gleichwertig, oder vergleichbar, o ae, od ä, oder ähnliches, bzw, oder, od',
    fr: 'ou équivalent, ou similaire, ou équiv, ou eq, de préférence, ou',
    es: 'o similar, o equivalente, o parecido, o equiv, preferiblemente, o',
    it: 'o equivalente, o simile, o similare, oppure, o simili, preferibilmente, o',
    nl: 'of gelijkwaardig, of vergelijkbaar, of soortgelijk, of gelijkaardig, bij voorkeur, of',
    pt: 'ou equivalente, ou similar, ou semelhante, de preferência, ou',
  },
};
