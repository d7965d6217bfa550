import { neutralReading, neutralRefusal } from '../../core/rider/neutral.ts';
import { readRider } from '../../core/rider/read-rider.ts';
import { argumentsOf, exitCodes, sayUsage } from './command.ts';
import { gridOfPath } from './rider-grid.ts';

const usage = `Usage: npm run --silent read-rider -- FILE
Prints as JSON what one rider says: its inputs, mixes and wishes, and every line that is left to the engineer.
FILE is a CSV, TSV, text, XLSX, PDF or DOCX file, or "-" for text from standard input.
Exit code: 0 done, 1 the file could not be read ("refused" is true and "reason" says why), 2 wrong use.`;

process.exitCode = await readOne();

async function readOne(): Promise<number> {
  const given = argumentsOf({});
  const [file, ...more] = given?.positionals ?? [];
  if (given?.values.help || file === undefined || more.length > 0) return sayUsage(usage, given?.values.help);
  const grid = await gridOfPath(file);
  if (!grid.ok) {
    const reason = `${grid.problem.what} ${grid.problem.todo}`;
    console.log(JSON.stringify(neutralRefusal(reason), null, 2));
    return exitCodes.unreadable;
  }
  console.log(JSON.stringify(neutralReading(readRider(grid.value, {})), null, 2));
  return exitCodes.done;
}
