import { z } from 'zod';
import { factsOfKind, type SourceGroup } from '../show/source-kinds.ts';
import { Amount } from '../show/words.ts';
import type { ReadInput, Reading, ReadMix, ReadWish } from './reading.ts';

const NeutralWish = z.strictObject({
  source: z.string(),
  channels: z.union([z.array(z.number().int()), z.literal('all')]),
  amount: z.union([Amount, z.number()]),
});

/** What one rider says, in plain words: the shape of the command `read-rider`. */
export const NeutralReading = z.strictObject({
  refused: z.boolean(),
  reason: z.string().nullable(),
  inputs: z.array(
    z.strictObject({
      channel: z.number().int(),
      name: z.string(),
      kind: z.string(),
      pair: z.number().int().nullable(),
      feed: z.enum(['mic', 'di']).nullable(),
      phantom: z.boolean().nullable(),
      stand: z.string().nullable(),
      position: z.string().nullable(),
      performer: z.string().nullable(),
    }),
  ),
  mixes: z.array(
    z.strictObject({
      label: z.string(),
      listener: z.string().nullable(),
      kind: z.enum(['wedge', 'in-ear', 'side fill', 'drum fill']).nullable(),
      format: z.enum(['mono', 'stereo']).nullable(),
      own: z.boolean().nullable(),
      wishes: z.array(NeutralWish),
    }),
  ),
  open: z.array(z.strictObject({ line: z.string(), why: z.string() })),
});
export type NeutralReading = z.infer<typeof NeutralReading>;
type NeutralMix = NeutralReading['mixes'][number];

/** The neutral shape of a file that could not be read. */
export function neutralRefusal(reason: string): NeutralReading {
  return { refused: true, reason, inputs: [], mixes: [], open: [] };
}

/** A reading in the neutral shape. */
export function neutralReading(reading: Reading): NeutralReading {
  const channels = new Map(reading.inputs.map((input) => [input.key, input.channel]));
  return {
    refused: false,
    reason: null,
    inputs: reading.inputs.map((input) => ({
      channel: input.channel,
      name: input.name,
      kind: input.kind,
      pair: input.pairKey === null ? null : (channels.get(input.pairKey) ?? null),
      feed:
        input.pickUp === 'di' ? 'di' : input.pickUp === 'mic' || input.pickUp === 'wireless' ? 'mic' : null,
      phantom: phantomSaid(input),
      stand: input.stand === '' ? null : input.stand,
      position: input.position === '' ? null : input.position,
      performer: input.performer,
    })),
    mixes: reading.mixes.map((mix) => neutralMix(reading, mix)),
    open: openLines(reading),
  };
}

function phantomSaid(input: ReadInput): boolean | null {
  if (input.phantom === 'not said') return null;
  return input.phantom === 'needed';
}

function neutralMix(reading: Reading, mix: ReadMix): NeutralMix {
  return {
    label: mix.label,
    listener: mix.listeners.length === 0 ? null : mix.listeners.join(' & '),
    kind: mix.deviceKind === 'front fill' ? 'wedge' : mix.deviceKind,
    format: mix.format,
    own: mix.ownDevice,
    wishes: wishesOf(reading, mix, new Set()),
  };
}

/** A mix's wishes; one that follows another mix is told by the other's wishes, but for what it says itself. */
function wishesOf(reading: Reading, mix: ReadMix, seen: ReadonlySet<string>): NeutralMix['wishes'] {
  if (seen.has(mix.key)) return [];
  const own = new Set<number>();
  for (const { target } of mix.wishes) {
    const channels = target.of === 'mix' ? 'all' : channelsOf(reading, target);
    if (channels !== 'all') for (const channel of channels) own.add(channel);
  }
  return mix.wishes.flatMap((wish) => {
    const { target } = wish;
    if (target.of !== 'mix')
      return [
        {
          source: wish.words,
          channels: channelsOf(reading, target),
          amount: wish.levelDb ?? wish.amount ?? 'some',
        },
      ];
    const other = reading.mixes.find((it) => it.key === target.mixKey);
    if (!other) return [];
    return wishesOf(reading, other, new Set([...seen, mix.key])).flatMap((it) => {
      const channels =
        it.channels === 'all' ? it.channels : it.channels.filter((channel) => !own.has(channel));
      return channels.length === 0 ? [] : [{ ...it, channels, source: `${wish.words}: ${it.source}` }];
    });
  });
}

function channelsOf(reading: Reading, target: Exclude<ReadWish['target'], { of: 'mix' }>): number[] | 'all' {
  if (target.of === 'everything') return 'all';
  if (target.of === 'group') return channelsOfGroup(reading, target.group);
  const keys = new Set(target.inputKeys);
  return distinct(reading.inputs.filter((input) => keys.has(input.key)).map((input) => input.channel));
}

const channelsOfGroup = (reading: Reading, group: SourceGroup) =>
  distinct(
    reading.inputs.filter((input) => factsOfKind(input.kind).group === group).map((input) => input.channel),
  );

const distinct = (numbers: readonly number[]) => [...new Set(numbers)].sort((a, b) => a - b);

/** Below this a guess is in real doubt; above it the kind is the usual one for such words. */
const fairlySure = 0.7;

/** Every line with a question, and every guess that is in real doubt. */
function openLines(reading: Reading): NeutralReading['open'] {
  const doubtful = new Set(
    reading.inputs.filter((input) => input.kindConfidence < fairlySure).map((input) => input.key),
  );
  return reading.lines
    .filter(
      (line) =>
        line.outcome === 'question' ||
        (line.outcome === 'guessed' &&
          (line.inputKeys.length === 0 || line.inputKeys.some((key) => doubtful.has(key)))),
    )
    .map((line) => ({ line: line.text, why: line.why }));
}
