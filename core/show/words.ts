import { z } from 'zod';

/**
 * The closed lists of the trade that the whole program uses. One place, so that a screen, a table in the
 * database and a rule never disagree about what there is.
 */

/** What a channel of a source is for. `parallel` is a second FOH channel and never feeds a mix by itself. */
export const purposes = ['foh', 'monitors', 'wedges', 'in-ears', 'parallel'] as const;
export const Purpose = z.enum(purposes);
export type Purpose = z.infer<typeof Purpose>;

/** How a source is picked up. `line` is a line-level feed without a DI, `wireless` a receiver at the stage. */
export const pickUps = ['mic', 'di', 'line', 'wireless'] as const;
export const PickUp = z.enum(pickUps);
export type PickUp = z.infer<typeof PickUp>;

/** What a source asks of the 48 V switch of its socket. No mark in a rider is `not said`, never `not needed`. */
export const phantomNeeds = ['needed', 'not needed', 'harmful', 'not said'] as const;
export const PhantomNeed = z.enum(phantomNeeds);
export type PhantomNeed = z.infer<typeof PhantomNeed>;

/** Where a source is to be heard. */
export const audiences = [
  'front of house and monitors',
  'monitors only',
  'front of house only',
  'not here',
] as const;
export const Audience = z.enum(audiences);
export type Audience = z.infer<typeof Audience>;

/** Devices a performer listens through. */
export const deviceKinds = ['wedge', 'side fill', 'drum fill', 'front fill', 'in-ear'] as const;
export const DeviceKind = z.enum(deviceKinds);
export type DeviceKind = z.infer<typeof DeviceKind>;

export const formats = ['mono', 'stereo'] as const;
export const Format = z.enum(formats);
export type Format = z.infer<typeof Format>;

/** Amounts that a wish can ask for in a word; a number of dB is the other way to ask. */
export const amounts = ['none', 'little', 'some', 'lots', 'only'] as const;
export const Amount = z.enum(amounts);
export type Amount = z.infer<typeof Amount>;

/** Where a send is taken from a channel. */
export const taps = ['pre-fader', 'post-fader'] as const;
export const Tap = z.enum(taps);
export type Tap = z.infer<typeof Tap>;

/** Who sets the preamp gain that all copies of a source share; the other desk side works with trim only. */
export const gainOwners = ['front of house', 'monitors'] as const;
export const GainOwner = z.enum(gainOwners);
export type GainOwner = z.infer<typeof GainOwner>;

/** Directional patterns of a microphone, of first order. */
export const micPatterns = [
  'omnidirectional',
  'subcardioid',
  'cardioid',
  'supercardioid',
  'hypercardioid',
  'figure-8',
] as const;
export const MicPattern = z.enum(micPatterns);
export type MicPattern = z.infer<typeof MicPattern>;

/** A second feed of a source, to be heard in its place: what it is. */
export const alternateKinds = ['recorded track', 'spare line', 'second desk'] as const;
export const AlternateKind = z.enum(alternateKinds);
export type AlternateKind = z.infer<typeof AlternateKind>;

/** Where the limiter of an ear path sits. One on the desk is no substitute: radio noise comes after it. */
export const limiterPlaces = ['in the receiver', 'on the desk only', 'none'] as const;
export const LimiterPlace = z.enum(limiterPlaces);
export type LimiterPlace = z.infer<typeof LimiterPlace>;

/** Where an output leaves the rig. */
export const outputPlaces = ['desk', 'stage box', 'network', 'record'] as const;
export const OutputPlace = z.enum(outputPlaces);
export type OutputPlace = z.infer<typeof OutputPlace>;

/** How far an act has come on its way to the stage and off it. */
export const actStates = ['advancing', 'ready', 'next', 'on stage', 'done'] as const;
export const ActState = z.enum(actStates);
export type ActState = z.infer<typeof ActState>;

/** How serious a finding is. */
export const severities = ['must fix', 'look again', 'know this'] as const;
export const Severity = z.enum(severities);
export type Severity = z.infer<typeof Severity>;
