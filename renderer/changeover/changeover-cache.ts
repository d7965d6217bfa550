import { useEffect, useState } from 'react';
import type { ActPatch } from '../../core/changeover/act-patch.ts';
import { type Changeover, changeoverBetween } from '../../core/changeover/changeover.ts';
import { entriesOfDay } from '../../core/changeover/entries.ts';
import type { Entry } from '../../core/plan/day/problem.ts';
import type { Act, Day } from '../../core/show/act.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { type ActOnScreen, actOnScreen } from '../state/derive-cache.ts';

/** What a changeover follows from. Two of the same are the same changeover. */
type Basis = { day: Day; from: ActOnScreen; to: ActOnScreen; entries: string };

const made = new Map<Id, { basis: Basis; changeover: Changeover }>();

type DayOnScreen = { day: Day; acts: ActOnScreen[]; entries: ReadonlyMap<Id, Entry> };

/** The acts of a day with how every line of it comes into its socket. Made once for each show on screen. */
export function dayOnScreen(show: Show, day: Day, acts: readonly Act[]): DayOnScreen {
  const known = days.get(show);
  if (known?.day === day) return known;
  const open = acts.flatMap((act) => actOnScreen(show, act.id) ?? []);
  const entries = entriesOfDay(open.map(({ sheet, derived }) => ({ sheet, plan: derived.plan })));
  const made = { day, acts: open, entries };
  days.set(show, made);
  return made;
}

const days = new WeakMap<Show, DayOnScreen>();

function basisOf({ day, acts, entries }: DayOnScreen, place: number): Basis | null {
  const [from, to] = [acts[place - 1], acts[place]];
  if (!from || !to) return null;
  const told = [from, to].flatMap(({ sheet }) => sheet.sources.map(({ id }) => entries.get(id) ?? '-'));
  return { day, from, to, entries: told.join(' ') };
}

const isSame = (one: Basis, other: Basis) =>
  one.day === other.day && one.from === other.from && one.to === other.to && one.entries === other.entries;

function knownChangeover(basis: Basis): Changeover | null {
  const found = made.get(basis.to.sheet.act.id);
  return found && isSame(found.basis, basis) ? found.changeover : null;
}

/** The changeover before the act at a place, with its schedule; null before the first act. */
export function changeoverTo(on: DayOnScreen, place: number): Changeover | null {
  const basis = basisOf(on, place);
  if (!basis) return null;
  const known = knownChangeover(basis);
  if (known) return known;
  const side = ({ sheet, derived }: ActOnScreen): ActPatch => ({
    sheet,
    plan: derived.plan,
    entryOf: (id) => on.entries.get(id) ?? 'hot',
  });
  const changeover = changeoverBetween(on.day, side(basis.from), side(basis.to));
  made.set(basis.to.sheet.act.id, { basis, changeover });
  return changeover;
}

/**
 * The changeover before each act of a day, null where there is none or it is not worked out yet. They are worked
 * out one at a time, so that typing never waits for them.
 */
export function useChangeovers(on: DayOnScreen): (Changeover | null)[] {
  const [, setRound] = useState(0);
  const known = on.acts.map((_, place) => {
    const basis = basisOf(on, place);
    return basis && knownChangeover(basis);
  });
  const next = known.findIndex((it, place) => place > 0 && it === null);
  useEffect(() => {
    if (next < 0) return;
    const timer = setTimeout(() => {
      changeoverTo(on, next);
      setRound((round) => round + 1);
    });
    return () => clearTimeout(timer);
  }, [on, next]);
  return known;
}
