import { Performer } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

/** Who plays: names, what they do, where they stand. */
export function PerformersTable({ sheet }: { sheet: ActSheet }) {
  const { change } = useHere();
  const text = words.advance;
  const { field, add, remove } = columnMaker({
    table: 'performers',
    change,
    nameOf: (performer) => performer.name,
  });
  return (
    <SheetTable
      label={text.performers}
      rows={sheet.performers}
      columns={[
        field('name', text.name, 9),
        field('role', text.role, 9),
        field('place', text.place, 8),
        field('xM', words.rig.x, 5, 'optional number'),
        field('yM', words.rig.y, 5.5, 'optional number'),
      ]}
      empty={text.noPerformers}
      onAdd={{
        label: text.addPerformer,
        run: () => {
          const order = (sheet.performers.at(-1)?.order ?? -1) + 1;
          const name = text.newPerformer(order + 1);
          const performer = Performer.parse({ id: newId(), actId: sheet.act.id, order, name });
          add(performer);
        },
      }}
      onRemove={remove}
    />
  );
}
