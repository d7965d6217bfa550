import { Day } from '../../core/show/act.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import { Box, Bus, CueOutput, Device, type Id, Output, Rig, Socket } from '../../core/show/rig.ts';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

const range = (n: number) => Array.from({ length: n }, (_, index) => index + 1);
const [sockets, buses, stageOutputs, wedges, packs] = [32, 16, 16, 4, 2];

/**
 * A small rig and a day on it, to begin an empty show with: a desk of 48 channels, one box, wedges and packs, and
 * one of each for the engineer to listen on. Nothing is said of their loudness: no figure of the house is invented.
 */
export function firstRig(): Change {
  const rig = Rig.parse({ id: newId(), name: words.rig.made, channelCount: 48 });
  const box = Box.parse({ id: newId(), rigId: rig.id, name: 'A' });
  return {
    label: words.common.addOf(rig.name),
    put: [
      put('rigs', rig),
      put('boxes', box),
      ...range(sockets).map((number) => put('sockets', Socket.parse({ id: newId(), boxId: box.id, number }))),
      ...range(buses).map((number) => put('buses', Bus.parse({ id: newId(), rigId: rig.id, number }))),
      ...range(stageOutputs).map((number) => put('outputs', stageOutput(box, number))),
      ...devicesOf(rig.id),
      ...cueOf(rig.id),
      put('days', Day.parse({ id: newId(), rigId: rig.id, name: words.day.first })),
    ],
    remove: [],
  };
}

const stageOutput = ({ id, rigId }: Box, number: number) =>
  Output.parse({
    id: newId(),
    rigId,
    boxId: id,
    place: 'stage box',
    number,
    name: words.rig.madeOutput(number),
  });

function devicesOf(rigId: Id): Put[] {
  const device = (kind: 'wedge' | 'in-ear', number: number, order: number) =>
    put(
      'devices',
      Device.parse({
        id: newId(),
        rigId,
        order,
        name: words.rig.madeDevice[kind](number),
        kind,
        format: kind === 'in-ear' ? 'stereo' : 'mono',
      }),
    );
  return [
    ...range(wedges).map((number) => device('wedge', number, number)),
    ...range(packs).map((number) => device('in-ear', number, wedges + number)),
  ];
}

/** A cue wedge and a cue pack on outputs of the desk. */
function cueOf(rigId: Id): Put[] {
  const desk = range(3).map((place) =>
    Output.parse({
      id: newId(),
      rigId,
      place: 'desk',
      number: stageOutputs + place,
      name: words.rig.madeDeskOutput(place),
    }),
  );
  const outputId = (place: number) => desk[place]?.id ?? null;
  const cue = (
    kind: 'wedge' | 'in-ear',
    order: number,
    ids: { outputId: Id | null; secondOutputId: Id | null },
  ) => {
    const name = words.rig.madeCue[kind];
    const format = kind === 'in-ear' ? 'stereo' : 'mono';
    const device = Device.parse({ id: newId(), rigId, order, name, kind, format, forCue: true, ...ids });
    const cueOutput = CueOutput.parse({
      id: newId(),
      rigId,
      name,
      kind,
      format,
      deviceId: device.id,
      ...ids,
    });
    return [put('devices', device), put('cueOutputs', cueOutput)];
  };
  return [
    ...desk.map((output) => put('outputs', output)),
    ...cue('wedge', wedges + packs + 1, { outputId: outputId(0), secondOutputId: null }),
    ...cue('in-ear', wedges + packs + 2, { outputId: outputId(1), secondOutputId: outputId(2) }),
  ];
}
