import type { ActDraft } from '../../helpers/clean-act.ts';

/** One fault, in the words of whoever meets it: how it comes into the clean act, and how it goes again. */
export type FaultCase = {
  code: string;
  fault: string;
  mended: string;
  break: (act: ActDraft) => unknown;
  /** Applied on top of `break`. */
  mend: (act: ActDraft) => unknown;
  /** What the finding has to say, where a figure is computed. */
  says?: string;
};

const decision = (about: string, row: Record<string, unknown>) => ({ id: `decided ${about}`, about, ...row });
const noorVocal = { mixId: 'Noor wedge', sourceId: 'vocal' };

export const faultCases: readonly FaultCase[] = [
  // Copies and channels
  {
    code: 'two-copies-in-one-mix',
    fault: 'both copies of the vocal are in one wedge',
    mended: 'the second is taken out',
    break: (act) => act.add('decisions', decision('second feed', { ...noorVocal, purpose: 'foh' })),
    mend: (act) => act.remove('decisions', 'decided second feed'),
    says: '+6 dB',
  },
  {
    code: 'monitor-copy-in-main-mix',
    fault: 'the copy for monitors goes to the hall',
    mended: 'it is taken out of the main mix',
    break: (act) =>
      act.add('copies', { id: 'copy', sourceId: 'vocal', purpose: 'monitors', inMainMix: true }),
    mend: (act) => act.set('copies', 'copy', { inMainMix: false }),
  },
  {
    code: 'foh-copy-beside-monitor-copy',
    fault: 'a wedge takes the FOH channel of a doubled vocal',
    mended: 'the rule chooses again',
    break: (act) => act.add('decisions', decision('feed', { ...noorVocal, purpose: 'foh' })),
    mend: (act) => act.remove('decisions', 'decided feed'),
  },
  {
    code: 'parallel-copy-in-mix',
    fault: 'a wedge takes the parallel channel',
    mended: 'it takes the copy for monitors',
    break: (act) =>
      act
        .add('copies', { id: 'copy', sourceId: 'vocal', purpose: 'parallel' })
        .add('decisions', decision('feed', { ...noorVocal, purpose: 'parallel' })),
    mend: (act) => act.set('decisions', 'decided feed', { purpose: 'monitors' }),
  },
  {
    code: 'chosen-copy-missing',
    fault: 'a copy for wedges was chosen that nobody made',
    mended: 'it is made',
    break: (act) => act.add('decisions', decision('feed', { ...noorVocal, purpose: 'wedges' })),
    mend: (act) => act.add('copies', { id: 'copy', sourceId: 'vocal', purpose: 'wedges' }),
  },
  {
    code: 'source-without-channel',
    fault: 'the desk has fewer channels than the act sources',
    mended: 'the desk is larger',
    break: (act) => act.rig({ channelCount: 4 }),
    mend: (act) => act.rig({ channelCount: 5 }),
    says: 'the desk has 4',
  },
  {
    code: 'channel-used-twice',
    fault: 'two sources are decided onto one channel',
    mended: 'one moves',
    break: (act) =>
      act
        .add('copies', { id: 'one', sourceId: 'vocal', purpose: 'foh', channel: 9 })
        .add('copies', { id: 'other', sourceId: 'spare', purpose: 'foh', channel: 9 }),
    mend: (act) => act.set('copies', 'other', { channel: 10 }),
    says: 'Channel 9',
  },
  {
    code: 'channel-beyond-desk',
    fault: 'a channel is decided that the desk does not have',
    mended: 'it gets one that is there',
    break: (act) => act.add('copies', { id: 'one', sourceId: 'vocal', purpose: 'foh', channel: 33 }),
    mend: (act) => act.set('copies', 'one', { channel: 32 }),
    says: 'ends at 32',
  },
  {
    code: 'no-room-for-monitor-copies',
    fault: 'no channel is left to double the vocals',
    mended: 'two more channels are there',
    break: (act) => act.rig({ channelCount: 5 }),
    mend: (act) => act.rig({ channelCount: 7 }),
  },
  {
    code: 'phase-pair-doubled-alone',
    fault: 'one of two kick microphones has a copy for monitors',
    mended: 'the other gets one too',
    break: (act) =>
      act
        .add('sources', { id: 'kick in', kind: 'kick in', pickUp: 'mic', phantom: 'not needed' })
        .add('sources', { id: 'kick out', kind: 'kick out', pickUp: 'mic', phantom: 'not needed' })
        .add('copies', { id: 'one', sourceId: 'kick in', purpose: 'monitors' })
        .add('copies', { id: 'other', sourceId: 'kick out', purpose: 'monitors', wanted: false }),
    mend: (act) => act.set('copies', 'other', { wanted: true }),
  },
  {
    code: 'phase-pair-copies-differ',
    fault: 'one kick microphone is delayed in the copy for monitors only',
    mended: 'FOH has the same delay',
    break: (act) =>
      act
        .add('sources', { id: 'kick in', kind: 'kick in', pickUp: 'mic', phantom: 'not needed' })
        .add('sources', { id: 'kick out', kind: 'kick out', pickUp: 'mic', phantom: 'not needed' })
        .add('copies', { id: 'one', sourceId: 'kick out', purpose: 'monitors', latencyMs: 0.8 }),
    mend: (act) => act.add('copies', { sourceId: 'kick out', purpose: 'foh', latencyMs: 0.8 }),
    says: '0.8 ms',
  },
  {
    code: 'copy-feeds-no-mix',
    fault: 'a copy for in-ears feeds nobody',
    mended: 'an ear mix asks for the source',
    break: (act) => act.add('copies', { sourceId: 'vocal', purpose: 'in-ears' }).remove('wishes', 'wish 3'),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', sourceId: 'vocal', amount: 'little' }),
  },

  // Feeds and wishes
  {
    code: 'source-cannot-be-heard',
    fault: 'a mix asks for a source that is not through this desk',
    mended: 'the source comes through the desk',
    break: (act) => act.set('sources', 'vocal', { audience: 'not here' }),
    mend: (act) => act.set('sources', 'vocal', { audience: 'monitors only' }),
  },
  {
    code: 'source-nobody-hears',
    fault: 'the ambience is in no mix',
    mended: 'a mix asks for it',
    break: (act) => act.remove('wishes', 'wish 7'),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', sourceId: 'room', amount: 'little' }),
  },
  {
    code: 'post-fader-from-foh',
    fault: 'keys go to the ears after the FOH fader',
    mended: 'the send is pre-fader',
    break: (act) =>
      act.add('decisions', decision('tap', { mixId: 'Tam ears', sourceId: 'keys left', tap: 'post-fader' })),
    mend: (act) => act.set('decisions', 'decided tap', { tap: 'pre-fader' }),
  },
  {
    code: 'taps-mixed',
    fault: 'one of two vocal copies is sent post-fader',
    mended: 'both are',
    break: (act) => act.add('decisions', decision('tap', { ...noorVocal, tap: 'post-fader' })),
    mend: (act) =>
      act.add('decisions', { about: 'tap', mixId: 'Noor wedge', sourceId: 'spare', tap: 'post-fader' }),
  },
  {
    code: 'foh-only-source-in-mix',
    fault: 'the keys are for FOH only, and the player asks for them by name',
    mended: 'they are heard in the monitors too',
    break: (act) => act.set('sources', 'keys left', { audience: 'front of house only' }),
    mend: (act) => act.set('sources', 'keys left', { audience: 'front of house and monitors' }),
  },
  {
    code: 'level-above-unity',
    fault: 'a wish asks for +4 dB',
    mended: 'it asks for 0 dB',
    break: (act) => act.set('wishes', 'wish 1', { amount: null, levelDb: 4 }),
    mend: (act) => act.set('wishes', 'wish 1', { levelDb: 0 }),
    says: '+4 dB',
  },
  {
    code: 'only-with-others',
    fault: 'a wedge asks for the vocal only, and for the spare',
    mended: 'the "only" becomes "lots"',
    break: (act) => act.set('wishes', 'wish 1', { amount: 'only' }),
    mend: (act) => act.set('wishes', 'wish 1', { amount: 'lots' }),
  },
  {
    code: 'wishes-in-a-circle',
    fault: 'two mixes are each to be the same as the other',
    mended: 'one of them stands alone',
    break: (act) =>
      act
        .add('wishes', { id: 'here', mixId: 'Noor wedge', sameAsMixId: 'Tam ears' })
        .add('wishes', { id: 'back', mixId: 'Tam ears', sameAsMixId: 'Noor wedge' }),
    mend: (act) => act.remove('wishes', 'back'),
  },
  {
    code: 'wish-of-an-empty-group',
    fault: 'a mix asks for brass, and there is none',
    mended: 'there is a trumpet',
    break: (act) => act.add('wishes', { mixId: 'Tam ears', group: 'brass', amount: 'some' }),
    mend: (act) => act.add('sources', { id: 'trumpet', kind: 'trumpet' }),
  },
  {
    code: 'wishes-not-confirmed',
    fault: 'the act is ready with a wish from paper',
    mended: 'the wish is confirmed',
    break: (act) => act.act({ state: 'ready' }).set('wishes', 'wish 1', { words: 'lots of me' }),
    mend: (act) => act.set('wishes', 'wish 1', { confirmed: true }),
  },
  {
    code: 'decision-without-wish',
    fault: 'a level was decided where no wish is',
    mended: 'the wish is there',
    break: (act) =>
      act.add('decisions', decision('level', { mixId: 'Noor wedge', sourceId: 'keys left', levelDb: -10 })),
    mend: (act) => act.add('wishes', { mixId: 'Noor wedge', sourceId: 'keys left', amount: 'little' }),
  },
  {
    code: 'everything-in-a-loudspeaker',
    fault: 'a wedge asks for everything',
    mended: 'it asks for the vocals',
    break: (act) => act.set('wishes', 'wish 1', { sourceId: null, group: 'everything' }),
    mend: (act) => act.set('wishes', 'wish 1', { group: 'vocals' }),
  },
  {
    code: 'mix-starts-lower',
    fault: 'the headroom of the rig is larger than two sources at unity leave',
    mended: 'the rig keeps less headroom',
    break: (act) => act.rig({ headroomDb: 18 }),
    mend: (act) => act.rig({ headroomDb: 14 }),
    says: '3 dB lower',
  },
  {
    code: 'mix-is-empty',
    fault: 'a mix has no wish',
    mended: 'it asks for the vocal',
    break: (act) => act.remove('wishes', 'wish 1', 'wish 2'),
    mend: (act) => act.add('wishes', { mixId: 'Noor wedge', sourceId: 'vocal', amount: 'lots' }),
  },
  {
    code: 'pair-split-in-mix',
    fault: 'the ears get the left keys only',
    mended: 'the right ones are added',
    break: (act) => act.remove('wishes', 'wish 6'),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', sourceId: 'keys right', amount: 'some' }),
  },
  {
    code: 'pair-levels-differ',
    fault: 'the right keys are lower than the left',
    mended: 'both are asked for alike',
    break: (act) => act.set('wishes', 'wish 6', { amount: 'little' }),
    mend: (act) => act.set('wishes', 'wish 5', { amount: 'little' }),
  },

  // Performers
  {
    code: 'performer-without-mix',
    fault: 'nobody gave the singer a mix',
    mended: 'the singer listens to the wedge',
    break: (act) => act.remove('listeners', 'listener 1'),
    mend: (act) => act.add('listeners', { mixId: 'Noor wedge', performerId: 'Noor' }),
  },
  {
    code: 'own-voice-not-heard',
    fault: 'the singer does not get their own voice',
    mended: 'the wish says "none": it is meant so',
    break: (act) => act.remove('wishes', 'wish 1'),
    mend: (act) => act.add('wishes', { mixId: 'Noor wedge', sourceId: 'vocal', amount: 'none' }),
  },
  {
    code: 'own-instrument-not-heard',
    fault: 'the keys player hears no keys in-ear',
    mended: 'the keys are asked for',
    break: (act) => act.remove('wishes', 'wish 5', 'wish 6'),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', group: 'keys', amount: 'some' }),
  },
  {
    code: 'click-missing',
    fault: 'the keys player needs a click and has none',
    mended: 'the click is in the ears',
    break: (act) =>
      act
        .set('performers', 'Tam', { needsClick: true })
        .add('sources', { id: 'click', kind: 'click', audience: 'monitors only' }),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', sourceId: 'click', amount: 'some' }),
  },
  {
    code: 'click-on-a-loudspeaker',
    fault: 'the wedge gets the click',
    mended: 'only the ears get it',
    break: (act) =>
      act
        .add('sources', { id: 'click', kind: 'click', audience: 'monitors only' })
        .add('wishes', { id: 'wish for click', mixId: 'Noor wedge', sourceId: 'click', amount: 'little' }),
    mend: (act) => act.set('wishes', 'wish for click', { mixId: 'Tam ears' }),
  },
  {
    code: 'ambience-on-a-loudspeaker',
    fault: 'the wedge gets the ambience microphones',
    mended: 'only the ears get them',
    break: (act) => act.set('wishes', 'wish 7', { mixId: 'Noor wedge' }),
    mend: (act) => act.set('wishes', 'wish 7', { mixId: 'Tam ears' }),
  },
  {
    code: 'timecode-in-a-mix',
    fault: 'timecode is in somebody’s ears',
    mended: 'it is taken out',
    break: (act) =>
      act
        .add('sources', { id: 'timecode', kind: 'timecode', audience: 'monitors only' })
        .add('wishes', { id: 'wish for code', mixId: 'Tam ears', sourceId: 'timecode', amount: 'little' }),
    mend: (act) => act.remove('wishes', 'wish for code'),
  },
  {
    code: 'click-at-front-of-house',
    fault: 'the click has a channel for the hall',
    mended: 'it is for the monitors only',
    break: (act) => act.add('sources', { id: 'click', kind: 'click' }),
    mend: (act) => act.set('sources', 'click', { audience: 'monitors only' }),
  },
  {
    code: 'ears-without-ambience',
    fault: 'the ears hold no ambience',
    mended: 'they do',
    break: (act) => act.remove('wishes', 'wish 7'),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', group: 'ambience', amount: 'little' }),
  },
  {
    code: 'performer-in-several-mixes',
    fault: 'the singer listens to both mixes',
    mended: 'the second is a side fill, which everybody hears',
    break: (act) => act.add('listeners', { mixId: 'Tam ears', performerId: 'Noor' }),
    mend: (act) => act.set('mixes', 'Tam ears', { deviceKind: 'side fill' }),
  },

  // Mixes and buses
  {
    code: 'mix-without-bus',
    fault: 'the desk has two buses for three',
    mended: 'the stereo mix becomes mono',
    break: (act) => act.keepFirst('buses', 2),
    mend: (act) => act.set('mixes', 'Tam ears', { format: 'mono' }),
    says: 'needed 3, free to use 2',
  },
  {
    code: 'bus-used-twice',
    fault: 'two mixes are decided onto one bus',
    mended: 'one of them moves',
    break: (act) =>
      act
        .set('mixes', 'Tam ears', { format: 'mono' })
        .add('decisions', { id: 'one', about: 'bus', mixId: 'Noor wedge', busId: 'bus 2' })
        .add('decisions', { id: 'other', about: 'bus', mixId: 'Tam ears', busId: 'bus 2' }),
    mend: (act) => act.set('decisions', 'other', { busId: 'bus 3' }),
    says: 'Bus 2',
  },
  {
    code: 'bus-is-reserved',
    fault: 'a mix is decided onto the bus of a reverb',
    mended: 'the bus is free',
    break: (act) =>
      act
        .set('buses', 'bus 8', { reservedFor: 'reverb' })
        .add('decisions', decision('bus', { mixId: 'Noor wedge', busId: 'bus 8' })),
    mend: (act) => act.set('buses', 'bus 8', { reservedFor: null }),
  },
  {
    code: 'stereo-on-one-bus',
    fault: 'a stereo pack hears a mono mix',
    mended: 'the mix is stereo',
    break: (act) => act.set('mixes', 'Tam ears', { format: 'mono' }),
    mend: (act) => act.set('mixes', 'Tam ears', { format: 'stereo' }),
  },
  {
    code: 'stereo-to-one-side',
    fault: 'a stereo mix goes to one wedge',
    mended: 'it goes to two',
    break: (act) => act.set('mixes', 'Noor wedge', { format: 'stereo' }),
    mend: (act) => act.set('mixes', 'Noor wedge', { deviceCount: 2 }),
  },
  {
    code: 'stereo-buses-no-pair',
    fault: 'a stereo mix is on buses 2 and 3',
    mended: 'it is on 3 and 4',
    break: (act) =>
      act
        .add('decisions', { id: 'left', about: 'bus', mixId: 'Tam ears', busId: 'bus 2' })
        .add('decisions', { id: 'right', about: 'bus', mixId: 'Tam ears', busId: 'bus 3' }),
    mend: (act) =>
      act.set('decisions', 'left', { busId: 'bus 3' }).set('decisions', 'right', { busId: 'bus 4' }),
  },
  {
    code: 'device-kind-unknown',
    fault: 'nobody has said what the singer listens through',
    mended: 'it is a wedge',
    break: (act) => act.set('mixes', 'Noor wedge', { deviceKind: null }),
    mend: (act) => act.set('mixes', 'Noor wedge', { deviceKind: 'wedge' }),
  },
  {
    code: 'mix-without-listener',
    fault: 'a mix names no listener',
    mended: 'the singer shares it',
    break: (act) => act.add('mixes', { id: 'spare mix', deviceKind: 'wedge' }),
    mend: (act) => act.add('listeners', { mixId: 'spare mix', performerId: 'Noor' }),
  },
  {
    code: 'listeners-far-apart',
    fault: 'two who share one wedge stand 6 m apart',
    mended: 'the mix has two wedges',
    break: (act) =>
      act
        .add('performers', { id: 'Ines', xM: 6, yM: 2 })
        .add('listeners', { mixId: 'Noor wedge', performerId: 'Ines' }),
    mend: (act) => act.set('mixes', 'Noor wedge', { deviceCount: 2 }),
    says: '6 m apart',
  },

  // Outputs
  {
    code: 'mix-without-output',
    fault: 'the rig has two outputs for three',
    mended: 'the stereo mix becomes mono',
    break: (act) =>
      act.keepFirst('outputs', 2).setAll('cueOutputs', { outputId: null, secondOutputId: null }),
    mend: (act) => act.set('mixes', 'Tam ears', { format: 'mono' }),
    says: 'outputs needed 3, free for mixes 2',
  },
  {
    code: 'output-used-twice',
    fault: 'two mixes are decided onto one output',
    mended: 'one of them moves',
    break: (act) =>
      act
        .add('decisions', { id: 'one', about: 'output', mixId: 'Noor wedge', outputId: 'output 4' })
        .add('decisions', { id: 'other', about: 'output', mixId: 'Tam ears', outputId: 'output 4' }),
    mend: (act) => act.set('decisions', 'other', { outputId: 'output 5' }),
  },
  {
    code: 'output-is-reserved',
    fault: 'a mix is decided onto an output for the hall',
    mended: 'the output is free',
    break: (act) =>
      act
        .set('outputs', 'output 9', { reservedFor: 'main left' })
        .add('decisions', decision('output', { mixId: 'Noor wedge', outputId: 'output 9' })),
    mend: (act) => act.set('outputs', 'output 9', { reservedFor: null }),
  },
  {
    code: 'mix-on-a-record-feed',
    fault: 'a mix is decided onto a record feed',
    mended: 'it leaves at the box',
    break: (act) =>
      act
        .add('outputs', { id: 'record', place: 'record', number: 1, name: 'Record 1' })
        .add('decisions', decision('output', { mixId: 'Noor wedge', outputId: 'record' })),
    mend: (act) => act.set('decisions', 'decided output', { outputId: 'output 3' }),
  },
  {
    code: 'device-on-another-output',
    fault: 'the wedge is wired to another output than was decided',
    mended: 'the decision follows the wire',
    break: (act) =>
      act
        .set('devices', 'wedge 1', { outputId: 'output 6' })
        .add('decisions', decision('output', { mixId: 'Noor wedge', outputId: 'output 1' })),
    mend: (act) => act.set('decisions', 'decided output', { outputId: 'output 6' }),
  },
  {
    code: 'output-carries-the-cue',
    fault: 'a mix is decided onto the output of the cue wedge',
    mended: 'the cue wedge leaves elsewhere',
    break: (act) => act.add('decisions', decision('output', { mixId: 'Noor wedge', outputId: 'output 10' })),
    mend: (act) => act.set('cueOutputs', 'cue wedge', { outputId: 'output 9' }),
  },

  // Devices
  {
    code: 'too-few-devices',
    fault: 'a mix asks for three wedges, the house has two',
    mended: 'the band brings its own',
    break: (act) => act.set('mixes', 'Noor wedge', { deviceCount: 3 }),
    mend: (act) => act.set('mixes', 'Noor wedge', { ownDevice: true }),
    says: 'needed 3, in the house 2',
  },
  {
    code: 'device-used-twice',
    fault: 'one pack is decided for two mixes',
    mended: 'the second gets another one',
    break: (act) =>
      act
        .set('mixes', 'Noor wedge', { deviceKind: 'in-ear', format: 'stereo' })
        .add('decisions', { id: 'one', about: 'device', mixId: 'Noor wedge', deviceId: 'pack 1' })
        .add('decisions', { id: 'other', about: 'device', mixId: 'Tam ears', deviceId: 'pack 1' }),
    mend: (act) => act.set('decisions', 'other', { deviceId: 'pack 2' }),
  },
  {
    code: 'device-of-another-kind',
    fault: 'a wedge mix is given a pack',
    mended: 'it is given a wedge',
    break: (act) => act.add('decisions', decision('device', { mixId: 'Noor wedge', deviceId: 'pack 2' })),
    mend: (act) => act.set('decisions', 'decided device', { deviceId: 'wedge 2' }),
  },
  {
    code: 'device-is-reserved',
    fault: 'a pack kept as a spare is given out',
    mended: 'it is free',
    break: (act) =>
      act
        .set('devices', 'pack 2', { reservedFor: 'spare' })
        .add('decisions', decision('device', { mixId: 'Tam ears', deviceId: 'pack 2' })),
    mend: (act) => act.set('devices', 'pack 2', { reservedFor: null }),
  },
  {
    code: 'limiter-not-noted',
    fault: 'nobody has looked at the limiter of the pack',
    mended: 'it is in the receiver',
    break: (act) => act.set('devices', 'pack 1', { limiter: null }),
    mend: (act) => act.set('devices', 'pack 1', { limiter: 'in the receiver' }),
  },
  {
    code: 'no-limiter-in-the-receiver',
    fault: 'the pack relies on the limiter of the desk',
    mended: 'it is in the receiver',
    break: (act) => act.set('devices', 'pack 1', { limiter: 'on the desk only' }),
    mend: (act) => act.set('devices', 'pack 1', { limiter: 'in the receiver' }),
  },
  {
    code: 'frequency-used-twice',
    fault: 'the cue pack is on the frequency of a performer',
    mended: 'it is on its own',
    break: (act) => act.set('devices', 'engineer pack', { frequencyMhz: 823.1 }),
    mend: (act) => act.set('devices', 'engineer pack', { frequencyMhz: 824.7 }),
    says: '823.1 MHz',
  },
  {
    code: 'wireless-without-frequency',
    fault: 'a wireless vocal has no frequency noted',
    mended: 'it has one',
    break: (act) => act.set('sources', 'vocal', { pickUp: 'wireless' }),
    mend: (act) => act.set('sources', 'vocal', { frequencyMhz: 518.2 }),
  },

  // Cue
  {
    code: 'no-cue-output',
    fault: 'the rig has no cue output',
    mended: 'it has a cue wedge',
    break: (act) => act.remove('cueOutputs', 'cue pack', 'cue wedge'),
    mend: (act) => act.add('cueOutputs', { id: 'cue', kind: 'wedge' }),
  },
  {
    code: 'cue-of-the-other-kind',
    fault: 'an ear mix is heard on the cue wedge, as there is no cue pack',
    mended: 'there is one',
    break: (act) => act.remove('cueOutputs', 'cue pack'),
    mend: (act) => act.add('cueOutputs', { id: 'cue', kind: 'in-ear' }),
    says: 'Add a cue pack',
  },
  {
    code: 'cue-mono-for-stereo',
    fault: 'a stereo ear mix is heard on a mono cue pack',
    mended: 'the cue pack is stereo',
    break: (act) => act.set('cueOutputs', 'cue pack', { format: 'mono' }),
    mend: (act) => act.set('cueOutputs', 'cue pack', { format: 'stereo' }),
  },
  {
    code: 'cue-level-unknown',
    fault: 'nobody knows the power of the wedge',
    mended: 'it is entered',
    break: (act) => act.set('devices', 'wedge 1', { powerW: null }),
    mend: (act) => act.set('devices', 'wedge 1', { powerW: 200 }),
  },
  {
    code: 'cue-before-processing',
    fault: 'the cue is taken before the bus equaliser',
    mended: 'it is taken after',
    break: (act) => act.set('cueOutputs', 'cue pack', { takenFrom: 'before bus processing' }),
    mend: (act) => act.set('cueOutputs', 'cue pack', { takenFrom: 'after bus processing' }),
  },
  {
    code: 'cue-leaves-nowhere',
    fault: 'a stereo cue pack has one output',
    mended: 'it has two',
    break: (act) => act.set('cueOutputs', 'cue pack', { secondOutputId: null }),
    mend: (act) => act.set('cueOutputs', 'cue pack', { secondOutputId: 'output 12' }),
    says: 'right side',
  },
  {
    code: 'cue-outputs-collide',
    fault: 'both cues leave at one output',
    mended: 'each has its own',
    break: (act) => act.set('cueOutputs', 'cue wedge', { outputId: 'output 12' }),
    mend: (act) => act.set('cueOutputs', 'cue wedge', { outputId: 'output 10' }),
  },
  {
    code: 'cue-bus-carries-a-mix',
    fault: 'a mix is decided onto the bus that the cue takes',
    mended: 'the mix moves',
    break: (act) =>
      act
        .set('cueOutputs', 'cue wedge', { busId: 'bus 8' })
        .add('decisions', decision('bus', { mixId: 'Noor wedge', busId: 'bus 8' })),
    mend: (act) => act.set('decisions', 'decided bus', { busId: 'bus 2' }),
  },
  {
    code: 'cue-device-given-away',
    fault: 'the engineer’s wedge is given to the singer',
    mended: 'the singer gets a wedge of the house',
    break: (act) =>
      act.add('decisions', decision('device', { mixId: 'Noor wedge', deviceId: 'engineer wedge' })),
    mend: (act) => act.set('decisions', 'decided device', { deviceId: 'wedge 1' }),
  },
  {
    code: 'cue-device-missing',
    fault: 'the cue wedge has no device',
    mended: 'it has one',
    break: (act) => act.set('cueOutputs', 'cue wedge', { deviceId: null }),
    mend: (act) => act.set('cueOutputs', 'cue wedge', { deviceId: 'engineer wedge' }),
  },

  // Sockets
  {
    code: 'source-without-socket',
    fault: 'the stage has four sockets for five sources',
    mended: 'one source is not here',
    break: (act) => act.keepFirst('sockets', 4),
    mend: (act) => act.set('sources', 'room', { audience: 'not here' }),
    says: 'needed 5, free to use 4',
  },
  {
    code: 'socket-used-twice',
    fault: 'two sources are decided onto one socket',
    mended: 'one moves',
    break: (act) =>
      act
        .add('decisions', { id: 'one', about: 'socket', sourceId: 'vocal', socketId: 'socket 7' })
        .add('decisions', { id: 'other', about: 'socket', sourceId: 'spare', socketId: 'socket 7' }),
    mend: (act) => act.set('decisions', 'other', { socketId: 'socket 8' }),
    says: 'Socket A7',
  },
  {
    code: 'socket-is-reserved',
    fault: 'a source is decided onto a broken socket',
    mended: 'the socket is repaired',
    break: (act) =>
      act
        .set('sockets', 'socket 9', { reservedFor: 'broken' })
        .add('decisions', decision('socket', { sourceId: 'vocal', socketId: 'socket 9' })),
    mend: (act) => act.set('sockets', 'socket 9', { reservedFor: null }),
  },
  {
    code: 'cable-does-not-reach',
    fault: 'the vocal stands 20 m from the box',
    mended: 'it stands 5 m from it',
    break: (act) => act.set('sources', 'vocal', { xM: 20, yM: 4 }),
    mend: (act) => act.set('sources', 'vocal', { xM: 5 }),
    says: '20 m from box "A", and its cables reach 12 m',
  },
  {
    code: 'pair-sockets-apart',
    fault: 'the sides of the keys are decided apart',
    mended: 'they lie side by side',
    break: (act) =>
      act
        .add('decisions', { id: 'one', about: 'socket', sourceId: 'keys left', socketId: 'socket 7' })
        .add('decisions', { id: 'other', about: 'socket', sourceId: 'keys right', socketId: 'socket 9' }),
    mend: (act) => act.set('decisions', 'other', { socketId: 'socket 8' }),
  },
  {
    code: 'no-spare-vocal',
    fault: 'the lead vocal has no spare',
    mended: 'it has one',
    break: (act) => act.remove('sources', 'spare').remove('wishes', 'wish 2', 'wish 4'),
    mend: (act) => act.add('sources', { id: 'second', kind: 'spare vocal' }),
  },
  {
    code: 'spare-vocal-unlike-lead',
    fault: 'the spare is not in the wedge of the singer',
    mended: 'it is',
    break: (act) => act.remove('wishes', 'wish 2'),
    mend: (act) => act.add('wishes', { mixId: 'Noor wedge', sourceId: 'spare', amount: 'lots' }),
    says: 'a place in "Noor wedge"',
  },

  // Phantom
  {
    code: 'phantom-harms',
    fault: '48 V was decided on for a ribbon microphone',
    mended: 'it is decided off',
    break: (act) =>
      act
        .set('sources', 'vocal', { phantom: 'harmful' })
        .add('decisions', decision('phantom', { sourceId: 'vocal', on: true })),
    mend: (act) => act.set('decisions', 'decided phantom', { on: false }),
  },
  {
    code: 'phantom-missing',
    fault: '48 V was decided off for an active DI',
    mended: 'it is decided on',
    break: (act) => act.add('decisions', decision('phantom', { sourceId: 'keys left', on: false })),
    mend: (act) => act.set('decisions', 'decided phantom', { on: true }),
  },
  {
    code: 'phantom-bank-disagrees',
    fault: 'a ribbon and an active DI hang on one switch',
    mended: 'every socket has its own switch',
    break: (act) =>
      act
        .set('boxes', 'A', { phantomBankSize: 16 })
        .set('sources', 'vocal', { phantom: 'harmful' })
        .add('decisions', { id: 'one', about: 'socket', sourceId: 'vocal', socketId: 'socket 1' })
        .add('decisions', { id: 'other', about: 'socket', sourceId: 'keys left', socketId: 'socket 2' }),
    mend: (act) => act.set('boxes', 'A', { phantomBankSize: 1 }),
  },
  {
    code: 'phantom-decided-both-ways',
    fault: '48 V was decided on and off on one switch',
    mended: 'both say on',
    break: (act) =>
      act
        .set('boxes', 'A', { phantomBankSize: 16 })
        .add('decisions', { id: 'one', about: 'phantom', sourceId: 'vocal', on: false })
        .add('decisions', { id: 'other', about: 'phantom', sourceId: 'spare', on: true }),
    mend: (act) => act.set('decisions', 'one', { on: true }),
  },
  {
    code: 'phantom-not-said',
    fault: 'nobody has said whether the vocal needs 48 V',
    mended: 'it does not',
    break: (act) => act.set('sources', 'vocal', { phantom: 'not said' }),
    mend: (act) => act.set('sources', 'vocal', { phantom: 'not needed' }),
  },

  // Gain
  {
    code: 'no-gain-owner',
    fault: 'nobody is named who sets gains',
    mended: 'front of house sets them',
    break: (act) => act.rig({ gainOwner: null }),
    mend: (act) => act.rig({ gainOwner: 'front of house' }),
  },
  {
    code: 'gain-range-upside-down',
    fault: 'the lowest gain of the desk is above the highest',
    mended: 'both are given the right way round',
    break: (act) => act.rig({ gainMinDb: 60, gainMaxDb: 0 }),
    mend: (act) => act.rig({ gainMinDb: 0, gainMaxDb: 60 }),
    says: 'lowest gain of +60 dB and a highest of 0 dB',
  },
  {
    code: 'gain-out-of-range',
    fault: 'a dull microphone far off needs more gain than there is',
    mended: 'it stands nearer',
    break: (act) => act.set('sources', 'vocal', { sensitivityMvPerPa: 1, expectedDbSpl: 60 }),
    mend: (act) => act.set('sources', 'vocal', { expectedDbSpl: 94 }),
    says: 'more sensitive microphone',
  },
  {
    code: 'gain-far-from-needed',
    fault: 'the gain stands 30 dB from what was expected',
    mended: 'it stands near it',
    break: (act) => act.set('sources', 'keys left', { expectedDbu: -20, gainDb: 50 }),
    mend: (act) => act.set('sources', 'keys left', { gainDb: 22 }),
    says: 'about +20 dB',
  },
  {
    code: 'gain-moved',
    fault: 'FOH moved the gain of the vocal by +4 dB',
    mended: 'the trims were set again',
    break: (act) => act.set('sources', 'vocal', { gainDb: 34, trimmedAtGainDb: 30 }),
    mend: (act) => act.set('sources', 'vocal', { trimmedAtGainDb: 34 }),
    says: 'the copy for monitors to -4 dB',
  },
  {
    code: 'trim-out-of-range',
    fault: 'FOH moved the gain by +25 dB, and the trim ends at -18 dB',
    mended: 'the gain moved by +15 dB',
    break: (act) => act.set('sources', 'vocal', { gainDb: 45, trimmedAtGainDb: 20 }),
    mend: (act) => act.set('sources', 'vocal', { gainDb: 35 }),
    says: 'it stays 7 dB too loud',
  },

  // Effects and returns
  {
    code: 'signal-in-a-circle',
    fault: 'a reverb feeds itself',
    mended: 'the vocal feeds it',
    break: (act) =>
      act
        .add('sources', { id: 'reverb', kind: 'effect return' })
        .add(
          'decisions',
          decision('effect send', { sourceId: 'reverb', returnSourceId: 'reverb', purpose: 'foh' }),
        ),
    mend: (act) => act.set('decisions', 'decided effect send', { sourceId: 'vocal' }),
  },
  {
    code: 'effect-fed-by-nothing',
    fault: 'a reverb comes back, but nothing feeds it',
    mended: 'the vocal feeds it',
    break: (act) => act.add('sources', { id: 'reverb', kind: 'effect return' }),
    mend: (act) =>
      act.add(
        'decisions',
        decision('effect send', { sourceId: 'vocal', returnSourceId: 'reverb', purpose: 'foh' }),
      ),
  },
  {
    code: 'foh-effect-in-a-mix',
    fault: 'the wedge hears the reverb of the hall',
    mended: 'the reverb is fed from the copy for monitors',
    break: (act) =>
      act
        .add('sources', { id: 'reverb', kind: 'effect return' })
        .add('wishes', { mixId: 'Noor wedge', sourceId: 'reverb', amount: 'little' })
        .add(
          'decisions',
          decision('effect send', { sourceId: 'vocal', returnSourceId: 'reverb', purpose: 'foh' }),
        ),
    mend: (act) => act.set('decisions', 'decided effect send', { purpose: 'monitors' }),
  },
  {
    code: 'monitor-effect-at-front-of-house',
    fault: 'the hall hears the reverb of the stage',
    mended: 'it is for the monitors only',
    break: (act) =>
      act
        .add('sources', { id: 'reverb', kind: 'effect return' })
        .add(
          'decisions',
          decision('effect send', { sourceId: 'vocal', returnSourceId: 'reverb', purpose: 'monitors' }),
        ),
    mend: (act) => act.set('sources', 'reverb', { audience: 'monitors only' }),
  },
  {
    code: 'effect-send-without-copy',
    fault: 'a reverb is fed from a copy that nobody made',
    mended: 'it is made',
    break: (act) =>
      act
        .add('sources', { id: 'reverb', kind: 'effect return', audience: 'monitors only' })
        .add(
          'decisions',
          decision('effect send', { sourceId: 'vocal', returnSourceId: 'reverb', purpose: 'in-ears' }),
        ),
    mend: (act) => act.add('copies', { sourceId: 'vocal', purpose: 'in-ears' }),
  },

  // Alternates
  {
    code: 'not-on-own-line',
    fault: 'the vocal is on its spare line',
    mended: 'it is back',
    break: (act) =>
      act.add('alternates', {
        id: 'other',
        sourceId: 'vocal',
        kind: 'spare line',
        socketId: 'socket 16',
        inUse: true,
      }),
    mend: (act) => act.set('alternates', 'other', { inUse: false }),
  },
  {
    code: 'recording-during-the-show',
    fault: 'the act is on stage while the vocal plays from a recording',
    mended: 'it is back on its own line',
    break: (act) =>
      act
        .act({ state: 'on stage' })
        .add('alternates', { id: 'track', sourceId: 'vocal', kind: 'recorded track', inUse: true }),
    mend: (act) => act.set('alternates', 'track', { inUse: false }),
  },
  {
    code: 'spare-line-plugged-nowhere',
    fault: 'the spare line has no socket',
    mended: 'it has one',
    break: (act) => act.add('alternates', { id: 'other', sourceId: 'vocal', kind: 'spare line' }),
    mend: (act) => act.set('alternates', 'other', { socketId: 'socket 16' }),
  },
  {
    code: 'spare-line-shares-a-socket',
    fault: 'the spare line was given the socket of the keys',
    mended: 'it has one of its own',
    break: (act) =>
      act
        .add('decisions', decision('socket', { sourceId: 'keys left', socketId: 'socket 5' }))
        .add('alternates', { id: 'other', sourceId: 'vocal', kind: 'spare line', socketId: 'socket 5' }),
    mend: (act) => act.set('alternates', 'other', { socketId: 'socket 16' }),
  },
  {
    code: 'pair-on-different-feeds',
    fault: 'one side of the keys plays from a recording',
    mended: 'both do',
    break: (act) => act.add('alternates', { sourceId: 'keys left', kind: 'recorded track', inUse: true }),
    mend: (act) => act.add('alternates', { sourceId: 'keys right', kind: 'recorded track', inUse: true }),
  },
  {
    code: 'two-alternates-at-once',
    fault: 'the vocal is on two alternates',
    mended: 'it is on one',
    break: (act) =>
      act
        .add('alternates', { id: 'track', sourceId: 'vocal', kind: 'recorded track', inUse: true })
        .add('alternates', { id: 'desk', sourceId: 'vocal', kind: 'second desk', inUse: true }),
    mend: (act) => act.set('alternates', 'desk', { inUse: false }),
  },

  // Other desks, guests, talk
  {
    code: 'mix-made-elsewhere',
    fault: 'the band mixes the ears itself',
    mended: 'this desk mixes them',
    break: (act) => act.set('mixes', 'Tam ears', { mixedAt: 'elsewhere' }),
    mend: (act) => act.set('mixes', 'Tam ears', { mixedAt: 'house desk' }),
  },
  {
    code: 'split-not-settled',
    fault: 'the band mixes the ears itself, and nobody brings a splitter',
    mended: 'the band brings it',
    break: (act) => act.set('mixes', 'Tam ears', { mixedAt: 'elsewhere' }),
    mend: (act) => act.act({ splitBy: 'band' }),
    says: 'lines: 5',
  },
  {
    code: 'split-phantom-not-settled',
    fault: 'nobody has said who gives 48 V on the split',
    mended: 'the house gives it',
    break: (act) => act.set('mixes', 'Tam ears', { mixedAt: 'elsewhere' }),
    mend: (act) => act.act({ splitPhantomBy: 'house' }),
  },
  {
    code: 'split-phantom-from-both',
    fault: 'the band gives 48 V on the split, and this desk too',
    mended: 'the house gives it',
    break: (act) => act.set('mixes', 'Tam ears', { mixedAt: 'elsewhere' }).act({ splitPhantomBy: 'band' }),
    mend: (act) => act.act({ splitPhantomBy: 'house' }),
  },
  {
    code: 'guest-file-not-mapped',
    fault: 'a guest brings a file that nobody has looked at',
    mended: 'it was mapped',
    break: (act) => act.act({ ownDeskFile: true }),
    mend: (act) => act.act({ deskFileMapped: true }),
  },
  {
    code: 'talkback-reaches-nobody',
    fault: 'the talk microphone is in no mix',
    mended: 'the ears have it',
    break: (act) => act.add('sources', { id: 'talk', kind: 'talkback', audience: 'monitors only' }),
    mend: (act) => act.add('wishes', { mixId: 'Tam ears', sourceId: 'talk', amount: 'some' }),
  },
  {
    code: 'talkback-at-front-of-house',
    fault: 'the talk microphone has a channel for the hall',
    mended: 'it is for the monitors only',
    break: (act) => act.add('sources', { id: 'talk', kind: 'talkback' }),
    mend: (act) => act.set('sources', 'talk', { audience: 'monitors only' }),
  },
  {
    code: 'engineer-cannot-talk',
    fault: 'the rig has no talk microphone for the mix under check',
    mended: 'it has one',
    break: (act) => act.rig({ talkToCheckedMix: false }),
    mend: (act) => act.rig({ talkToCheckedMix: true }),
  },

  // Stage
  {
    code: 'wedge-off-the-null',
    fault: 'the wedge stands beside a cardioid, not behind it',
    mended: 'the microphone is turned away from it',
    break: (act) => act.set('sources', 'vocal', { pattern: 'cardioid', aimDeg: 90, xM: 0, yM: 2 }),
    mend: (act) => act.set('sources', 'vocal', { aimDeg: 0 }),
    says: '90 degrees off the front',
  },
  {
    code: 'many-open-microphones',
    fault: 'the wedge holds four open microphones',
    mended: 'it holds three',
    break: (act) =>
      act
        .add(
          'sources',
          { id: 'second voice', kind: 'backing vocal' },
          { id: 'third voice', kind: 'backing vocal' },
        )
        .add('wishes', { id: 'second', mixId: 'Noor wedge', sourceId: 'second voice', amount: 'some' })
        .add('wishes', { id: 'third', mixId: 'Noor wedge', sourceId: 'third voice', amount: 'some' }),
    mend: (act) => act.remove('wishes', 'third'),
    says: 'costs 6 dB',
  },
  {
    code: 'late-in-the-ears',
    fault: 'the singer hears their own voice 9 ms late in-ear',
    mended: 'the desk is faster',
    break: (act) =>
      act.rig({ deskLatencyMs: 9 }).set('mixes', 'Noor wedge', { deviceKind: 'in-ear', format: 'stereo' }),
    mend: (act) => act.rig({ deskLatencyMs: 2 }),
    says: '9 ms late',
  },
  {
    code: 'place-unknown',
    fault: 'nobody knows where the wedge stands',
    mended: 'it is on the plot',
    break: (act) => act.set('mixes', 'Noor wedge', { xM: null, yM: null }),
    mend: (act) => act.set('mixes', 'Noor wedge', { xM: 0, yM: 1 }),
  },
  {
    code: 'side-and-plot-disagree',
    fault: 'the singer is said to be at DSR and drawn at stage left',
    mended: 'the words are corrected',
    break: (act) => act.set('performers', 'Noor', { place: 'DSR', xM: 3 }),
    mend: (act) => act.set('performers', 'Noor', { place: 'DSL' }),
  },

  // Riders, names, times
  {
    code: 'rider-has-expired',
    fault: 'the rider holds until the day before',
    mended: 'a current one says otherwise',
    break: (act) =>
      act
        .day({ date: '2027-06-12' })
        .add('riders', { id: 'rider', grid: emptyGrid, validUntil: '2027-06-11' }),
    mend: (act) => act.set('riders', 'rider', { validUntil: '2027-06-12' }),
  },
  {
    code: 'rider-is-old',
    fault: 'the rider was written two years before the day',
    mended: 'it is of this year',
    break: (act) =>
      act
        .day({ date: '2027-06-12' })
        .add('riders', { id: 'rider', grid: emptyGrid, writtenOn: '2025-06-01' }),
    mend: (act) => act.set('riders', 'rider', { writtenOn: '2027-01-20' }),
    says: '24 months',
  },
  {
    code: 'rider-line-twice',
    fault: 'the rider gives one number to two sources',
    mended: 'each has its own',
    break: (act) => act.set('sources', 'vocal', { riderLine: 7 }).set('sources', 'spare', { riderLine: 7 }),
    mend: (act) => act.set('sources', 'spare', { riderLine: 8 }),
  },
  {
    code: 'same-name-twice',
    fault: 'two sources are called "Vox"',
    mended: 'one is renamed',
    break: (act) => act.set('sources', 'vocal', { name: 'Vox' }).set('sources', 'spare', { name: 'vox ' }),
    mend: (act) => act.set('sources', 'spare', { name: 'Vox spare' }),
  },
  {
    code: 'act-ends-before-it-starts',
    fault: 'the act ends before it starts',
    mended: 'its end is past midnight',
    break: (act) => act.act({ startMinute: 1410, endMinute: 30 }),
    mend: (act) => act.act({ endMinute: 1470 }),
  },
  {
    code: 'nothing-to-plan',
    fault: 'the act has no mix yet',
    mended: 'it has one',
    break: (act) =>
      act.remove('mixes', 'Noor wedge', 'Tam ears').keepFirst('listeners', 0).keepFirst('wishes', 0),
    mend: (act) => act.add('mixes', { id: 'mix', deviceKind: 'wedge' }),
  },

  // References
  {
    code: 'names-what-is-not-there',
    fault: 'a wish names a source that is gone',
    mended: 'the wish is removed',
    break: (act) =>
      act.add('wishes', { id: 'lost', mixId: 'Tam ears', sourceId: 'theremin', amount: 'some' }),
    mend: (act) => act.remove('wishes', 'lost'),
    says: 'theremin',
  },
  {
    code: 'pair-not-mutual',
    fault: 'a pair names a side that does not name it back',
    mended: 'it does',
    break: (act) => act.set('sources', 'keys right', { pairSourceId: null }),
    mend: (act) => act.set('sources', 'keys right', { pairSourceId: 'keys left' }),
  },
];

const emptyGrid = { name: 'rider.csv', form: 'csv', sheets: [] };
