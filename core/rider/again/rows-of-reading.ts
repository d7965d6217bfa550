import { Listener, Mix, Performer, Source, Wish } from '../../show/act.ts';
import { type Put, put } from '../../show/change.ts';
import type { Id } from '../../show/rig.ts';
import type { ReadInput, Reading, ReadMix, ReadPerformer, ReadWish } from '../reading.ts';

/**
 * What a rider was taken to mean, as rows of an act: performers, sources, mixes, listeners and wishes. Wishes on
 * paper are drafts, so none is confirmed. `newId` makes an id that the show has not seen.
 */
export function rowsOfReading(reading: Reading, actId: Id, newId: () => Id): Put[] {
  const performers = performersNamed(reading);
  const performerIds = new Map(performers.map(({ name }) => [name, newId()]));
  const sourceIds = new Map(reading.inputs.map((input) => [input.key, newId()]));
  const mixIds = new Map(reading.mixes.map((mix) => [mix.key, newId()]));
  const ids: Ids = { performers: performerIds, sources: sourceIds, mixes: mixIds };
  return [
    ...performers.map((performer, order) => put('performers', performerRow(performer, order, actId, ids))),
    ...reading.inputs.map((input, order) => put('sources', sourceRow(input, order, actId, ids))),
    ...reading.mixes.map((mix, order) => put('mixes', mixRow(mix, order, actId, ids))),
    ...reading.mixes.flatMap((mix) => listenerRows(mix, ids, newId).map((row) => put('listeners', row))),
    ...reading.mixes.flatMap((mix) => wishRows(mix, ids, newId).map((row) => put('wishes', row))),
  ];
}

type Ids = {
  performers: ReadonlyMap<string, Id>;
  sources: ReadonlyMap<string, Id>;
  mixes: ReadonlyMap<string, Id>;
};

/** The longest short text of a row; a name that is longer is kept whole in the notes. */
const longest = 200;
const clip = (text: string): string => text.slice(0, longest);
const clipNotes = (text: string): string => text.slice(0, 20_000);

function withLongName(name: string, notes: string): string {
  return clipNotes(name.length > longest ? [name, notes].filter(Boolean).join('\n') : notes);
}

/** The performers of the reading, and those that only a line or a mix names. */
function performersNamed(reading: Reading): ReadPerformer[] {
  const known = new Set(reading.performers.map((it) => it.name));
  const named = [
    ...reading.inputs.flatMap((input) => input.performer ?? []),
    ...reading.mixes.flatMap((mix) => mix.listeners),
  ].filter((name) => name !== '' && !known.has(name));
  return [
    ...reading.performers.filter((it) => it.name !== ''),
    ...[...new Set(named)].map((name) => ({ name, role: '', place: '', lines: [] })),
  ];
}

function performerRow({ name, role, place }: ReadPerformer, order: number, actId: Id, ids: Ids): Performer {
  const id = ids.performers.get(name);
  return Performer.parse({ id, actId, order, name: clip(name), role: clip(role), place: clip(place) });
}

function sourceRow(input: ReadInput, order: number, actId: Id, ids: Ids): Source {
  return Source.parse({
    id: ids.sources.get(input.key),
    actId,
    order,
    riderLine:
      Number.isInteger(input.channel) && input.channel >= 0 && input.channel <= 10_000 ? input.channel : null,
    name: clip(input.name.trim()) || input.kind,
    kind: input.kind,
    pairSourceId: ids.sources.get(input.pairKey ?? '') ?? null,
    pickUp: input.pickUp,
    pickUpModel: clip(input.pickUpModel),
    pickUpInstead: clip(input.alternatives.join('; ')),
    phantom: input.phantom,
    stand: clip(input.stand),
    place: clip(input.position),
    performerId: ids.performers.get(input.performer ?? '') ?? null,
    broughtBy: input.broughtBy,
    optional: input.optional,
    audience: input.audience,
    notes: withLongName(input.name, input.notes),
  });
}

function mixRow(mix: ReadMix, order: number, actId: Id, ids: Ids): Mix {
  return Mix.parse({
    id: ids.mixes.get(mix.key),
    actId,
    order,
    name: clip(mix.label.trim()) || `Mix ${mix.number}`,
    deviceKind: mix.deviceKind,
    format: mix.format,
    deviceCount: Math.min(Math.max(Math.round(mix.deviceCount), 1), 16),
    ownDevice: mix.ownDevice,
    mixedAt: mix.mixedAt,
    place: clip(mix.place),
    notes: withLongName(mix.label, mix.notes),
  });
}

function listenerRows(mix: ReadMix, ids: Ids, newId: () => Id): Listener[] {
  return [...new Set(mix.listeners)].flatMap((name) => {
    const performerId = ids.performers.get(name);
    return performerId ? [Listener.parse({ id: newId(), mixId: ids.mixes.get(mix.key), performerId })] : [];
  });
}

function wishRows(mix: ReadMix, ids: Ids, newId: () => Id): Wish[] {
  const targets = mix.wishes.flatMap((wish) =>
    targetsOf(wish, ids.mixes.get(mix.key), ids).map((target) => ({ wish, target })),
  );
  return targets.map(({ wish, target }, order) => {
    const levelDb = wish.levelDb === null ? null : Math.min(Math.max(wish.levelDb, -120), 20);
    // A source that is just named is wished for as "some"; another mix that is just named is taken as it is.
    const amount = wish.amount ?? ('sameAsMixId' in target ? null : 'some');
    return Wish.parse({
      id: newId(),
      mixId: ids.mixes.get(mix.key),
      order,
      words: clip(wish.words),
      ...target,
      amount: levelDb === null ? amount : null,
      levelDb,
    });
  });
}

type Target = { sourceId: Id } | { group: NonNullable<Wish['group']> } | { sameAsMixId: Id };

function targetsOf({ target }: ReadWish, mixId: Id | undefined, ids: Ids): Target[] {
  switch (target.of) {
    case 'inputs':
      return target.inputKeys.flatMap((key) => {
        const sourceId = ids.sources.get(key);
        return sourceId ? [{ sourceId }] : [];
      });
    case 'group':
      return [{ group: target.group }];
    case 'everything':
      return [{ group: 'everything' }];
    case 'mix': {
      const sameAsMixId = ids.mixes.get(target.mixKey);
      return sameAsMixId && sameAsMixId !== mixId ? [{ sameAsMixId }] : [];
    }
  }
}
