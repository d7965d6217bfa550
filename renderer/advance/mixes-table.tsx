import { Listener, Mix } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import { deviceKinds, formats } from '../../core/show/words.ts';
import { listenersOf } from '../parts/names.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { type SheetColumn, SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import { performerNamed } from './sources-table.tsx';

type Props = {
  sheet: ActSheet;
  marked: ReadonlySet<string>;
  onRow: (mix: Mix) => void;
  onHover: (mix: Mix | null) => void;
};

/** The mixes of an act: who listens, and through what. */
export function MixesTable({ sheet, marked, onRow, onHover }: Props) {
  const { change } = useHere();
  const text = words.advance;
  const { field, choice, add, remove } = columnMaker({ table: 'mixes', change, nameOf: (mix) => mix.name });
  return (
    <SheetTable
      label={text.mixes}
      rows={sheet.mixes}
      marked={marked}
      onRow={onRow}
      onHover={onHover}
      columns={[
        field('name', text.name, 7),
        listenersColumn(sheet, change),
        choice('deviceKind', text.device, 6, () => [
          { value: null, label: '' },
          ...deviceKinds.map((value) => ({ value, label: words.deviceKind[value] })),
        ]),
        choice('format', text.format, 4.6, () => [
          { value: null, label: '' },
          ...formats.map((value) => ({ value, label: value })),
        ]),
        field('deviceCount', text.count, 4, 'number'),
        choice('ownDevice', text.whose, 5.4, () => [
          { value: null, label: '' },
          { value: true, label: text.band },
          { value: false, label: text.house },
        ]),
        choice('mixedAt', text.mixedAt, 6.5, () => [
          { value: 'house desk', label: 'house desk' },
          { value: 'elsewhere', label: 'elsewhere' },
        ]),
        field('place', text.place, 6),
        field('notes', text.notes, 10),
      ]}
      empty={text.noMixes}
      onAdd={{
        label: text.addMix,
        run: () => {
          const order = (sheet.mixes.at(-1)?.order ?? -1) + 1;
          const mix = Mix.parse({ id: newId(), actId: sheet.act.id, order, name: text.newMix(order + 1) });
          add(mix);
        },
      }}
      onRemove={remove}
    />
  );
}

/** Names with commas between; a new name makes a new performer. */
function listenersColumn(sheet: ActSheet, change: (change: Change) => void): SheetColumn<Mix> {
  const names = (mix: Mix) =>
    listenersOf(sheet, mix.id)
      .map((it) => it.name)
      .join(', ');
  return {
    key: 'listeners',
    head: words.advance.listeners,
    width: 9,
    text: names,
    options: () => sheet.performers.map((it) => it.name),
    set: (mix, typed) => {
      const before = sheet.listeners.filter((it) => it.mixId === mix.id);
      const found = typed.split(',').map((name) => performerNamed(sheet, name));
      const wanted = new Set(found.flatMap(({ performerId }) => performerId ?? []));
      const added = [...wanted].filter((id) => !before.some((it) => it.performerId === id));
      const puts: Put[] = [
        ...found.flatMap((it) => it.put),
        ...added.map((performerId) =>
          put('listeners', Listener.parse({ id: newId(), mixId: mix.id, performerId })),
        ),
      ];
      const gone = before.filter((it) => !wanted.has(it.performerId));
      change({
        label: words.field.changed(words.advance.listeners, mix.name),
        put: puts,
        remove: gone.map(({ id }) => ({ table: 'listeners' as const, id })),
      });
      return null;
    },
  };
}
