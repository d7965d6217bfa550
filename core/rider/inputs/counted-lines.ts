import { withoutBullet } from '../language/bullets.ts';
import { withDigits } from '../language/count-words.ts';
import { numberedText } from '../language/numbers.ts';
import type { Tongue } from '../language/source-name.ts';
import type { Line } from '../page/lines.ts';

/** Fewer lines than these are no list. */
const shortestList = 3;
/** Nobody counts more of one thing on a line. */
const mostOfOne = 8;

/**
 * "1 kick, 2 snares, 1 hat" line by line, and "two guitars": how many of each, not which. They are written as
 * "2x snares", which no other step takes for the number of a line.
 */
export function countsWritten(lines: readonly Line[], tongue: Tongue): Line[] {
  const counted = countedLines(lines);
  return lines.map((line, at) => {
    const written = counted.has(at) ? line.text : inWords(line, tongue);
    if (written === null) return line;
    const text = written.replace(
      /^(\s*(?:[-•*·–▪●]\s*)?)(\d)\s+/,
      (_, lead: string, count: string) => `${lead}${count === '1' ? '' : `${count}x `}`,
    );
    return { ...line, text, cells: [{ column: line.cells[0]?.column ?? 0, text }], loose: false };
  });
}

/** The line with the number word it begins with as a digit, or null where it begins with none. */
function inWords(line: Line, tongue: Tongue): string | null {
  if (line.cells.length !== 1 || line.text.length > 60) return null;
  const bare = withoutBullet(line.text);
  const lead = line.text.slice(0, line.text.length - bare.length);
  const digits = withDigits(bare, tongue);
  return /^\D/.test(bare) && /^[2-8]\s\p{L}/u.test(digits) && lead !== '' ? lead + digits : null;
}

/** Lines of lists whose leading numbers do not count up: they count things. */
function countedLines(lines: readonly Line[]): Set<number> {
  const counted = new Set<number>();
  let run: { at: number; number: number }[] = [];
  const close = () => {
    const falls = run.filter(({ number }, at) => at > 0 && number <= (run[at - 1]?.number ?? 0)).length;
    if (run.length >= shortestList && falls > 1 && falls * 3 >= run.length)
      for (const { at } of run) counted.add(at);
    run = [];
  };
  lines.forEach((line, at) => {
    const number = line.cells.length === 1 ? leadingCount(line.text) : null;
    if (number === null && at - (run.at(-1)?.at ?? at) > 1) close();
    if (number !== null) run.push({ at, number });
  });
  close();
  return counted;
}

function leadingCount(text: string): number | null {
  const numbered = numberedText(text);
  const [number = 0] = numbered?.numbers ?? [];
  return numbered && !numbered.marked && numbered.numbers.length === 1 && number <= mostOfOne ? number : null;
}
