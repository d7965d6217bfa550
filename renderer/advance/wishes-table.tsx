import type { Wish } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { put } from '../../core/show/change.ts';
import { readTypedCell } from '../mixes/cell-text.ts';
import { levelText } from '../parts/format.ts';
import { whoHears } from '../parts/names.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** What every mix is asked to hold, in the rider's words and as understood. */
export function WishesTable({ sheet }: { sheet: ActSheet }) {
  const { change } = useHere();
  const text = words.advance;
  const mixOf = new Map(sheet.mixes.map((mix, place) => [mix.id, { mix, place }]));
  const rows = [...sheet.wishes].sort(
    (a, b) => (mixOf.get(a.mixId)?.place ?? 0) - (mixOf.get(b.mixId)?.place ?? 0) || a.order - b.order,
  );
  const forWhom = (wish: Wish) => {
    const mix = mixOf.get(wish.mixId)?.mix;
    return mix ? whoHears(sheet, mix) : '';
  };
  const what = (wish: Wish) => {
    const same = wish.sameAsMixId === null ? undefined : mixOf.get(wish.sameAsMixId)?.mix;
    if (same) return text.sameAs(whoHears(sheet, same));
    return sheet.sources.find((it) => it.id === wish.sourceId)?.name ?? wish.group ?? '';
  };
  const { choice } = columnMaker({ table: 'wishes', change, nameOf: forWhom });
  return (
    <SheetTable
      label={text.wishes}
      rows={rows}
      columns={[
        { key: 'mix', head: text.forWhom, width: 8, text: forWhom },
        { key: 'what', head: text.what, width: 10, text: what },
        {
          key: 'amount',
          head: text.amount,
          width: 5,
          text: (wish) => wish.amount ?? (wish.levelDb === null ? '' : `${levelText(wish.levelDb)} dB`),
          set: (wish, typed) => {
            const cell = readTypedCell(typed);
            if (cell.of === 'refused') return cell.why;
            if (cell.of === 'nothing') return text.amountMissing;
            const next: Wish = {
              ...wish,
              amount: cell.of === 'amount' ? cell.amount : null,
              levelDb: cell.of === 'level' ? cell.levelDb : null,
            };
            change({
              label: words.field.changed(text.amount, forWhom(wish)),
              put: [put('wishes', next)],
              remove: [],
            });
            return null;
          },
        },
        choice('confirmed', text.confirmed, 5.5, () => [
          { value: false, label: text.draft },
          { value: true, label: words.common.yes },
        ]),
        { key: 'words', head: text.asWritten, width: 14, text: (wish) => wish.words },
      ]}
      empty={text.noWishes}
      onRemove={(wish) =>
        change({
          label: words.common.removeRow(what(wish)),
          put: [],
          remove: [{ table: 'wishes', id: wish.id }],
        })
      }
    />
  );
}
