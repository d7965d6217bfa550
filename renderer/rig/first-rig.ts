import { Day } from '../../core/show/act.ts';
import { type Change, put } from '../../core/show/change.ts';
import { Box, Bus, Output, Rig, Socket } from '../../core/show/rig.ts';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

const range = (n: number) => Array.from({ length: n }, (_, index) => index + 1);

/** A small rig and a day on it, to begin an empty show with: 48 channels, one box of 32, 16 buses and outputs. */
export function firstRig(): Change {
  const rig = Rig.parse({ id: newId(), name: words.rig.made, channelCount: 48 });
  const box = Box.parse({ id: newId(), rigId: rig.id, name: 'A' });
  return {
    label: words.common.addOf(rig.name),
    put: [
      put('rigs', rig),
      put('boxes', box),
      ...range(32).map((number) => put('sockets', Socket.parse({ id: newId(), boxId: box.id, number }))),
      ...range(16).map((number) => put('buses', Bus.parse({ id: newId(), rigId: rig.id, number }))),
      ...range(16).map((number) =>
        put(
          'outputs',
          Output.parse({
            id: newId(),
            rigId: rig.id,
            boxId: box.id,
            place: 'stage box',
            number,
            name: `Out ${number}`,
          }),
        ),
      ),
      put('days', Day.parse({ id: newId(), rigId: rig.id, name: words.day.first })),
    ],
    remove: [],
  };
}
