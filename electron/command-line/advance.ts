import { basename, extname } from 'node:path';
import { deriveAct } from '../../core/derive/derive-act.ts';
import { readRider } from '../../core/rider/read-rider.ts';
import type { Question } from '../../core/rider/reading.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import { type ActReport, reportOfAct } from './act-report.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import { demoShowPath, type House, houseOfFile } from './house-of-file.ts';
import { printedReport } from './print-report.ts';
import { gridOfPath } from './rider-grid.ts';
import { showOfReading } from './show-of-reading.ts';

const usage = `Usage: npm run advance -- [--rig SHOW] [--json] FILE...
Reads riders against a house rig and prints for each: sources, mixes, feeds, the cue, findings, open questions.
  --rig SHOW  a show exported as JSON that holds the rig; without it the rig of the demo
  --json      the same as JSON (with "npm run --silent", nothing else is printed)
FILE is a CSV, TSV, text, XLSX, PDF or DOCX file, or "-" for text from standard input.
Exit code: 0 done, 1 a file could not be read (the others are printed all the same), 2 wrong use.`;

type Advanced = { file: string; act: string; report: ActReport; questions: Question[] };
type Refused = { file: string; refused: true; reason: string; todo: string };
type Result = Advanced | Refused;

process.exitCode = await advance();

async function advance(): Promise<number> {
  const given = argumentsOf({ rig: { type: 'string' }, json: { type: 'boolean', default: false } });
  if (!given || given.values.help || given.positionals.length === 0)
    return sayUsage(usage, given?.values.help);
  const house = await houseOfFile(given.values.rig ?? demoShowPath);
  if (!house.ok) return fail(house.problem);
  const results: Result[] = [];
  for (const file of given.positionals) results.push(await advanceFile(house.value, file));
  if (given.values.json) console.log(JSON.stringify(results, null, 2));
  else print(results);
  return results.some((it) => 'refused' in it) ? exitCodes.unreadable : exitCodes.done;
}

async function advanceFile({ house, rig }: House, file: string): Promise<Result> {
  const grid = await gridOfPath(file);
  if (!grid.ok) return { file, refused: true, reason: grid.problem.what, todo: grid.problem.todo };
  const reading = readRider(grid.value, {});
  const act = reading.actName || basename(file, extname(file)) || file;
  const { show, actId } = showOfReading(house, rig, reading, act);
  const sheet = actSheet(show, actId);
  if (!sheet) throw new Error(`The act “${act}” is not in the show made for it.`);
  return { file, act, report: reportOfAct(sheet, deriveAct(sheet)), questions: reading.questions };
}

function print(results: readonly Result[]): void {
  for (const result of results) {
    if ('refused' in result) console.error(`${result.reason} ${result.todo}\n`);
    else console.log(`${printedReport(`${result.act} (${result.file})`, result.report, result.questions)}\n`);
  }
}
