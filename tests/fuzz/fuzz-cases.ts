import { readdirSync, readFileSync } from 'node:fs';
import { seeded, shuffled } from '../../core/plan/day/seeded-order.ts';
import { isZip, type Mutation, mutate, mutateParts, mutationKinds } from '../helpers/mutate-files.ts';

/** A file to be damaged, by its name. */
export type Sample = { name: string; content: Uint8Array };

const folders = ['../fixtures/documents/', '../riders/', '../../assets/demo/riders/'];
const files = /\.(?:xlsx|pdf|docx|csv|tsv|txt|eml)$/;

/** Every rider and document of the tests and of the demo, in all forms. */
export function samplesOf(): Sample[] {
  return folders.flatMap((folder) => {
    const place = new URL(folder, import.meta.url);
    return readdirSync(place)
      .filter((name) => files.test(name))
      .sort()
      .map((name) => ({ name, content: readFileSync(new URL(encodeURIComponent(name), place)) }));
  });
}

type Next = () => number;
const upTo = (next: Next, most: number) => Math.floor(next() * most);

function oneMutation(next: Next): Mutation {
  return {
    kind: mutationKinds[upTo(next, mutationKinds.length)] ?? 'flip',
    at: next(),
    bytes: Uint8Array.from({ length: 1 + upTo(next, 40) }, () => upTo(next, 256)),
    length: 1 + upTo(next, 400),
  };
}

/** Changes a person or a program makes to a text: lines swapped, doubled and lost, other delimiters and encodings. */
const textChanges: ((text: string, next: Next) => string)[] = [
  (text, next) => shuffled(text.split('\n'), next).join('\n'),
  (text, next) =>
    text
      .split('\n')
      .filter(() => next() > 0.15)
      .join('\n'),
  (text, next) =>
    text
      .split('\n')
      .flatMap((line) => (next() > 0.8 ? [line, line] : [line]))
      .join('\n'),
  (text) => text.replaceAll(',', ';'),
  (text) => text.replaceAll(/[;\t]/g, ','),
  (text) => text.replaceAll('\n', '\r'),
  (text) => text.toUpperCase(),
  (text, next) => text.replace(/\p{L}/gu, (letter) => (next() > 0.97 ? '' : letter)),
  (text, next) => text.replace(/[ ,;:]/g, (mark) => (next() > 0.95 ? '\n' : mark)),
  (text, next) => text.replace(/\d/g, (digit) => (next() > 0.9 ? String(upTo(next, 10)) : digit)),
];

const encodings = ['utf8', 'utf16le', 'latin1'] as const;

/** The damaged file of one case: the same seed and number always give the same bytes. */
export function fuzzCase(samples: readonly Sample[], seed: number, number: number): Sample {
  const next = seeded(seed + number * 7919);
  const sample = samples[upTo(next, samples.length)];
  if (!sample) throw new Error('There are no files to change.');
  const changes = Array.from({ length: 1 + upTo(next, 6) }, () => oneMutation(next));
  const isText = /\.(?:csv|tsv|txt|eml)$/.test(sample.name);
  if (isText && next() < 0.6) {
    const change = textChanges[upTo(next, textChanges.length)] ?? ((text: string) => text);
    const encoding = encodings[upTo(next, encodings.length)] ?? 'utf8';
    return {
      name: sample.name,
      content: Buffer.from(change(Buffer.from(sample.content).toString(), next), encoding),
    };
  }
  const inside = isZip(sample.content) && next() < 0.7;
  return {
    name: sample.name,
    content: inside ? mutateParts(sample.content, changes) : changes.reduce(mutate, sample.content),
  };
}
