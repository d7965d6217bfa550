import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';

type ActPlan = { name: string; lines: number; mixes: number };

const lineNames = [
  'Kick in',
  'Kick out',
  'Snare top',
  'Snare bottom',
  'Hi-hat',
  'Rack tom',
  'Floor tom',
  'Overhead L',
  'Overhead R',
  'Bass DI',
  'Guitar stage left',
  'Keys L',
  'Keys R',
  'Trumpet in B♭',
  'Tuba in F♯',
  'Žofie Łukasz vocal',
  'Drüber Größe Mikrofon',
] as const;

const upTo = (count: number) => Array.from({ length: count }, (_, at) => at);

/**
 * A day on a house rig of four boxes with 24 sockets each, made large or small. Every line has a name of its own, so
 * that a test can look for each on paper.
 */
export function paperShow(acts: readonly ActPlan[]): Show {
  const rows = acts.map(actRows);
  return showFromRows(
    ShowDocument.parse({
      format: 'foldbook-show',
      version: 1,
      rigs: [{ id: 'rig', name: 'Meadow stage', channelCount: 192, gainOwner: 'monitors' }],
      boxes: upTo(4).map((at) => ({
        id: `box-${at}`,
        rigId: 'rig',
        order: at,
        name: 'ABCD'[at],
        xM: at * 3 - 4.5,
        yM: 6,
      })),
      sockets: upTo(96).map((at) => ({
        id: `socket-${at}`,
        boxId: `box-${Math.floor(at / 24)}`,
        number: (at % 24) + 1,
      })),
      buses: upTo(40).map((at) => ({ id: `bus-${at}`, rigId: 'rig', number: at + 1 })),
      outputs: upTo(24).map((at) => ({
        id: `out-${at}`,
        rigId: 'rig',
        place: 'desk',
        number: at + 1,
        name: `Desk out ${at + 1}`,
      })),
      devices: upTo(12).map((at) => ({
        id: `wedge-${at}`,
        rigId: 'rig',
        order: at,
        name: `Wedge ${at + 1}`,
        kind: 'wedge',
        format: 'mono',
        sensitivityDbSpl: 98,
        powerW: 250,
        listeningDistanceM: 1.8,
        outputId: `out-${at}`,
      })),
      cueOutputs: [
        { id: 'cue', rigId: 'rig', name: 'Cue wedge', kind: 'wedge', format: 'mono', outputId: 'out-23' },
      ],
      stockItems: [{ id: 'stock-wedges', rigId: 'rig', kind: 'wedge', count: 4 }],
      days: [{ id: 'day', rigId: 'rig', name: 'Saturday', date: '2027-06-12' }],
      ...mergedRows(rows),
    }),
  );
}

type ActRows = ReturnType<typeof actRows>;

function mergedRows(rows: readonly ActRows[]) {
  return {
    acts: rows.map(({ act }) => act),
    performers: rows.flatMap(({ performers }) => performers),
    sources: rows.flatMap(({ sources }) => sources),
    mixes: rows.flatMap(({ mixes }) => mixes),
    listeners: rows.flatMap(({ listeners }) => listeners),
    wishes: rows.flatMap(({ wishes }) => wishes),
  };
}

function actRows({ name, lines, mixes }: ActPlan, order: number) {
  const id = `act-${order}`;
  const people = upTo(Math.max(mixes, 1));
  return {
    act: { id, dayId: 'day', order, name, startMinute: 720 + order * 45, endMinute: 750 + order * 45 },
    performers: people.map((at) => ({
      id: `${id}-player-${at}`,
      actId: id,
      order: at,
      name: `Player ${at + 1}`,
      xM: ((at * 2.3) % 10) - 5,
      yM: 1.5 + Math.floor(at / 5) * 2,
    })),
    sources: upTo(lines).map((at) => ({
      id: `${id}-source-${at}`,
      actId: id,
      order: at,
      riderLine: at + 1,
      name: `${lineNames[at % lineNames.length]} ${at + 1}`,
      pickUp: at % 3 === 0 ? 'di' : 'mic',
      pickUpModel: at % 3 === 0 ? 'active DI' : 'dynamic vocal mic',
      phantom: at % 3 === 0 ? 'needed' : 'not needed',
      stand: at % 3 === 0 ? '' : 'tall boom',
      performerId: `${id}-player-${at % people.length}`,
      place: 'downstage middle',
      xM: ((at * 1.7) % 10) - 5,
      yM: 1 + (at % 5),
      expectedDbSpl: at % 3 === 0 ? null : 110,
      sensitivityMvPerPa: at % 3 === 0 ? null : 2,
      notes: at % 7 === 0 ? 'long cable, comes from the riser' : '',
    })),
    mixes: upTo(mixes).map((at) => ({
      id: `${id}-mix-${at}`,
      actId: id,
      order: at,
      name: `Mix ${at + 1}`,
      deviceKind: at % 2 === 0 ? 'wedge' : 'in-ear',
      format: 'mono',
      xM: ((at * 2.3) % 10) - 5,
      yM: 0.7,
    })),
    listeners: upTo(mixes).map((at) => ({
      id: `${id}-hears-${at}`,
      mixId: `${id}-mix-${at}`,
      performerId: `${id}-player-${at}`,
    })),
    wishes: upTo(mixes).flatMap((at) =>
      upTo(Math.min(lines, 8)).map((source) => ({
        id: `${id}-wish-${at}-${source}`,
        mixId: `${id}-mix-${at}`,
        order: source,
        sourceId: `${id}-source-${(source * 3 + at) % lines}`,
        amount: source % 2 === 0 ? 'lots' : 'some',
        words: 'as much as you can',
      })),
    ),
  };
}
