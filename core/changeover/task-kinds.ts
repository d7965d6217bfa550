/**
 * What a changeover is made of, and how long each thing takes. `hands` are people of the crew, `desk` is the
 * engineer at the desk, of whom there is one. Seconds are multiples of five. Basis: `practice` is a published or
 * commonly told figure (5 to 15 s a line for a line check, 15 to 30 s a mix for the first round of wishes), the
 * rest is ours and to be corrected by a crew's own watch. The last steps to the place are part of each figure, a
 * longer way is not: see `stepsInTaskM`.
 */
export const taskKinds = {
  mute: { seconds: 5, hands: 0, desk: 1, basis: 'ours' },
  'phantom off': { seconds: 5, hands: 0, desk: 1, basis: 'ours' },
  recall: { seconds: 10, hands: 0, desk: 1, basis: 'ours' },
  'roll off': { seconds: 60, hands: 2, desk: 0, basis: 'ours' },
  'roll on': { seconds: 60, hands: 2, desk: 0, basis: 'ours' },
  strike: { seconds: 10, hands: 1, desk: 0, basis: 'ours' },
  unplug: { seconds: 10, hands: 1, desk: 0, basis: 'ours' },
  plug: { seconds: 20, hands: 1, desk: 0, basis: 'ours' },
  'swap microphone': { seconds: 20, hands: 1, desk: 0, basis: 'ours' },
  'set stand': { seconds: 15, hands: 1, desk: 0, basis: 'ours' },
  'clear wedge': { seconds: 15, hands: 1, desk: 0, basis: 'ours' },
  'set wedge': { seconds: 25, hands: 1, desk: 0, basis: 'ours' },
  'take back pack': { seconds: 15, hands: 1, desk: 0, basis: 'ours' },
  'hand out pack': { seconds: 20, hands: 1, desk: 0, basis: 'ours' },
  'phantom on': { seconds: 5, hands: 0, desk: 1, basis: 'ours' },
  'line check': { seconds: 10, hands: 0, desk: 1, basis: 'practice' },
  'quick check': { seconds: 5, hands: 0, desk: 1, basis: 'practice' },
  'monitor check': { seconds: 20, hands: 0, desk: 1, basis: 'practice' },
  unmute: { seconds: 5, hands: 0, desk: 1, basis: 'ours' },
} as const satisfies Record<string, TaskFacts>;

type TaskFacts = { seconds: number; hands: 0 | 1 | 2; desk: 0 | 1; basis: 'practice' | 'ours' };

export type TaskKind = keyof typeof taskKinds;

/** Slot of the timetable. */
export const slotSeconds = 5;

/**
 * How fast somebody walks over a stage that is full of cables: the usual figure for walking with care, a little
 * under the 1.4 m/s of a free pavement. Common practice.
 */
export const walkingMetresPerSecond = 1.2;

/** Metres to a task that are part of its own seconds; what is further is added as a way. Ours. */
export const stepsInTaskM = 3;

/** Further than this, a stand or a wedge has been moved. */
export const movedMetres = 0.5;

/**
 * The order of things that keeps ears and equipment safe, told beside the task. Common practice; 48 V on a line
 * that is being plugged can damage ribbon microphones and unbalanced outputs, and bangs in every open mix.
 */
export const cautions: Partial<Record<TaskKind, string>> = {
  mute: 'Nothing is unplugged, plugged or recalled before all outputs are muted.',
  'phantom off':
    'Switch 48 V off with outputs muted, and wait until it has drained, before a line is touched.',
  'phantom on': 'Switch 48 V on with outputs muted, and only on lines that ask for it.',
  'roll off': 'Riser work goes by the stage manager’s word; mains and earth stay with licensed people.',
  'roll on': 'Riser work goes by the stage manager’s word; mains and earth stay with licensed people.',
  recall: 'A recall can open sends: look at what gets louder before it goes out.',
  unmute: 'Open one mix at a time and slowly. A level that was right for one act can hurt in the next.',
};
