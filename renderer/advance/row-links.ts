import { sureEnough } from '../../core/rider/page/line-accounts.ts';
import type { Reading } from '../../core/rider/reading.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';

/** Which row of the act came from which input or mix of a rider, both ways. */
export type RowLinks = {
  inputOfSource: ReadonlyMap<Id, string>;
  mixOfMix: ReadonlyMap<Id, string>;
  /** Sources whose kind is only a guess that nobody has put right. */
  guessedSources: ReadonlySet<Id>;
  sourcesOf(inputKeys: ReadonlySet<string>): ReadonlySet<Id>;
  mixesOf(mixKeys: ReadonlySet<string>): ReadonlySet<Id>;
};

/** Joined by the rider's number and name; where a name was put right by hand, by the number alone. */
export function rowLinks(sheet: ActSheet, reading: Reading): RowLinks {
  const inputOfSource = new Map<Id, string>();
  for (const source of sheet.sources) {
    const sameNumber = reading.inputs.filter((input) => input.channel === source.riderLine);
    const input =
      sameNumber.find((it) => it.name === source.name) ??
      sameNumber[0] ??
      reading.inputs.find((it) => it.name === source.name);
    if (input) inputOfSource.set(source.id, input.key);
  }
  const guesses = new Map(
    reading.inputs.flatMap((it) => (it.kindConfidence < sureEnough ? [[it.key, it.kind] as const] : [])),
  );
  const guessed = sheet.sources.filter(({ id, kind }) => guesses.get(inputOfSource.get(id) ?? '') === kind);
  const mixOfMix = new Map<Id, string>();
  sheet.mixes.forEach((mix, place) => {
    const read = reading.mixes.find((it) => it.label === mix.name) ?? reading.mixes[place];
    if (read) mixOfMix.set(mix.id, read.key);
  });
  return {
    inputOfSource,
    mixOfMix,
    guessedSources: new Set(guessed.map(({ id }) => id)),
    sourcesOf: (keys) => idsOf(inputOfSource, keys),
    mixesOf: (keys) => idsOf(mixOfMix, keys),
  };
}

function idsOf(keyOfId: ReadonlyMap<Id, string>, keys: ReadonlySet<string>): Set<Id> {
  return new Set([...keyOfId].flatMap(([id, key]) => (keys.has(key) ? [id] : [])));
}
