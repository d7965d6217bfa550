import { squash } from '../language/text.ts';
import type { ReadInput, Reading, ReadMix, ReadWish } from '../reading.ts';

/**
 * The later reading under the keys of the earlier one: an input or mix that both have gets the earlier key, so that
 * a line put in between does not make all that follow it new. What only the later one has gets a key of its own.
 */
export function alignReading(before: Reading, after: Reading): Reading {
  const inputKeys = pairKeys(before.inputs, after.inputs, inputTests);
  const mixKeys = pairKeys(before.mixes, after.mixes, mixTests);
  const input = (key: string) => inputKeys.get(key) ?? key;
  const mix = (key: string) => mixKeys.get(key) ?? key;
  return {
    ...after,
    inputs: after.inputs.map((it) => ({
      ...it,
      key: input(it.key),
      pairKey: it.pairKey === null ? null : input(it.pairKey),
    })),
    mixes: after.mixes.map((it) => ({
      ...it,
      key: mix(it.key),
      wishes: it.wishes.map((wish) => ({ ...wish, target: alignedTarget(wish.target, input, mix) })),
    })),
    lines: after.lines.map((line) => ({
      ...line,
      inputKeys: line.inputKeys.map(input),
      mixKeys: line.mixKeys.map(mix),
    })),
  };
}

function alignedTarget(
  target: ReadWish['target'],
  input: (key: string) => string,
  mix: (key: string) => string,
): ReadWish['target'] {
  if (target.of === 'inputs') return { ...target, inputKeys: target.inputKeys.map(input) };
  return target.of === 'mix' ? { ...target, mixKey: mix(target.mixKey) } : target;
}

type Test<T> = (before: T, after: T) => boolean;

const isSameName = (a: ReadInput, b: ReadInput) => squash(a.name) === squash(b.name);
const isSameKind = (a: ReadInput, b: ReadInput) => a.kind === b.kind && a.side === b.side;

/** The surest first. A number alone pairs nothing: numbers are what moves when a line is put in. */
const inputTests: readonly Test<ReadInput>[] = [
  (a, b) => a.channel === b.channel && isSameName(a, b) && isSameKind(a, b),
  (a, b) => isSameName(a, b) && isSameKind(a, b) && a.performer === b.performer,
  (a, b) => isSameName(a, b) && isSameKind(a, b),
  isSameName,
  (a, b) => a.channel === b.channel && a.kind !== 'other' && isSameKind(a, b),
];

const isSameLabel = (a: ReadMix, b: ReadMix) => squash(a.label) === squash(b.label);
const isHeardBySame = (a: ReadMix, b: ReadMix) =>
  a.listeners.length > 0 && a.listeners.map(squash).join() === b.listeners.map(squash).join();

const mixTests: readonly Test<ReadMix>[] = [
  (a, b) => isSameLabel(a, b) && isHeardBySame(a, b),
  isHeardBySame,
  (a, b) => isSameLabel(a, b) && a.number === b.number,
  isSameLabel,
  (a, b) => a.number === b.number && a.deviceKind === b.deviceKind,
];

/** Later key to earlier key, or to a key that the earlier reading has not. */
function pairKeys<T extends { key: string }>(
  before: readonly T[],
  after: readonly T[],
  tests: readonly Test<T>[],
): ReadonlyMap<string, string> {
  const free = new Set(before);
  const keys = new Map<string, string>();
  for (const test of tests)
    for (const later of after) {
      if (keys.has(later.key)) continue;
      const found = [...free].find((earlier) => test(earlier, later));
      if (!found) continue;
      keys.set(later.key, found.key);
      free.delete(found);
    }
  for (const { key } of after) if (!keys.has(key)) keys.set(key, `later ${key}`);
  return keys;
}
