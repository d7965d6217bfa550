import type { z } from 'zod';
import { Box, Bus, CueOutput, Device, Output, Rig, Socket, StockItem } from '../../../core/show/rig.ts';
import type { Rows } from '../../../core/show/show.ts';

/**
 * The rig of the demo: a mid-size festival stage. All figures are illustrative and belong to no product; a house
 * measures its own.
 */
const rigId = 'rig';

const rig = Rig.parse({
  id: rigId,
  name: 'Meadow stage',
  deskName: 'Monitor desk',
  channelCount: 96,
  gainOwner: 'monitors',
  deskLatencyMs: 1.4,
  stageWidthM: 14,
  stageDepthM: 10,
  cueXM: 7.7,
  cueYM: 3,
  airTemperatureC: 22,
} satisfies z.input<typeof Rig>);

type BoxPlan = {
  name: string;
  xM: number;
  yM: number;
  phantomBankSize: number;
  sockets: number;
  outputs: number;
  broken?: number;
};

/** Four boxes around the stage. The one at stage left is an older one that switches phantom for eight at a time. */
const boxPlans: readonly BoxPlan[] = [
  { name: 'A', xM: 0, yM: 8.5, phantomBankSize: 1, sockets: 16, outputs: 4 },
  { name: 'B', xM: -6, yM: 4.5, phantomBankSize: 1, sockets: 16, outputs: 8, broken: 16 },
  { name: 'C', xM: 6, yM: 4.5, phantomBankSize: 8, sockets: 16, outputs: 8 },
  { name: 'D', xM: 0, yM: 0.1, phantomBankSize: 1, sockets: 12, outputs: 8 },
];

const idOf = (...parts: (string | number)[]) => parts.join('-').toLowerCase();
const outputId = (box: string, number: number) => idOf('output', box, number);
const deskOutputId = (number: number) => idOf('output-desk', number);
const upTo = (count: number) => Array.from({ length: count }, (_, place) => place + 1);

const boxes = boxPlans.map(({ name, xM, yM, phantomBankSize }, order) =>
  Box.parse({ id: idOf('box', name), rigId, order, name, xM, yM, reachM: 10, phantomBankSize }),
);

const sockets = boxPlans.flatMap(({ name, sockets: count, broken }) =>
  upTo(count).map((number) =>
    Socket.parse({
      id: idOf('socket', name, number),
      boxId: idOf('box', name),
      number,
      reservedFor: number === broken ? 'Broken contact, do not use' : null,
    }),
  ),
);

const buses = upTo(28).map((number) =>
  Bus.parse({
    id: idOf('bus', number),
    rigId,
    number,
    reservedFor: number > 24 ? 'Reverbs of the desk' : null,
  }),
);

const boxOutputs = boxPlans.flatMap(({ name, xM, yM, outputs: count }) =>
  upTo(count).map((number) =>
    Output.parse({
      id: outputId(name, number),
      rigId,
      boxId: idOf('box', name),
      place: 'stage box',
      number,
      name: `${name} out ${number}`,
      xM,
      yM,
    }),
  ),
);
/** In-ear transmitters and the cue stand beside the desk, at the edge of the stage. */
const deskOutputs = upTo(16).map((number) =>
  Output.parse({
    id: deskOutputId(number),
    rigId,
    place: 'desk',
    number,
    name: `Desk out ${number}`,
    xM: 8,
    yM: 2,
    reservedFor: number > 13 ? 'The engineer’s cue' : null,
  }),
);

type DevicePlan = Omit<z.input<typeof Device>, 'id' | 'rigId' | 'order'>;

const wedgeFigures = { sensitivityDbSpl: 98, powerW: 250, listeningDistanceM: 1.8 } as const;
const fillFigures = { sensitivityDbSpl: 101, powerW: 600, listeningDistanceM: 4 } as const;
/** Level at the ear with the pack at half; the frequencies are the licence holder's business and stay empty. */
const packFigures = { sensitivityDbSpl: 95, latencyMs: 0, limiter: 'in the receiver' } as const;

const wedge = (number: number, output: string): DevicePlan => ({
  name: `Wedge ${number}`,
  kind: 'wedge',
  format: 'mono',
  model: '12-inch coaxial wedge',
  ...wedgeFigures,
  outputId: output,
});
const pack = (number: number): DevicePlan => ({
  name: `Pack ${number}`,
  kind: 'in-ear',
  format: 'stereo',
  model: 'stereo pack',
  ...packFigures,
  outputId: deskOutputId(2 * number - 1),
  secondOutputId: deskOutputId(2 * number),
});
const sideFill = (side: string, output: string): DevicePlan => ({
  name: `Side fill ${side}`,
  kind: 'side fill',
  format: 'mono',
  model: 'two-way side fill',
  ...fillFigures,
  outputId: output,
});

const devicePlans: readonly DevicePlan[] = [
  wedge(1, outputId('D', 1)),
  wedge(2, outputId('D', 2)),
  wedge(3, outputId('D', 3)),
  wedge(4, outputId('D', 4)),
  wedge(5, outputId('B', 1)),
  wedge(6, outputId('B', 2)),
  wedge(7, outputId('C', 1)),
  wedge(8, outputId('C', 2)),
  wedge(9, outputId('A', 1)),
  wedge(10, outputId('A', 2)),
  sideFill('stage right', outputId('B', 3)),
  sideFill('stage left', outputId('C', 3)),
  {
    name: 'Drum fill',
    kind: 'drum fill',
    format: 'mono',
    model: '15-inch with sub',
    ...fillFigures,
    listeningDistanceM: 1.5,
    outputId: outputId('A', 3),
  },
  ...upTo(6).map(pack),
  {
    name: 'Cue wedge',
    kind: 'wedge',
    format: 'mono',
    model: '12-inch coaxial wedge',
    ...wedgeFigures,
    listeningDistanceM: 1.2,
    outputId: deskOutputId(14),
    forCue: true,
  },
  {
    name: 'Cue pack',
    kind: 'in-ear',
    format: 'stereo',
    model: 'stereo pack, wired',
    ...packFigures,
    outputId: deskOutputId(15),
    secondOutputId: deskOutputId(16),
    forCue: true,
  },
];

const deviceId = (name: string) => idOf('device', ...name.split(' '));
const devices = devicePlans.map((plan, order) =>
  Device.parse({ ...plan, id: deviceId(plan.name), rigId, order }),
);

const cueOutputs = [
  CueOutput.parse({
    id: 'cue-wedge',
    rigId,
    name: 'Cue wedge',
    kind: 'wedge',
    format: 'mono',
    outputId: deskOutputId(14),
    deviceId: deviceId('Cue wedge'),
    distanceFromStageM: 8,
  }),
  CueOutput.parse({
    id: 'cue-pack',
    rigId,
    name: 'Cue pack',
    kind: 'in-ear',
    format: 'stereo',
    outputId: deskOutputId(15),
    secondOutputId: deskOutputId(16),
    deviceId: deviceId('Cue pack'),
    distanceFromStageM: 8,
  }),
];

const stockItems = (
  [
    { kind: 'in-ear pack', count: 6, returnMinutes: 5, chargeMinutes: 10 },
    { kind: 'wedge', count: 10 },
    { kind: 'fill', count: 3 },
    { kind: 'di', count: 16 },
    { kind: 'stand', name: 'tall boom', count: 18 },
    { kind: 'stand', name: 'short boom', count: 12 },
  ] as const
).map((item, order) => StockItem.parse({ ...item, id: idOf('stock', order + 1), rigId, order }));

export const houseRig: Partial<Rows> = {
  rigs: [rig],
  boxes,
  sockets,
  buses,
  outputs: [...boxOutputs, ...deskOutputs],
  devices,
  cueOutputs,
  stockItems,
};
