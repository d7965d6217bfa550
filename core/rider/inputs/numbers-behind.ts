import { channelNumbers } from '../language/numbers.ts';
import { tidy } from '../language/text.ts';
import type { Line } from '../page/lines.ts';

/** "bass drum - 1", "Toms: 3, 4 (two of them)", "Hat ..... ch 5": a name, then its number, then what is said of it. */
const behind =
  /^\s*[-•*·–▪●]?\s*(?<name>\p{L}.*?)\s*(?:[-–—:=>→#]+|\.{2,}|\s(?:ch|channel|kanal|canal|canale|kanaal|voie|tranche|n°|nr)\.?)\s*(?:#|ch\.?|n°|nr\.?|kanal|canale?|kanaal)?\s*(?<numbers>\d{1,2}(?:\s*(?:[,/+&]|and|und|et|y|e|en|-|–|\s)\s*\d{1,2})*)(?<rest>$|\s*[,;(.\-–—].*|\s+\p{L}.*)$/iu;

type Numbered = {
  at: number;
  name: string;
  numbers: number[];
  rest: string;
  /** A word right behind the number: it may be a number of things. */
  isCount: boolean;
};

/** Fewer lines than these are no list: a number may say anything. */
const shortestRun = 3;
/** Lines without a number between two of a list. */
const widestGap = 3;

/** Lines of lists that write the number behind the name, with the number in front. Other lines stay as they are. */
export function numbersInFront(lines: readonly Line[]): Line[] {
  const turned = [...lines];
  for (const run of runsOf(lines)) {
    if (run.length < shortestRun || run.filter((it) => it.isCount).length * 2 > run.length) continue;
    for (const { at, name, numbers, rest } of run) {
      const line = lines[at];
      if (!line) continue;
      const text = tidy(`${numbers.join('/')}. ${name}${rest === '' ? '' : ` - ${rest}`}`);
      turned[at] = { ...line, text, cells: [{ column: line.cells[0]?.column ?? 0, text }], loose: false };
    }
  }
  return turned;
}

/** Lines near one another whose numbers go on from line to line. */
function runsOf(lines: readonly Line[]): Numbered[][] {
  const runs: Numbered[][] = [];
  lines.forEach((line, at) => {
    const read = readBehind(line, at);
    if (!read) return;
    const run = runs.at(-1);
    const last = run?.at(-1);
    const next = (last?.numbers.at(-1) ?? 0) + 1;
    const [first = 0] = read.numbers;
    if (run && last && at - last.at <= widestGap && first >= next && first <= next + 1) run.push(read);
    else runs.push([read]);
  });
  return runs;
}

function readBehind(line: Line, at: number): Numbered | null {
  if (line.cells.length !== 1 || line.part > 0) return null;
  const { name, numbers, rest } = behind.exec(line.text)?.groups ?? {};
  if (!name || !numbers || name.length > 50) return null;
  const list = channelNumbers(numbers.replace(/(?<=\d)\s+(?=\d)/g, ','));
  if (list.length === 0) return null;
  const said = rest ?? '';
  return {
    at,
    name,
    numbers: list,
    rest: said.replace(/^[\s,;.\-–—]+/, ''),
    isCount: /^\s+\p{L}/u.test(said),
  };
}
