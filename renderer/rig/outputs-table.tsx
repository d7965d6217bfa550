import { Output } from '../../core/show/rig.ts';
import { outputPlaces } from '../../core/show/words.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

export function OutputsTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const rows = [...show.outputs.values()]
    .filter((it) => it.rigId === rig.id)
    .sort((a, b) => a.number - b.number);
  const boxes = [...show.boxes.values()].filter((it) => it.rigId === rig.id);
  const { field, choice, add, remove } = columnMaker({ table: 'outputs', change, nameOf: (it) => it.name });
  return (
    <SheetTable
      label={text.outputs}
      rows={rows}
      columns={[
        field('name', text.name, 10),
        field('number', text.number, 4, 'number'),
        choice('place', text.place, 7, () => outputPlaces.map((value) => ({ value, label: value }))),
        choice('boxId', text.box, 5, () => [
          { value: null, label: '' },
          ...boxes.map((box) => ({ value: box.id, label: box.name })),
        ]),
        field('xM', text.x, 5, 'optional number'),
        field('yM', text.y, 5.5, 'optional number'),
        field('reservedFor', text.reserved, 12, 'optional text'),
      ]}
      empty={text.noRows}
      onAdd={{
        label: text.newOutput,
        run: () => {
          const number = (rows.at(-1)?.number ?? 0) + 1;
          const output = Output.parse({
            id: newId(),
            rigId: rig.id,
            place: 'desk',
            number,
            name: `Out ${number}`,
          });
          add(output);
        },
      }}
      onRemove={remove}
    />
  );
}
