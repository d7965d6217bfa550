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
    trade: 'drummer, drummers, drum',
    de: 'schlagzeuger, schlagzeugerin, drummerin, trommler',
    fr: 'batteur, batteuse',
    es: 'baterista, bateristas, batero, bata',
    it: 'batterista',
    nl: 'drumster',
    pt: 'baterista',
  },
  percussion: {
    trade: 'percussionist, percussionists',
    de: 'perkussionist, perkussionistin, percussionistin',
    fr: 'percussionniste',
    es: 'percusionista',
    it: 'percussionista',
    nl: 'percussioniste',
    pt: 'percussionista',
  },
  bass: {
    trade: 'bassist, bass player, bassplayer',
    de: 'bassistin',
    fr: 'bassiste, contrebassiste',
    es: 'bajista, contrabajista',
    it: 'bassista, contrabbassista',
    nl: 'bassiste',
    pt: 'baixista',
  },
  guitar: {
    trade: 'guitarist, guitar player, guitarists, lead guitarist, rhythm guitarist',
    de: 'gitarrist, gitarristin',
    fr: 'guitariste',
    es: 'guitarrista',
    it: 'chitarrista',
    nl: 'gitarist, gitariste',
    pt: 'guitarrista',
  },
  keys: {
    trade: 'keyboarder, keyboardist, keyboard player, keys player, keyboards player',
    de: 'keyboarderin, tastenmann',
    fr: 'claviériste',
    es: 'tecladista, teclista',
    it: 'tastierista',
    nl: 'toetsenist, toetseniste',
    pt: 'tecladista',
  },
  piano: { trade: 'pianist', fr: 'pianiste', es: 'pianista', it: 'pianista', de: 'pianistin' },
  'lead vocal': {
    trade: 'singer, lead singer, vocalist, frontman, frontwoman, front woman, lead vocalist, main singer',
    de: 'sänger, sängerin, frontfrau, leadsänger, leadsängerin',
    fr: 'chanteur, chanteuse',
    es: 'cantante, vocalista',
    it: 'cantante',
    nl: 'zanger, zangeres',
    pt: 'cantor, cantora, vocalista',
  },
  'backing vocal': {
    trade: 'backing singer, backing singers, backing vocalist, backing vocalists, bv singers',
    de: 'backgroundsängerin, backgroundsänger',
    fr: 'choriste, choristes',
    es: 'corista, coristas',
    it: 'corista, coristi',
    nl: 'achtergrondzangeres, achtergrondzanger',
    pt: 'corista',
  },
  trumpet: {
    trade: 'trumpeter, trumpet player',
    de: 'trompeter, trompeterin',
    fr: 'trompettiste',
    es: 'trompetista',
    it: 'trombettista',
    nl: 'trompettist',
    pt: 'trompetista',
  },
  saxophone: {
    trade: 'saxophonist, sax player',
    de: 'saxofonist, saxophonistin',
    fr: 'saxophoniste',
    es: 'saxofonista',
    it: 'sassofonista',
    nl: 'saxofonist',
    pt: 'saxofonista',
  },
  trombone: {
    trade: 'trombonist, trombone player',
    de: 'posaunist',
    fr: 'tromboniste',
    es: 'trombonista',
    it: 'trombonista',
    nl: 'trombonist',
  },
  violin: {
    trade: 'violinist, fiddler, fiddle player',
    de: 'geiger, geigerin',
    fr: 'violoniste',
    es: 'violinista',
    it: 'violinista',
    nl: 'violist',
  },
  cello: {
    trade: 'cellist',
    de: 'cellistin',
    fr: 'violoncelliste',
    es: 'violonchelista',
    it: 'violoncellista',
  },
  accordion: {
    trade: 'accordionist',
    de: 'akkordeonist',
    fr: 'accordéoniste',
    es: 'acordeonista',
    it: 'fisarmonicista',
    nl: 'accordeonist',
  },
  dj: { trade: 'dj' },
  brass: { trade: 'horn players, horn section, brass section' },
  presenter: { trade: 'mc' },
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
