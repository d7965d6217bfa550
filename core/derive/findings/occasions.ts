import { usesHouseDevice } from '../../plan/plan-devices.ts';
import { leavesRig } from '../../plan/plan-outputs.ts';
import { factsOfKind, sourceKinds } from '../../show/source-kinds.ts';
import { cueKindOf } from '../cue.ts';
import type { ActFacts } from '../facts.ts';
import { someReferenceIsLost } from './references.ts';

/**
 * What an act may have that a rule is about. Most acts have few of these, and most rules are about one: a rule names it
 * in its row, and is not asked where the act has none. One pass over the rows notices all of them, in place of one
 * pass for every rule.
 */
const none = {
  decisions: false,
  'decided copies': false,
  alternates: false,
  'lost references': false,

  pairs: false,
  'sources without FOH channel': false,
  'sources for FOH only': false,
  'copies without channel': false,
  'lines without socket': false,
  'lines that 48 V harms': false,
  'lines that lack 48 V': false,
  'wireless lines': false,
  'rider numbers': false,
  clicks: false,
  ambience: false,
  'talk microphones': false,
  'effect returns': false,
  'something that comes back': false,
  'lead vocals': false,
  'aimed microphones': false,
  'places on the plot': false,
  'boxes with a reach': false,

  'gains of nobody': false,
  'expected levels': false,
  'gains that are set': false,

  'mixes made elsewhere': false,
  'mixes for an unknown device': false,
  'mixes without bus': false,
  'mixes without output': false,
  'mixes short of devices': false,
  'mixes that nobody hears': false,
  'mixes that are shared': false,
  'mixes without talk': false,
  'stereo devices on one bus': false,
  'mono devices of stereo mixes': false,
  'packs that may lack a limiter': false,
  'devices that are wired': false,
  frequencies: false,

  'cues of the other kind': false,
  'mono cues of stereo mixes': false,
  'cues of unknown level': false,
  'cue devices that performers may get': false,

  'performers without mix': false,
  'performers with a click': false,
};

export type Occasion = keyof typeof none;
export const occasionNames = Object.keys(none) as readonly Occasion[];
export type Occasions = Readonly<Record<Occasion, boolean>>;

export function occasionsOf(facts: ActFacts): Occasions {
  const { sheet } = facts;
  const there = { ...none };
  there.decisions = sheet.decisions.length > 0;
  there['decided copies'] = sheet.copies.length > 0;
  there.alternates = sheet.alternates.length > 0;
  there['lost references'] = someReferenceIsLost(facts);
  for (const { channel } of facts.plan.copies) there['copies without channel'] ||= channel === null;
  for (const { reachM } of sheet.boxes) there['boxes with a reach'] ||= reachM !== null;
  noticeSources(facts, there);
  noticeKinds(facts, there);
  noticeGains(facts, there);
  noticeMixes(facts, there);
  noticeCues(facts, there);
  noticeCueOfMixes(facts, there);
  noticePeople(facts, there);
  return there;
}

function noticeSources({ sheet, plan, copies }: ActFacts, there: typeof none): void {
  const { sources } = sheet;
  for (let at = 0; at < sources.length; at++) {
    const source = sources[at];
    const patch = plan.patches[at];
    if (!source || !patch) continue;
    const { phantom, audience } = source;
    there.pairs ||= source.pairSourceId !== null;
    there['sources without FOH channel'] ||= copies[at]?.foh === null;
    there['sources for FOH only'] ||= audience === 'front of house only';
    there['lines without socket'] ||= patch.socketId === null;
    there['lines that 48 V harms'] ||= phantom === 'harmful';
    there['lines that lack 48 V'] ||= phantom === 'needed' && !patch.phantomOn;
    there['wireless lines'] ||= source.pickUp === 'wireless';
    there.frequencies ||= source.frequencyMhz !== null;
    there['rider numbers'] ||= source.riderLine !== null;
    there['something that comes back'] ||= source.returnsMixId !== null || source.returnsCueOutputId !== null;
    there['aimed microphones'] ||= source.pattern !== null && source.aimDeg !== null;
    there['places on the plot'] ||= source.xM !== null;
  }
}

/** By the order of a kind, the kinds that rules are about. */
const kindsLookedFor = Uint8Array.from(sourceKinds, (kind) => {
  if (kind === 'lead vocal') return 1;
  if (kind === 'talkback') return 2;
  if (kind === 'ambience') return 4;
  if (kind === 'effect return') return 8;
  return factsOfKind(kind).group === 'click' ? 16 : 0;
});

function noticeKinds({ index }: ActFacts, there: typeof none): void {
  let found = 0;
  for (const kind of index.kindAt) found |= kindsLookedFor[kind] ?? 0;
  there['lead vocals'] = (found & 1) !== 0;
  there['talk microphones'] = (found & 2) !== 0;
  there.ambience = (found & 4) !== 0;
  there['effect returns'] = (found & 8) !== 0;
  there.clicks = (found & 16) !== 0;
}

function noticeGains({ gains }: ActFacts, there: typeof none): void {
  for (const { owner, neededDb, gainDb } of gains) {
    there['gains of nobody'] ||= owner === null;
    there['expected levels'] ||= neededDb !== null;
    there['gains that are set'] ||= gainDb !== null;
  }
}

function noticeMixes({ mixes, talk }: ActFacts, there: typeof none): void {
  for (const { mix, planned, devices } of mixes) {
    const isStereo = planned.format === 'stereo';
    const isHere = mix.mixedAt === 'house desk';
    there['mixes made elsewhere'] ||= !isHere;
    there['mixes for an unknown device'] ||= mix.deviceKind === null;
    there['mixes without bus'] ||= isHere && planned.busIds.length === 0;
    there['mixes without output'] ||= leavesRig(mix) && planned.outputIds.length < (isStereo ? 2 : 1);
    there['mixes short of devices'] ||= usesHouseDevice(mix) && planned.deviceIds.length < mix.deviceCount;
    there['places on the plot'] ||= mix.xM !== null;
    const onOneBus = !isStereo || planned.busIds.length === 1;
    for (const { kind, format, limiter, outputId, frequencyMhz } of devices) {
      there['stereo devices on one bus'] ||= onOneBus && format === 'stereo';
      there['mono devices of stereo mixes'] ||= isStereo && format === 'mono';
      there['packs that may lack a limiter'] ||= kind === 'in-ear' && limiter !== 'in the receiver';
      there['devices that are wired'] ||= outputId !== null;
      there.frequencies ||= frequencyMhz !== null;
    }
  }
  for (const { engineerReaches } of talk) there['mixes without talk'] ||= !engineerReaches;
}

function noticeCues({ sheet, index }: ActFacts, there: typeof none): void {
  for (const { deviceId } of sheet.cueOutputs) {
    const device = deviceId === null ? undefined : index.device(deviceId);
    there['cue devices that performers may get'] ||= device?.forCue === false;
    there.frequencies ||= device !== undefined && device.frequencyMhz !== null;
  }
}

function noticeCueOfMixes({ sheet, plan, cues }: ActFacts, there: typeof none): void {
  for (let at = 0; at < cues.length; at++) {
    const cue = cues[at];
    const mix = sheet.mixes[at];
    const planned = plan.mixes[at];
    if (!cue || cue.cueOutputId === null || !mix || !planned) continue;
    there['cues of unknown level'] ||= cue.offsetDb === null && planned.deviceIds.length > 0;
    for (const { id, kind, format } of sheet.cueOutputs) {
      if (id !== cue.cueOutputId) continue;
      there['cues of the other kind'] ||= mix.deviceKind !== null && kind !== cueKindOf(mix.deviceKind);
      there['mono cues of stereo mixes'] ||= planned.format === 'stereo' && format === 'mono';
    }
  }
}

function noticePeople({ sheet, people }: ActFacts, there: typeof none): void {
  for (const { needsClick, xM } of sheet.performers) {
    there['performers with a click'] ||= needsClick;
    there['places on the plot'] ||= xM !== null;
  }
  for (const mixes of people.mixesOf) there['performers without mix'] ||= mixes.length === 0;
  for (const listeners of people.listenersOf) {
    there['mixes that nobody hears'] ||= listeners === 0;
    there['mixes that are shared'] ||= listeners > 1;
  }
}
