import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** Deeper than this a value is made into text at once: what is printed has its long lists above it. */
const deepest = 5;
const pieceLength = 1 << 16;

/**
 * Prints a value as `JSON.stringify` with an indent of 1 would, piece by piece: the text of all feeds of thousands of
 * sources is longer than one string may be.
 */
export async function printJson(value: unknown): Promise<void> {
  await pipeline(Readable.from(joined(jsonPieces(value))), process.stdout, { end: false });
}

function* joined(pieces: Iterable<string>): Generator<string> {
  let text = '';
  for (const piece of pieces) {
    text += piece;
    if (text.length < pieceLength) continue;
    yield text;
    text = '';
  }
  yield `${text}\n`;
}

/** The text of a value in pieces. `line` is the line break with the indent that the value stands in. */
export function* jsonPieces(value: unknown, line = '\n', depth = 0): Generator<string> {
  if (depth === deepest || typeof value !== 'object' || value === null) {
    // A line break inside a string is written as \n, so those in the text are all between values.
    yield (JSON.stringify(value, null, 1) ?? 'null').replaceAll('\n', line);
    return;
  }
  const isList = Array.isArray(value);
  const parts: [start: string, part: unknown][] = isList
    ? value.map((part) => ['', part])
    : Object.entries(value).flatMap(([key, part]): [string, unknown][] =>
        part === undefined ? [] : [[`${JSON.stringify(key)}: `, part]],
      );
  const [open, close] = isList ? '[]' : '{}';
  yield open ?? '';
  let before = '';
  for (const [start, part] of parts) {
    yield `${before}${line} ${start}`;
    yield* jsonPieces(part, `${line} `, depth + 1);
    before = ',';
  }
  yield parts.length > 0 ? `${line}${close}` : (close ?? '');
}
