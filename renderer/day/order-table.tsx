import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import type { Changeover } from '../../core/changeover/changeover.ts';
import { Act, type Day } from '../../core/show/act.ts';
import { type Change, put } from '../../core/show/change.ts';
import { endActAt, insertAct, moveAct, startActAt } from '../../core/show/running-order.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { parseTime, timeText } from '../parts/format.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import { fitOf } from './fit.ts';

type Props = {
  day: Day;
  changeovers: readonly (Changeover | null)[];
  onDrop: (act: Act) => void;
};

/** The acts in their order with their times. A row moves by its handle, or with Alt and the arrow keys. */
export function OrderTable({ day, changeovers, onDrop }: Props) {
  const { acts, change, look } = useHere();
  const [later, setLater] = useState(false);
  const ref = useRef<HTMLTableSectionElement>(null);
  const [drag, setDrag] = useState<{ from: number; to: number } | null>(null);
  const text = words.day;

  const move = (from: number, to: number) => {
    change(moveAct(acts, from, to));
    const place = Math.max(0, Math.min(acts.length - 1, to));
    // The handle that was used goes along with its act.
    requestAnimationFrame(() => ref.current?.querySelectorAll<HTMLElement>('.order-handle')[place]?.focus());
  };
  const onKeyDown = (event: KeyboardEvent, place: number) => {
    const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!event.altKey || by === undefined) return;
    event.preventDefault();
    move(place, place + by);
  };
  const placeAt = (clientY: number): number => {
    const rows = [...(ref.current?.rows ?? [])];
    const under = rows.findIndex((row) => clientY < row.getBoundingClientRect().bottom);
    return under < 0 ? rows.length - 1 : under;
  };
  const handle = (place: number) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      setDrag({ from: place, to: place });
    },
    onPointerMove: (event: PointerEvent) => {
      if (drag) setDrag({ ...drag, to: placeAt(event.clientY) });
    },
    onPointerUp: () => {
      if (drag && drag.to !== drag.from) move(drag.from, drag.to);
      setDrag(null);
    },
    onPointerCancel: () => setDrag(null),
  });
  const dragClass = (place: number) => {
    if (!drag) return undefined;
    if (place === drag.from) return 'is-dragged';
    if (place !== drag.to) return undefined;
    return drag.to < drag.from ? 'is-before' : 'is-after';
  };

  return (
    <>
      <table className="order-table" aria-label={text.order(day.name)}>
        <thead>
          <tr>
            <th scope="col">{text.place}</th>
            <th scope="col">{text.act}</th>
            <th scope="col">{text.starts}</th>
            <th scope="col">{text.ends}</th>
            <th scope="col">{text.before}</th>
            <th scope="col">{text.soundCheck}</th>
            <th scope="col" title={text.prePatchWhy}>
              {text.prePatch}
            </th>
            <th scope="col" title={text.lineCheckAheadWhy}>
              {text.lineCheckAhead}
            </th>
            <th scope="col">{text.onStage}</th>
            <th scope="col">
              <span className="unseen">{text.drop}</span>
            </th>
          </tr>
        </thead>
        <tbody ref={ref}>
          {acts.map((act, place) => (
            <tr key={act.id} className={dragClass(place)} onKeyDown={(event) => onKeyDown(event, place)}>
              <td>
                <button
                  type="button"
                  className="order-handle"
                  aria-label={text.handle(place + 1, act.name)}
                  {...handle(place)}
                >
                  <svg viewBox="0 0 10 16" aria-hidden="true">
                    <path d="M5 0 9.5 5.5h-9ZM5 16 .5 10.5h9Z" />
                  </svg>
                  {place + 1}
                </button>
              </td>
              <th scope="row">
                <button type="button" className="plain cut" onClick={() => look({ actId: act.id })}>
                  {act.name}
                </button>
              </th>
              <ActTimes acts={acts} place={place} later={later} />
              <td className="order-fit">
                <OrderFit changeover={changeovers[place] ?? null} />
              </td>
              <SoundCheck act={act} />
              <ActChecks act={act} />
              <OnStage act={act} />
              <td className="order-tools">
                <button
                  type="button"
                  aria-label={text.insertAfter(act.name)}
                  title={text.insertAfter(act.name)}
                  onClick={() =>
                    change(insertAct(acts, place, { id: newId(), dayId: day.id, name: text.newAct }))
                  }
                >
                  {text.insert}
                </button>
                <button
                  type="button"
                  className="plain"
                  aria-label={text.dropOf(act.name)}
                  onClick={() => onDrop(act)}
                >
                  {text.drop}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <label className="order-later">
        <input type="checkbox" checked={later} onChange={({ target }) => setLater(target.checked)} />{' '}
        {text.later}
      </label>
    </>
  );
}

const shown = (minute: number | null) => (minute === null ? '' : timeText(minute));

/** The minute of a typed time: null where the field was emptied, a sentence where it is none. */
function typedMinute(typed: string): { minute: number | null } | { why: string } {
  if (typed.trim() === '') return { minute: null };
  const minute = parseTime(typed);
  return minute === null ? { why: words.day.timeBad } : { minute };
}

function ActTimes({ acts, place, later }: { acts: readonly Act[]; place: number; later: boolean }) {
  const { change } = useHere();
  const text = words.day;
  const act = acts[place];
  if (!act) return null;
  const commit =
    (make: (minute: number | null) => Change) =>
    (typed: string): string | null => {
      const outcome = typedMinute(typed);
      if ('why' in outcome) return outcome.why;
      const made = make(outcome.minute);
      if (made.put.some((it) => !Act.safeParse(it.row).success)) return text.timeOut;
      change(made);
      return null;
    };
  const fields = [
    ['startMinute', text.starts, (minute: number | null) => startActAt(acts, place, minute, later)],
    ['endMinute', text.ends, (minute: number | null) => endActAt(acts, place, minute, later)],
  ] as const;
  return fields.map(([field, label, make]) => (
    <td key={field} className="order-time">
      <CheckedField
        label={words.field.changed(label, act.name)}
        value={shown(act[field])}
        onCommit={commit(make)}
      />
      {(act[field] ?? 0) >= 1440 && <span className="order-next-day">{text.nextDay}</span>}
    </td>
  ));
}

function SoundCheck({ act }: { act: Act }) {
  const { change } = useHere();
  const text = words.day;
  const commit =
    (field: 'soundCheckStartMinute' | 'soundCheckEndMinute', label: string) =>
    (typed: string): string | null => {
      const outcome = typedMinute(typed);
      if ('why' in outcome) return outcome.why;
      change(changeAct(label, { ...act, [field]: outcome.minute }));
      return null;
    };
  return (
    <td className="order-sound-check">
      <CheckedField
        label={words.field.changed(text.soundCheckFrom, act.name)}
        value={shown(act.soundCheckStartMinute)}
        onCommit={commit('soundCheckStartMinute', text.soundCheckFrom)}
      />
      <CheckedField
        label={words.field.changed(text.soundCheckTo, act.name)}
        value={shown(act.soundCheckEndMinute)}
        onCommit={commit('soundCheckEndMinute', text.soundCheckTo)}
      />
    </td>
  );
}

function ActChecks({ act }: { act: Act }) {
  const { change } = useHere();
  const text = words.day;
  return (['prePatch', 'lineCheckAhead'] as const).map((field) => (
    <td key={field} className="order-check">
      <input
        type="checkbox"
        aria-label={words.field.changed(text[field], act.name)}
        checked={act[field]}
        onChange={({ target }) => change(changeAct(text[field], { ...act, [field]: target.checked }))}
      />
    </td>
  ));
}

const changeAct = (label: string, act: Act): Change => ({
  label: words.field.changed(label, act.name),
  put: [put('acts', act)],
  remove: [],
});

function OrderFit({ changeover }: { changeover: Changeover | null }) {
  const text = words.day;
  if (!changeover) return words.common.nothing;
  const { needed, there, over } = fitOf(changeover);
  if (needed === null) return text.noSchedule;
  return (
    <>
      {text.neededOf(needed, there)}
      {over !== null && (
        <strong className="patch-over">
          <SeverityMark severity="must fix" says={false} /> {text.tooLong(over)}
        </strong>
      )}
    </>
  );
}

/** Lines that stay over several acts, and risers. They are named at the socket, in the patch. */
function OnStage({ act }: { act: Act }) {
  const { show } = useHere();
  const sources = [...show.sources.values()].filter((it) => it.actId === act.id);
  const shared = sources.filter((it) => it.sharedLine !== '').length;
  const risers = [...new Set(sources.map((it) => it.riser).filter((it) => it !== ''))];
  const parts = [...(shared > 0 ? [words.day.sharedLines(shared)] : []), ...risers];
  return <td className="order-on-stage">{parts.join(', ') || words.common.nothing}</td>;
}
