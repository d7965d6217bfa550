import { Bus } from '../../core/show/rig.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

export function BusesTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const rows = [...show.buses.values()]
    .filter((it) => it.rigId === rig.id)
    .sort((a, b) => a.number - b.number);
  const nameOf = (bus: Bus) => `${text.oneBus} ${bus.number}`;
  const { field, add, remove } = columnMaker({ table: 'buses', change, nameOf });
  const freeNumber = (next: Bus) =>
    rows.some((it) => it.id !== next.id && it.number === next.number)
      ? words.field.taken(`${next.number}`, text.oneBus)
      : null;
  return (
    <div className="rig-long">
      <SheetTable
        label={text.buses}
        rows={rows}
        columns={[
          field('number', text.number, 5, 'number', freeNumber),
          field('reservedFor', text.reserved, 18, 'optional text'),
        ]}
        empty={text.noRows}
        onAdd={{
          label: text.newBus,
          run: () => {
            const number = (rows.at(-1)?.number ?? 0) + 1;
            const bus = Bus.parse({ id: newId(), rigId: rig.id, number });
            add(bus);
          },
        }}
        onRemove={remove}
      />
    </div>
  );
}
