import { argumentsOf, exitCodes } from './command.ts';
import { demoShowPath } from './house-of-file.ts';
import { showOfFile } from './show-of-file.ts';

const usage = `Usage: npm run --silent export-show
Prints the demo day as JSON, in the shape of every exported show (assets/schema/show.schema.json).
Exit code: 0 done, 1 the demo could not be read, 2 wrong use.`;

process.exitCode = await exportShow();

async function exportShow(): Promise<number> {
  const given = argumentsOf({});
  if (given?.values.help) {
    console.log(usage);
    return exitCodes.done;
  }
  if (!given || given.positionals.length > 0) {
    console.error(usage);
    return exitCodes.wrongUse;
  }
  const document = await showOfFile(demoShowPath);
  if (!document.ok) {
    console.error(`${document.problem.what} ${document.problem.todo}`);
    return exitCodes.unreadable;
  }
  console.log(JSON.stringify(document.value, null, 1));
  return exitCodes.done;
}
