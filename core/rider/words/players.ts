import type { Stem } from './sources.ts';
import type { WordTable } from './table.ts';

/** Words for the person who plays or sings, by what they play. */
export const players: WordTable<
  Extract<
    Stem,
    | 'drums'
    | 'percussion'
    | 'bass'
    | 'guitar'
    | 'keys'
    | 'piano'
    | 'lead vocal'
    | 'backing vocal'
    | 'trumpet'
    | 'saxophone'
    | 'trombone'
    | 'violin'
    | 'cello'
    | 'accordion'
    | 'dj'
    | 'brass'
    | 'presenter'
  >
> = {
  drums: {
    trade: 'drummer, drummers, drum, drummer s, drums player, sticksman, drumer, kit player',
    de: 'schlagzeuger, schlagzeugerin, drummerin, trommler, schlagzeugerinnen, trommlerin, schlagzeuger/in, drumer, der schlagzeuger, die schlagzeugerin',
    fr: 'batteur, batteuse, batteurs, batteuses, le batteur, la batteuse, drummer',
    es: 'baterista, bateristas, batero, bata, el baterista, batera, baterísta, la baterista',
    it: 'batterista, il batterista, la batterista, drummer',
    nl: 'drumster, drummer, slagwerker, slagwerkster, de drummer',
    pt: 'baterista, o baterista, a baterista, batera, baterista/percussionista',
  },
  percussion: {
    trade: 'percussionist, percussionists, perc player, percussion player',
    de: 'perkussionist, perkussionistin, percussionistin, schlagwerker, schlagwerkerin, percussionist, perkussionisten',
    fr: 'percussionniste, percussionnistes, le percussionniste',
    es: 'percusionista, percusionistas, percu, el percusionista',
    it: 'percussionista, percussionisti, il percussionista',
    nl: 'percussioniste, percussionist, percussionisten',
    pt: 'percussionista, percussionistas, percussa',
  },
  bass: {
    trade:
      'bassist, bass player, bassplayer, bass guitarist, bass man, bassman, bass guy, double bassist, double bass player, upright bassist, bass gtr player',
    de: 'bassistin, bassmann, bassist, kontrabassist, kontrabassistin, bassgitarrist, der bassist, basser, basserin',
    fr: 'bassiste, contrebassiste, le bassiste, la bassiste, contrebassistes',
    es: 'bajista, contrabajista, bajistas, el bajista, la bajista, bajísta, contrabajistas',
    it: 'bassista, contrabbassista, il bassista, la bassista, bassisti, contrabbassisti',
    nl: 'bassiste, bassist, contrabassist, contrabassiste, de bassist',
    pt: 'baixista, o baixista, baixistas, contrabaixista',
  },
  guitar: {
    trade:
      'guitarist, guitar player, guitarists, lead guitarist, rhythm guitarist, guitarist 1, gtr player, guit player, axe man, axeman, lead guitar player, acoustic guitarist, electric guitarist, gtrist, guitar guy, guitar tech, rhythm guitar player',
    de: 'gitarrist, gitarristin, gitarristen, gitarristinnen, leadgitarrist, rhythmusgitarrist, der gitarrist, die gitarristin, klampfer, sologitarrist',
    fr: 'guitariste, guitaristes, le guitariste, la guitariste, gratteux, guitariste lead',
    es: 'guitarrista, guitarristas, el guitarrista, guitarrero, guitarra solista músico, la guitarrista',
    it: 'chitarrista, chitarristi, il chitarrista, la chitarrista, chitarrista solista',
    nl: 'gitarist, gitariste, gitaristen, de gitarist, sologitarist, slaggitarist, leadgitarist',
    pt: 'guitarrista, guitarristas, o guitarrista, violonista, violonistas, violeiro',
  },
  keys: {
    trade:
      'keyboarder, keyboardist, keyboard player, keys player, keyboards player, keys man, keys guy, keysman, synth player, organist, organ player, keyboards guy, key player, keys girl, synth guy',
    de: 'keyboarderin, tastenmann, keyboarder, keyboarderinnen, tastenfrau, tastenspieler, organist, organistin, der keyboarder, synthesizer spieler, tasteur',
    fr: 'claviériste, claviériste lead, claviéristes, organiste, clavieriste, le claviériste',
    es: 'tecladista, teclista, tecladistas, teclistas, el tecladista, organista, pianista tecladista, la tecladista',
    it: 'tastierista, tastieristi, il tastierista, la tastierista, organista',
    nl: 'toetsenist, toetseniste, toetsenman, toetsenisten, organist, toetsenvrouw, de toetsenist, organiste',
    pt: 'tecladista, tecladistas, o teclista, teclista, teclistas, organista, a tecladista',
  },
  piano: {
    trade: 'pianist, pianists, piano player, accompanist, repetiteur',
    fr: 'pianiste, le pianiste, la pianiste, pianistes, accompagnateur, accompagnatrice',
    es: 'pianista, pianistas, el pianista, la pianista, pianista acompañante',
    it: 'pianista, pianisti, il pianista, la pianista, maestro accompagnatore',
    de: 'pianistin, pianist, pianisten, klavierspieler, klavierspielerin, korrepetitor, korrepetitorin',
    nl: 'pianiste, pianist, begeleider',
    pt: 'pianista, pianistas',
  },
  'lead vocal': {
    trade:
      'singer, lead singer, vocalist, frontman, frontwoman, front woman, lead vocalist, main singer, front man, front person, frontperson, lead singers, main vocalist, rapper, the singer, singers, soloist, soloists, front lady, vocalists, crooner, mc lead, lead vox singer, chanteuse',
    de: 'sänger, sängerin, frontfrau, leadsänger, leadsängerin, sängerinnen, sänger/in, frontmann, solistin, solist, solisten, rapper, rapperin, die sängerin, der sänger, leadstimme, hauptsänger, hauptsängerin, frontsängerin, frontsänger, liedermacher, liedermacherin',
    fr: 'chanteur, chanteuse, chanteurs, chanteuses, le chanteur, la chanteuse, chanteur lead, chanteuse lead, soliste, solistes, rappeur, rappeuse, slameur, slameuse, comédien, conteur, conteuse',
    es: 'cantante, vocalista, cantantes, el cantante, la cantante, cantor, cantora, cantaor, cantaora, solista, rapero, rapera, vocalistas, cantautor, cantautora, frontman',
    it: 'cantante, cantanti, il cantante, la cantante, cantautore, cantautrice, solista, frontman, rapper, vocalist',
    nl: 'zanger, zangeres, zangers, zangeressen, de zanger, de zangeres, leadzanger, leadzangeres, solist, soliste, rapper, frontman, frontvrouw',
    pt: 'cantor, cantora, vocalista, cantores, cantoras, o cantor, a cantora, vocalistas, fadista, solista, rapper, cantautor, frontman',
  },
  'backing vocal': {
    trade:
      'backing singer, backing singers, backing vocalist, backing vocalists, bv singers, backup singer, backup singers, background singer, background singers, bv singer, bvs singers, backing vox singers, backing vocals singers, bgv singers',
    de: 'backgroundsängerin, backgroundsänger, backgroundsängerinnen, chorsänger, chorsängerin, chorsängerinnen, background sängerin, backgroundsänger/innen, choristin',
    fr: 'choriste, choristes, les choristes, la choriste',
    es: 'corista, coristas, las coristas, los coristas, la corista',
    it: 'corista, coristi, le coriste, i coristi, vocalist coro',
    nl: 'achtergrondzangeres, achtergrondzanger, achtergrondzangeressen, achtergrondzangers, koorzangers, backing zangers, koorzanger, koorzangeres',
    pt: 'corista, coristas, as coristas, backing vocals cantoras, os coristas',
  },
  trumpet: {
    trade: 'trumpeter, trumpet player, trumpets, trumpet 1 player, trumpeters, cornet player, cornettist',
    de: 'trompeter, trompeterin, trompeterinnen, der trompeter, kornettist',
    fr: 'trompettiste, le trompettiste, trompettistes',
    es: 'trompetista, trompetero, trompetistas, el trompetista',
    it: 'trombettista, trombettisti, il trombettista, trombettiere',
    nl: 'trompettist, trompettiste, de trompettist, trompettisten',
    pt: 'trompetista, trompetistas, o trompetista',
  },
  saxophone: {
    trade: 'saxophonist, sax player, saxist, saxophone player, saxophonists, saxman, sax man, sax guy',
    de: 'saxofonist, saxophonistin, saxophonist, saxofonistin, saxer, saxerin, der saxophonist, saxophonisten',
    fr: 'saxophoniste, saxophonistes, saxo, le saxophoniste',
    es: 'saxofonista, saxofonistas, el saxofonista, saxo',
    it: 'sassofonista, sassofonisti, saxofonista, il sassofonista',
    nl: 'saxofonist, saxofoniste, saxofonisten, de saxofonist',
    pt: 'saxofonista, saxofonistas, o saxofonista',
  },
  trombone: {
    trade: 'trombonist, trombone player, trombonists, bone player',
    de: 'posaunist, posaunistin, posaunisten, der posaunist',
    fr: 'tromboniste, trombonistes, le tromboniste',
    es: 'trombonista, trombonistas, el trombonista',
    it: 'trombonista, trombonisti, il trombonista',
    nl: 'trombonist, tromboniste, trombonisten, de trombonist',
    pt: 'trombonista, trombonistas',
  },
  violin: {
    trade: 'violinist, fiddler, fiddle player, violin player, fiddlers, violinists',
    de: 'geiger, geigerin, violinist, violinistin, fiedler, geigerinnen, geiger/in, die geigerin',
    fr: 'violoniste, violonistes, violoneux, la violoniste',
    es: 'violinista, violinistas, el violinista, la violinista',
    it: 'violinista, violinisti, la violinista, il violinista',
    nl: 'violist, violiste, violisten, de violist',
    pt: 'violinista, violinistas',
  },
  cello: {
    trade: 'cellist, cello player, cellists',
    de: 'cellistin, cellist, cellisten, die cellistin',
    fr: 'violoncelliste, violoncellistes, la violoncelliste',
    es: 'violonchelista, chelista, violoncelista, chelistas',
    it: 'violoncellista, violoncellisti, la violoncellista',
    nl: 'celliste, cellist, cellisten',
    pt: 'violoncelista, violoncelistas',
  },
  accordion: {
    trade: 'accordionist, accordion player, squeezebox player, accordionists',
    de: 'akkordeonist, akkordeonistin, akkordeonspieler, akkordeonspielerin',
    fr: 'accordéoniste, accordéonistes, l accordéoniste',
    es: 'acordeonista, acordeonistas, bandoneonista, el acordeonista',
    it: 'fisarmonicista, fisarmonicisti, il fisarmonicista',
    nl: 'accordeonist, accordeoniste, accordeonisten',
    pt: 'acordeonista, sanfoneiro, acordeonistas',
  },
  dj: {
    trade: 'dj, dj s, deejay, turntablist',
    de: 'djane',
    es: 'dj, el dj, deejay, la dj',
    fr: 'le dj, la dj',
    pt: 'o dj, a dj',
  },
  brass: {
    trade:
      'horn players, horn section, brass section, horns, horn player, brass players, horn guys, brass guys, horn boys',
    de: 'bläser, bläsersatz, blechbläser, die bläser, bläserinnen',
    fr: 'cuivres, section cuivres, les cuivres',
    es: 'vientos, metales, los vientos, sección de vientos, los metales',
    it: 'fiati, ottoni, i fiati, sezione fiati',
    nl: 'blazers, de blazers, blazerssectie',
    pt: 'sopros, metais, os sopros, naipe de metais',
  },
  presenter: {
    trade: 'mc, presenter, announcer, compere, emcee',
    de: 'moderator, moderatorin, sprecher, sprecherin, ansager, ansagerin, erzähler, erzählerin, conférencier',
    fr: 'présentateur, présentatrice, animateur, animatrice, récitant, récitante, narrateur',
    es: 'presentador, presentadora, animador, animadora, locutor, narrador, narradora',
    it: 'presentatore, presentatrice, conduttore, conduttrice, narratore, narratrice',
    nl: 'presentator, presentatrice, spreker, verteller, vertelster',
    pt: 'apresentador, apresentadora, locutor, locutora, narrador, narradora',
  },
};

/** Given names that are words of the trade too: where one is a performer of the rider, it means the person beside
 * another source ("BV Tom"). */
export const givenNames: ReadonlySet<string> = new Set([
  'tom',
  'viola',
  'melody',
  'harper',
  'piper',
  'carol',
  'mike',
  'bo',
  'pat',
  'max',
  'chris',
  'al',
  'reed',
  'kit',
  'sol',
  'di',
  'clara',
  'clare',
  'vi',
]);
