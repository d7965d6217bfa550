import { unzipSync, zipSync } from 'fflate';

/** One change of a file's bytes. */
export type Mutation = {
  kind: 'flip' | 'cut' | 'insert' | 'repeat';
  /** Where, as a part of the whole, 0 to 1. */
  at: number;
  bytes: Uint8Array;
  length: number;
};

export const mutationKinds = ['flip', 'cut', 'insert', 'repeat'] as const;

export function mutate(content: Uint8Array, { kind, at, bytes, length }: Mutation): Uint8Array<ArrayBuffer> {
  const place = Math.floor(at * content.length);
  const [before, after] = [content.subarray(0, place), content.subarray(place)];
  if (kind === 'flip') return Buffer.concat([before, bytes, after.subarray(bytes.length)]);
  if (kind === 'cut') return Buffer.concat([before, after.subarray(length)]);
  if (kind === 'insert') return Buffer.concat([before, bytes, after]);
  return Buffer.concat([before, after.subarray(0, length), after]);
}

export const isZip = (content: Uint8Array): boolean => content[0] === 0x50 && content[1] === 0x4b;

/** Changes inside the parts of an archive reach further than changes of its packed bytes. */
export function mutateParts(content: Uint8Array, changes: readonly Mutation[]): Uint8Array {
  const parts = Object.entries(unzipSync(content)).filter(([name]) => name.endsWith('.xml'));
  changes.forEach((change, place) => {
    const part = parts[place % parts.length];
    if (part) part[1] = mutate(part[1], change);
  });
  return zipSync(Object.fromEntries(parts), { level: 1 });
}
