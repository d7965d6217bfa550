import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { bringBack } from '../../core/show/bring-back.ts';
import { differenceOf } from '../../core/show/difference.ts';
import { type PartRoot, partOfShow, planOfPart } from '../../core/show/part-of-show.ts';
import type { Id } from '../../core/show/rig.ts';
import { type Show, showFromRows } from '../../core/show/show.ts';
import { changeAfterCopy } from './copy-calls.ts';
import { toldDifferences } from './differences.ts';
import type { Context, Handler } from './handlers.ts';

export const keepState: Handler<'states.keep'> = ({ show }, { of, name }) => {
  const part = partOfShow(show.read(), of);
  if (part[of.table].size === 0) return gone();
  const kept = show.keepState({ of, name, part });
  return kept.ok ? { ok: true, value: { state: kept.value } } : kept;
};

export const listStates: Handler<'states.list'> = ({ show }, { of }) => ({
  ok: true,
  value: { states: show.states(of) },
});

export const compareStates: Handler<'states.compare'> = (context, { of, fromId, toId }) => {
  const from = partOfState(context, fromId);
  if (!from.ok) return from;
  const to = toId === null ? partNow(context, of) : partOfState(context, toId);
  if (!to.ok) return to;
  const writings = writingsBetween(context, from.value, to.value);
  return { ok: true, value: { differences: toldDifferences(from.value.part, to.value.part), writings } };
};

export const restoreState: Handler<'states.restore'> = async (context, { of, stateId }) => {
  const state = partOfState(context, stateId);
  if (!state.ok) return state;
  const { name, part } = state.value;
  return changeAfterCopy(context, (now) => ({
    ok: true,
    value: bringBack(`Put back “${name}”`, now, planOfPart(partOfShow(now, of)), part),
  }));
};

/** A state of a plan: what happened on the day is no part of it, so putting a state back takes none of it away. */
type At = { name: string; part: Show; revision: number };

function partNow({ show }: Context, of: PartRoot): Outcome<At> {
  return {
    ok: true,
    value: { name: 'now', part: planOfPart(partOfShow(show.read(), of)), revision: show.standing().revision },
  };
}

function partOfState({ show }: Context, id: Id): Outcome<At> {
  const state = show.state(id);
  if (!state) return gone();
  const { name, revision, document } = state;
  return { ok: true, value: { name, part: planOfPart(showFromRows(document)), revision } };
}

/** Who wrote what differs; nothing where a state is of another file, whose writes are not in this one. */
function writingsBetween({ show }: Context, from: At, to: At) {
  if (from.revision < 0 || to.revision < 0) return [];
  const [first, last] = [Math.min(from.revision, to.revision), Math.max(from.revision, to.revision)];
  const differing = new Set(differenceOf(from.part, to.part).map(({ table, id }) => `${table} ${id}`));
  return show
    .writings(first, last)
    .filter(({ rows }) => rows === null || rows.some(([table, id]) => differing.has(`${table} ${id}`)))
    .map(({ madeAt, device, did, label }) => ({ madeAt, device, did, label }));
}

function gone() {
  return refuse('not there', 'What you named is not in the show any more.', 'Look at the show as it is now.');
}
