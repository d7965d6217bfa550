import type { FoundInArchive } from '../../core/contract/archive.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { socketNames } from '../../core/show/socket-name.ts';
import { type BindingId, handledBindings } from '../keys/bindings.ts';
import { folded } from '../parts/folded.ts';
import { mixNumber, whoHears } from '../parts/names.ts';
import { actOnScreen } from '../state/derive-cache.ts';
import type { View } from '../state/view-store.ts';
import { words } from '../wording/words.ts';

/** Something that can be found by its name, and what choosing it does. */
export type Findable = {
  key: string;
  kind: keyof typeof words.find.kinds;
  name: string;
  /** Where it belongs, for example its act. */
  place: string;
  leads: { look: Partial<View> } | { run: BindingId };
};

/** Everything with a name in the show, the open act first, and the program's actions. */
export function findables(show: Show, actIds: readonly Id[]): Findable[] {
  const actions = handledBindings
    .filter(({ id }) => id !== 'find')
    .map(
      ({ id, keys }): Findable => ({
        key: `action ${id}`,
        kind: 'action',
        name: words.keyTexts[id],
        place: (keys[0] ?? '').replaceAll('+', ' '),
        leads: { run: id },
      }),
    );
  return [...actIds.flatMap((actId) => ofAct(show, actId)), ...actions];
}

function ofAct(show: Show, actId: Id): Findable[] {
  const open = actOnScreen(show, actId);
  if (!open) return [];
  const { sheet, derived } = open;
  const place = sheet.act.name;
  const toMixes = (part: Partial<View>) => ({ look: { actId, moment: 'mixes' as const, ...part } });
  const sockets = socketNames(sheet);
  const sourceName = new Map(sheet.sources.map((source) => [source.id, source.name]));
  return [
    { key: `act ${actId}`, kind: 'act', name: place, place: sheet.day.name, leads: { look: { actId } } },
    ...sheet.performers.map((performer): Findable => {
      const mixId = sheet.listeners.find((it) => it.performerId === performer.id)?.mixId ?? null;
      return { key: performer.id, kind: 'performer', name: performer.name, place, leads: toMixes({ mixId }) };
    }),
    ...sheet.mixes.map((mix): Findable => {
      const name = `${words.listening.mix(mixNumber(sheet, mix.id))} ${whoHears(sheet, mix)}`;
      return { key: mix.id, kind: 'mix', name, place, leads: toMixes({ mixId: mix.id }) };
    }),
    ...sheet.sources.map(({ id, name }): Findable => {
      return { key: id, kind: 'source', name, place, leads: toMixes({ sourceId: id }) };
    }),
    ...derived.plan.patches.flatMap(({ sourceId, socketId }): Findable[] => {
      const socket = sockets.get(socketId ?? '');
      const name = `${socket} ${sourceName.get(sourceId)}`;
      return socket === undefined
        ? []
        : [{ key: `socket ${sourceId}`, kind: 'socket', name, place, leads: toMixes({ sourceId }) }];
    }),
    ...derived.plan.copies.flatMap(({ sourceId, channel, purpose }): Findable[] => {
      const name = `${channel} ${sourceName.get(sourceId)}, ${words.purpose[purpose].name}`;
      return channel === null
        ? []
        : [
            {
              key: `channel ${actId} ${channel}`,
              kind: 'channel',
              name,
              place,
              leads: toMixes({ sourceId }),
            },
          ];
    }),
  ];
}

/** A name of the archive; it leads to its past act. */
export function findablePast({ kind, name, act }: FoundInArchive): Findable {
  const { actId, actName, dayName, date } = act;
  const day = [dayName, date].filter((part) => part !== '').join(' ');
  return {
    key: `past ${kind} ${name} ${actId}`,
    kind: 'past',
    name,
    place: kind === 'act' ? day : `${actName}, ${day}`,
    leads: { look: { moment: 'recall', pastActId: actId } },
  };
}

type Letters = { name: string; whole: string };
const lettersOf = new WeakMap<Findable, Letters>();

/** What is compared with the letters typed; worked out once for each thing, since every key press asks for all. */
function letters(item: Findable): Letters {
  const known = lettersOf.get(item);
  if (known) return known;
  const name = folded(item.name);
  const made = { name, whole: `${name} ${folded(item.place)} ${item.kind}` };
  lettersOf.set(item, made);
  return made;
}

/** What the letters mean, the best first: a name that begins with them, then a word that does, then any place. */
export function findByText(all: readonly Findable[], text: string, most: number): Findable[] {
  const parts = folded(text).split(/\s+/).filter(Boolean);
  if (parts.length === 0) return all.filter((it) => it.kind === 'act' || it.kind === 'action').slice(0, most);
  const ranked = all.flatMap((item, order) => {
    const { name, whole } = letters(item);
    if (!parts.every((part) => whole.includes(part))) return [];
    const first = parts[0] ?? '';
    const rank = name.startsWith(first) ? 0 : name.includes(` ${first}`) ? 1 : name.includes(first) ? 2 : 3;
    return [{ item, rank, order }];
  });
  return ranked
    .sort((a, b) => a.rank - b.rank || a.order - b.order)
    .slice(0, most)
    .map(({ item }) => item);
}
