import type { MicPattern } from '../../core/show/words.ts';
import { count } from './count.ts';

const metres = (m: number) => `${Math.abs(m).toFixed(2).replace(/0$/, '')} m`;

/** Where something stands, in words: "1.5 m stage left, 2.0 m upstage". */
function place(xM: number, yM: number): string {
  const side = xM === 0 ? 'on the centre line' : `${metres(xM)} stage ${xM > 0 ? 'left' : 'right'}`;
  return yM < 0 ? `${side}, ${metres(yM)} in front of the stage` : `${side}, ${metres(yM)} upstage`;
}

/** Where something points, in words. */
function aim(aimDeg: number): string {
  const turn = ((aimDeg % 360) + 360) % 360;
  const names = [
    'upstage',
    'upstage left',
    'stage left',
    'downstage left',
    'at the audience',
    'downstage right',
    'stage right',
    'upstage right',
  ];
  return `points ${names[Math.round(turn / 45) % 8]}`;
}

/** More letters than this hide what stands beside them. */
const longestNumbers = 8;

function linesLabel(numbers: string, n: number): string {
  return numbers.length <= longestNumbers ? numbers : count(n, 'line');
}

export const englishStage = {
  empty: 'There is no act to draw.',
  emptyTodo: 'Bring in a rider first.',
  tools: 'Tools of the stage',
  views: { engineer: 'Engineer’s view', audience: 'Audience’s view' },
  seen: {
    engineer: 'Seen from upstage, the audience ahead.',
    audience: 'Seen from the audience, the stage ahead.',
  },
  snap: 'Snap',
  snapNote: 'To 25 cm and in line with others; hold Alt or Ctrl while dragging to move freely',
  along: 'Take along',
  alongNote: 'A performer who moves takes along their lines and their own wedge',
  patterns: 'Patterns',
  reach: 'Reach',
  reachNote: 'How far the cables of each box reach',
  mirror: 'Mirror',
  mirrorNote: 'The chosen things to the other side of the centre line',
  nearer: 'Nearer',
  farther: 'Farther',
  fit: 'All',
  fitNote: 'The whole stage. Ctrl and the wheel, or two fingers, go nearer and farther.',
  paper: 'Stage plot on paper',
  paperNote: 'The stage plot in print size on Paper',

  drawing: (act: string, view: string) =>
    `Stage of ${act}, drawn to scale. ${view} Arrow keys go from thing to thing, Space chooses; arrow keys then move what is chosen.`,
  audience: 'audience',
  stageLeft: 'stage left',
  stageRight: 'stage right',
  upstage: 'upstage',
  centre: 'centre line',
  measure: (widthM: number, depthM: number) => `${widthM} m wide, ${depthM} m deep. A square is 1 m.`,
  at: place,
  aim,
  noPlace: 'without a place',
  metres: (m: number) => metres(m),
  degrees: (n: number) => `${Math.round(n)}°`,

  kinds: {
    performer: 'Performer',
    source: 'Line',
    wedge: 'Wedge or fill',
    box: 'Stage box',
    cue: 'Cue position',
  },
  kindsMany: {
    performer: 'Performers',
    source: 'Lines',
    wedge: 'Wedges and fills',
    box: 'Stage boxes',
    cue: 'Cue position',
  },
  boxName: (name: string) => `Box ${name}`,
  cueName: 'Cue position',
  cueLabel: 'cue',
  lineName: (number: number, name: string) => `${number} ${name}`,
  wedgeName: (label: string, kind: string, who: string) => `${label} ${kind}, ${who}`,
  wedgeLabel: (number: number, times: number) => `M${number}${times > 1 ? ` ×${times}` : ''}`,
  /** The numbers of lines at one spot, where they are few enough to be written. */
  linesLabel,
  /** The beginning of what a mark is called when it is read out; what is written on it is in it. */
  performerMark: (name: string) => `Performer ${name}`,
  lineMark: (name: string) => `Line ${name}`,
  linesMark: (numbers: string, n: number, names: string) => {
    const label = linesLabel(numbers, n);
    return `${label === numbers ? 'Lines ' : ''}${label} (${names})`;
  },
  things: (n: number) => count(n, 'thing'),
  mark: (what: string, where: string, more: readonly (string | null)[], findings: number) =>
    [`${what}: ${where}`, ...more, findings === 0 ? null : count(findings, 'finding')]
      .filter((it) => it !== null)
      .join(', '),
  outOfReach: 'out of reach',
  isAt: (what: string, where: string) => `${what}: ${where}`,
  turnHandle: 'Turn',

  did: {
    move: (what: string) => `Move ${what}`,
    mirror: (what: string) => `Mirror ${what}`,
    turn: (what: string) => `Turn ${what}`,
    place: (what: string) => `Place ${what}`,
    takeOff: (what: string) => `Take off the plot: ${what}`,
    pattern: (what: string) => `Pattern of ${what}`,
  },

  panel: 'Numbers of the stage',
  nothingChosen: 'Choose something on the drawing or in this list.',
  stage: 'Stage',
  width: 'Width, m',
  depth: 'Depth, m',
  unplaced: 'Without a place yet',
  allPlaced: 'Everything has its place.',
  putOn: (what: string) => `Put on the plot: ${what}`,
  putOnShort: 'Put on',
  onThePlot: 'On the plot',
  back: 'Back to the list',
  chosen: (n: number) => `${count(n, 'thing')} chosen`,
  fields: {
    xM: 'Across, m',
    yM: 'Upstage, m',
    aimDeg: 'Aim, °',
    tiltDeg: 'Tilt, °',
    heightM: 'Height, m',
    riser: 'Riser',
    place: 'Place in words',
    reachM: 'Reach, m',
    pattern: 'Pattern',
    shiftX: 'Shift across, m',
    shiftY: 'Shift upstage, m',
  },
  acrossNote:
    'Across: plus is stage left, minus is stage right. Aim: 0 upstage, 90 stage left, 180 at the audience.',
  standsWith: (who: string) => `stands with ${who}`,
  ofHouse: 'It belongs to the house: it stands there for every act.',
  patternNames: {
    omnidirectional: 'omnidirectional',
    subcardioid: 'subcardioid',
    cardioid: 'cardioid',
    supercardioid: 'supercardioid',
    hypercardioid: 'hypercardioid',
    'figure-8': 'figure of eight',
  } satisfies Record<MicPattern, string>,
  notSaid: 'not said',
  patternNote: 'The curve is how much it picks up from each side by the textbook formula, not how far.',
  turnBy: (deg: number) => `${deg > 0 ? '+' : '−'}${Math.abs(deg)}°`,
  turnByLabel: (deg: number) => `Turn by ${Math.abs(deg)}° ${deg > 0 ? 'clockwise' : 'anticlockwise'}`,
  aimAtListener: (who: string) => `Aim at ${who}`,
  takeOff: 'Take off the plot',
  findings: 'Findings',

  hearing: {
    ofWedge: 'What open microphones near it take of it',
    ofLine: 'What it takes of wedges near it',
    microphone: 'Microphone',
    wedge: 'Wedge',
    far: 'm',
    off: 'off front',
    rejects: 'rejects',
    rejection: (db: string) => `${db} dB`,
    unknown: 'pattern or aim not said',
    inNull: 'null',
    none: (withinM: number) => `No open microphone within ${withinM} m.`,
    noneOfWedges: (withinM: number) => `No wedge or fill within ${withinM} m.`,
    countOn: (db: string) => `Never count on more than ${db} dB of it.`,
    manyOpen: (n: number, db: string) =>
      `${n} open microphones near it cost ${db} dB of gain before feedback against one.`,
    assumed:
      'Reckoned from places on the plot and the textbook pattern, both as points in the open, the wedge on the floor, a height or tilt nobody said as level.',
    estimate: 'An estimate, never a clearance.',
  },

  cue: {
    onPlot: (m: string) => `${m} from the middle of the stage, by the drawing.`,
    measured: (m: string) => `Rig says ${m} as measured: that counts for the delay of the cue wedge.`,
    counts: 'This counts for the delay of the cue wedge, as Rig has no measured distance.',
    noPlace: 'Put it on the plot, and its distance gives the delay of the cue wedge.',
  },

  boxReach: {
    lines: 'Lines plugged here',
    none: 'No line of this act is plugged here.',
    line: 'Line',
    far: 'm',
    within: 'reaches',
    beyond: 'too far',
    unknown: 'no reach said',
    noPlace: 'no place',
    straight: 'Straight over the floor. A cable that is laid safely takes a longer way.',
  },
};
