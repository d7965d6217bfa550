import type { ReadInput, Reading, ReadMix, ReadWish } from '../../core/rider/reading.ts';

/** Parts of a reading with everything left open that a test does not name. */
export const readInput = (key: string, more: Partial<ReadInput> = {}): ReadInput => ({
  key,
  lines: [],
  channel: 1,
  name: key,
  kind: 'other',
  kindConfidence: 1,
  pairKey: null,
  side: null,
  pickUp: null,
  pickUpModel: '',
  alternatives: [],
  phantom: 'not said',
  stand: '',
  position: '',
  performer: null,
  broughtBy: null,
  optional: false,
  audience: 'front of house and monitors',
  notes: '',
  ...more,
});

export const readMix = (key: string, wishes: ReadWish[], more: Partial<ReadMix> = {}): ReadMix => ({
  key,
  lines: [],
  number: 1,
  label: key,
  listeners: [],
  deviceKind: null,
  format: null,
  deviceCount: 1,
  ownDevice: null,
  mixedAt: 'house desk',
  place: '',
  wishes,
  notes: '',
  ...more,
});

export const readWish = (target: ReadWish['target'], more: Partial<ReadWish> = {}): ReadWish => ({
  words: '',
  target,
  amount: null,
  levelDb: null,
  ...more,
});

export const readingWith = (parts: Partial<Reading>): Reading => ({
  actName: null,
  inputs: [],
  performers: [],
  mixes: [],
  notes: [],
  lines: [],
  questions: [],
  ...parts,
});
