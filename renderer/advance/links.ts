import type { LineRef } from '../../core/rider/grid.ts';
import type { Reading } from '../../core/rider/reading.ts';

/** What is pointed at or chosen on Advance: a line of the rider, an input or mix of the reading, or a question. */
export type Pointed =
  | { of: 'line'; at: LineRef }
  | { of: 'input'; key: string }
  | { of: 'mix'; key: string }
  | { of: 'question'; key: string }
  | null;

/** Everything that belongs together with what is pointed at. */
export type Linked = {
  lines: ReadonlySet<string>;
  inputs: ReadonlySet<string>;
  mixes: ReadonlySet<string>;
  questions: ReadonlySet<string>;
};

export const lineKey = ({ sheet, row }: LineRef): string => `${sheet}:${row}`;

const nothingLinked: Linked = {
  lines: new Set(),
  inputs: new Set(),
  mixes: new Set(),
  questions: new Set(),
};

/** Lines, inputs, mixes and questions that belong to what is pointed at; found through the lines they share. */
export function linkedTo(reading: Reading, pointed: Pointed): Linked {
  if (pointed === null) return nothingLinked;
  const lines = new Set(linesOf(reading, pointed));
  const touching = reading.lines.filter((line) => lines.has(lineKey(line.at)));
  const own = (of: 'input' | 'mix' | 'question') => (pointed.of === of ? [pointed.key] : []);
  // Pointing at one thing does not light up its neighbours on the same line, only a line lights up all it holds.
  const fromLines = (of: 'input' | 'mix', keys: (line: Reading['lines'][number]) => string[]) =>
    pointed.of === 'line' || pointed.of === 'question' ? touching.flatMap(keys) : own(of);
  return {
    lines,
    inputs: new Set(fromLines('input', (line) => line.inputKeys)),
    mixes: new Set(fromLines('mix', (line) => line.mixKeys)),
    questions: new Set(
      pointed.of === 'question' ? own('question') : touching.flatMap((line) => line.questionKeys),
    ),
  };
}

function linesOf(reading: Reading, pointed: NonNullable<Pointed>): string[] {
  switch (pointed.of) {
    case 'line':
      return [lineKey(pointed.at)];
    case 'input':
      return reading.inputs
        .filter((input) => input.key === pointed.key)
        .flatMap(({ lines }) => lines.map(lineKey));
    case 'mix':
      return reading.mixes
        .filter((mix) => mix.key === pointed.key)
        .flatMap(({ lines }) => lines.map(lineKey));
    case 'question': {
      const at = reading.questions.find((question) => question.key === pointed.key)?.at;
      const touched = reading.lines.filter((line) => line.questionKeys.includes(pointed.key));
      return [...touched.map((line) => lineKey(line.at)), ...(at ? [lineKey(at)] : [])];
    }
  }
}

/** Lines that still wait for an answer: the number that must reach zero. */
export function openLineCount(reading: Reading): number {
  return reading.lines.filter((line) => line.outcome === 'question').length;
}
