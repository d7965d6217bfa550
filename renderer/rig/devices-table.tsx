import { Device } from '../../core/show/rig.ts';
import { deviceKinds, formats } from '../../core/show/words.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

export function DevicesTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const rows = [...show.devices.values()]
    .filter((it) => it.rigId === rig.id)
    .sort((a, b) => a.order - b.order);
  const { field, choice, add, remove } = columnMaker({ table: 'devices', change, nameOf: (it) => it.name });
  return (
    <SheetTable
      label={text.devices}
      rows={rows}
      columns={[
        field('name', text.name, 9),
        choice('kind', text.kind, 6, () =>
          deviceKinds.map((value) => ({ value, label: words.deviceKind[value] })),
        ),
        choice('format', text.format, 5, () => formats.map((value) => ({ value, label: value }))),
        field('model', text.model, 9),
        field('sensitivityDbSpl', text.sensitivity, 8, 'optional number'),
        field('powerW', text.power, 5.5, 'optional number'),
        field('listeningDistanceM', text.distance, 5.5, 'optional number'),
        choice('forCue', text.forCue, 5, () => [
          { value: false, label: words.common.no },
          { value: true, label: words.common.yes },
        ]),
        field('reservedFor', text.reserved, 9, 'optional text'),
      ]}
      empty={text.noRows}
      onAdd={{
        label: text.newDevice,
        run: () => {
          const order = (rows.at(-1)?.order ?? 0) + 1;
          const wedges = rows.filter((it) => it.kind === 'wedge').length;
          const device = Device.parse({
            id: newId(),
            rigId: rig.id,
            order,
            name: `Wedge ${wedges + 1}`,
            kind: 'wedge',
            format: 'mono',
          });
          add(device);
        },
      }}
      onRemove={remove}
    />
  );
}
