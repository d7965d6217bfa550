import { Act } from './act.ts';
import { type Change, changeLabel, put } from './change.ts';
import type { Id } from './rig.ts';

/**
 * Changes of a day's running order. All take the acts of the day in their order and answer one change; rows that
 * stay as they are, are not put. A change without a row means that there is nothing to do.
 */

const minutesOfADay = 1440;

/**
 * Moves an act to another place. Where every act that changes its place has its times, the sets keep their lengths,
 * the breaks between places stay with their place, and the first of them starts when the first one did. Where one
 * has no times, only the order changes.
 */
export function moveAct(acts: readonly Act[], from: number, to: number): Change {
  const act = acts[from];
  const place = Math.max(0, Math.min(acts.length - 1, to));
  if (!act || place === from) return nothing;
  const rest = acts.filter((it) => it !== act);
  const ordered = [...rest.slice(0, place), act, ...rest.slice(place)];
  const [first, last] = [Math.min(from, place), Math.max(from, place)];
  const times = retimed(acts.slice(first, last + 1), ordered.slice(first, last + 1));
  return changeOf(
    acts,
    ordered.map((it, at) => ({ ...it, ...times?.[at - first], order: at })),
    `Move ${act.name} to place ${place + 1}`,
  );
}

type Times = Pick<Act, 'startMinute' | 'endMinute'>;

function retimed(before: readonly Act[], after: readonly Act[]): Times[] | null {
  const slots = before.flatMap(timesOf);
  const lengths = after.flatMap(timesOf).map(({ start, end }) => end - start);
  if (slots.length < before.length || lengths.some((length) => length < 0)) return null;
  let end = slots[0]?.start ?? 0;
  return lengths.map((length, place) => {
    const breakBefore = place === 0 ? 0 : (slots[place]?.start ?? 0) - (slots[place - 1]?.end ?? 0);
    const startMinute = end + breakBefore;
    end = startMinute + length;
    return { startMinute, endMinute: end };
  });
}

const timesOf = ({ startMinute, endMinute }: Act) =>
  startMinute === null || endMinute === null ? [] : [{ start: startMinute, end: endMinute }];

/**
 * Sets when an act starts, or clears it. The set keeps its length. `later`: all acts after it move by as much.
 * A clock time that is half a day or more before the act before is past midnight.
 */
export function startActAt(
  acts: readonly Act[],
  place: number,
  minute: number | null,
  later: boolean,
): Change {
  const act = acts[place];
  if (!act) return nothing;
  const start = minute === null ? null : afterMidnight(minute, acts[place - 1]);
  const by = start === null || act.startMinute === null ? null : start - act.startMinute;
  const moved = (it: Act, at: number): Act => {
    if (at === place)
      return { ...it, startMinute: start, endMinute: by === null ? it.endMinute : shifted(it.endMinute, by) };
    if (at < place || !later || by === null) return it;
    return {
      ...it,
      startMinute: shifted(it.startMinute, by),
      endMinute: shifted(it.endMinute, by),
    };
  };
  return changeOf(acts, acts.map(moved), `Start of ${act.name}`);
}

/** Sets when an act ends, or clears it. `later`: all acts after it move by as much. */
export function endActAt(acts: readonly Act[], place: number, minute: number | null, later: boolean): Change {
  const act = acts[place];
  if (!act) return nothing;
  const isNextDay = minute !== null && act.startMinute !== null && act.startMinute - minute >= halfADay;
  const end = isNextDay ? minute + minutesOfADay : minute;
  const by = end === null || act.endMinute === null ? null : end - act.endMinute;
  const moved = (it: Act, at: number): Act => {
    if (at === place) return { ...it, endMinute: end };
    if (at < place || !later || by === null) return it;
    return { ...it, startMinute: shifted(it.startMinute, by), endMinute: shifted(it.endMinute, by) };
  };
  return changeOf(acts, acts.map(moved), `End of ${act.name}`);
}

const halfADay = 720;

function afterMidnight(minute: number, before: Act | undefined): number {
  const last = before?.endMinute ?? before?.startMinute ?? null;
  return last !== null && last - minute >= halfADay ? minute + minutesOfADay : minute;
}

const shifted = (minute: number | null, by: number) => (minute === null ? null : minute + by);

/** Puts a new act, without times, after a place; -1 puts it first. */
export function insertAct(
  acts: readonly Act[],
  after: number,
  act: Pick<Act, 'id' | 'dayId' | 'name'>,
): Change {
  const fresh = Act.parse({ ...act, order: after + 1 });
  const ordered = [...acts.slice(0, after + 1), fresh, ...acts.slice(after + 1)];
  return changeOf(
    acts,
    ordered.map((it, at) => ({ ...it, order: at })),
    `Insert ${act.name}`,
  );
}

/** Takes an act out of the show with all that is its own. The others keep their times. */
export function dropAct(act: Act): Change {
  return { label: changeLabel(`Drop ${act.name}`), put: [], remove: [{ table: 'acts', id: act.id }] };
}

const nothing: Change = { label: 'Running order', put: [], remove: [] };

function changeOf(before: readonly Act[], after: readonly Act[], label: string): Change {
  const known = new Map<Id, Act>(before.map((act) => [act.id, act]));
  const fields = ['order', 'startMinute', 'endMinute'] as const;
  const changed = after.filter((act) => {
    const old = known.get(act.id);
    return !old || fields.some((field) => old[field] !== act[field]);
  });
  return { label: changeLabel(label), put: changed.map((act) => put('acts', act)), remove: [] };
}
