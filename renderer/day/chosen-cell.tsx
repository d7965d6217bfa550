import { type Act, Source } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import { socketName } from '../../core/show/socket-name.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { DayCell, DayRow } from './day-table.ts';
import { EntryMark } from './entry-mark.tsx';
import { lockToSocket } from './locks.ts';
import './chosen-cell.css';

type Props = {
  open: ActOnScreen;
  row: DayRow;
  cell: DayCell | null;
  isFirst: boolean;
  /** Sockets of this act by what stands in them. */
  inUse: ReadonlyMap<Id, string>;
  onLock: () => void;
  onOpen: () => void;
};

/** What is known of the chosen socket during the chosen act, and what can be decided about it. */
export function ChosenCell(props: Props) {
  const { open, row, cell } = props;
  const text = words.day;
  const source = open.sheet.sources.find((it) => it.id === cell?.sourceId);
  return (
    <section className="chosen-cell" aria-label={text.chosen}>
      {cell && source ? (
        <Line {...props} cell={cell} source={source} />
      ) : (
        <p>
          {row.socket.reservedFor === null
            ? text.freeHere(row.name, open.sheet.act.name)
            : text.reserved(row.name, row.socket.reservedFor)}
        </p>
      )}
    </section>
  );
}

function Line({
  open,
  row,
  cell,
  source,
  isFirst,
  inUse,
  onLock,
  onOpen,
}: Props & { cell: DayCell; source: Source }) {
  const { change, show } = useHere();
  const text = words.day;
  const { sheet } = open;
  return (
    <>
      <p className="chosen-cell-what">
        <EntryMark entry={cell.entry} />
        <strong>{source.name}</strong>
        <span>{text.isHere(row.name, sheet.act.name)}</span>
        {cell.clashes !== '' && <strong className="patch-clash">{text.clash(cell.clashes)}</strong>}
        <span className="quiet">{isFirst ? text.firstEntry : text.entry[cell.entry]}</span>
      </p>
      <div className="chosen-cell-tools">
        <button type="button" onClick={onLock} aria-pressed={cell.locked}>
          {cell.locked ? text.openLock : text.lock} <kbd>L</kbd>
        </button>
        <label>
          {text.moveTo}{' '}
          <select value="" onChange={({ target }) => change(lockToSocket(sheet, source.id, target.value))}>
            <option value="">{text.moveNowhere}</option>
            {sheet.sockets
              .filter((socket) => socket.id !== row.socket.id)
              .map(({ id }) => {
                const name = socketName(sheet, id) ?? '';
                const by = inUse.get(id);
                return (
                  <option key={id} value={id}>
                    {by === undefined ? name : text.occupied(name, by)}
                  </option>
                );
              })}
          </select>
        </label>
        <StageField source={source} act={sheet.act} field="sharedLine" known={namesOf('sharedLine')} />
        <StageField source={source} act={sheet.act} field="riser" known={namesOf('riser')} />
        <button type="button" className="plain" onClick={onOpen}>
          {text.inMixes}
        </button>
      </div>
    </>
  );

  function namesOf(field: 'sharedLine' | 'riser'): string[] {
    const dayId = sheet.day.id;
    const ofDay = [...show.sources.values()].filter((it) => show.acts.get(it.actId)?.dayId === dayId);
    return [...new Set(ofDay.map((it) => it[field]))].filter((it) => it !== '').sort();
  }
}

/** A name that lines share: of a line that stays over acts, or of a riser. */
function StageField({
  source,
  act,
  field,
  known,
}: {
  source: Source;
  act: Act;
  field: 'sharedLine' | 'riser';
  known: readonly string[];
}) {
  const { change } = useHere();
  const text = words.day;
  const label = text[field];
  const listId = `day-${field}`;
  const commit = (typed: string): string | null => {
    const next = Source.safeParse({ ...source, [field]: typed.trim() });
    if (!next.success) return words.field.tooLong('200');
    change({
      label: words.field.changed(label, `${source.name}, ${act.name}`),
      put: [put('sources', next.data)],
      remove: [],
    });
    return null;
  };
  return (
    <span className="chosen-cell-field">
      <span aria-hidden="true">{label}</span>
      <CheckedField
        key={source.id}
        label={words.field.changed(label, source.name)}
        value={source[field]}
        list={listId}
        onCommit={commit}
      />
      <datalist id={listId}>
        {known.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </span>
  );
}
