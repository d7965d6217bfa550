import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { weights } from '../questions.ts';

function pushTo(lists: Map<number, WorkInput[]>, key: number, input: WorkInput): void {
  const list = lists.get(key);
  if (list) list.push(input);
  else lists.set(key, [input]);
}

/** Asks about numbers written twice and numbers left out. */
export function checkNumbers(work: Work): void {
  const lists = new Map<number, WorkInput[]>();
  for (const input of work.inputs) if (input.numbered) pushTo(lists, input.found.list, input);
  const taken = new Set(work.inputs.map((input) => input.read.channel));
  for (const inputs of lists.values()) {
    askDoubles(work, inputs, taken);
    askGaps(work, inputs);
  }
}

function askDoubles(work: Work, inputs: readonly WorkInput[], taken: Set<number>): void {
  const first = new Map<number, WorkInput>();
  for (const input of inputs) {
    const before = first.get(input.read.channel);
    if (!before) {
      first.set(input.read.channel, input);
      continue;
    }
    if (before.found === input.found) continue;
    let free = Math.max(...taken) + 1;
    const gap = inputs
      .map((it) => it.read.channel + 1)
      .find((number) => !taken.has(number) && number > input.read.channel);
    if (gap !== undefined) free = gap;
    const answer = work.asker.ask({
      matter: 'number',
      at: input.found.at,
      ask: `Number ${input.read.channel} is written for "${shorten(before.read.name)}" and "${shorten(input.read.name)}". Which is right?`,
      options: [
        { value: 'keep', label: 'Keep both as written' },
        { value: String(free), label: `"${shorten(input.read.name)}" is number ${free}` },
      ],
      guessConfidence: 0.5,
      weight: weights.doubleNumber,
    });
    if (answer !== null && answer !== 'keep') {
      input.read.channel = Number(answer);
      taken.add(input.read.channel);
    }
  }
}

/** More gaps than this are a habit of the rider, not a slip. */
const mostGaps = 3;

function askGaps(work: Work, inputs: readonly WorkInput[]): void {
  const numbers = [...new Set(inputs.map((input) => input.read.channel))].sort((a, b) => a - b);
  const empty = new Set<number>();
  for (const { why } of work.found.notes.values()) {
    const number = /^Number (\d+) is left empty\.$/.exec(why)?.[1];
    if (number) empty.add(Number(number));
  }
  const missing: number[] = [];
  numbers.forEach((number, at) => {
    const next = numbers[at + 1];
    if (next === undefined || next - number > 12) return;
    for (let gap = number + 1; gap < next; gap++) if (!empty.has(gap)) missing.push(gap);
  });
  if (missing.length === 0 || missing.length > mostGaps) return;
  work.asker.ask({
    matter: 'gap',
    at: null,
    part: missing.join('+'),
    ask:
      missing.length === 1
        ? `Number ${missing[0]} is not in the list. Is a line missing?`
        : `The numbers ${missing.join(', ')} are not in the list. Are lines missing?`,
    options: [
      { value: 'empty', label: 'Left empty on purpose' },
      { value: 'ask', label: 'Ask the band' },
    ],
    guessConfidence: 0.7,
    weight: weights.missingNumber,
  });
}
