import { showFromRows } from '../../core/show/show.ts';
import { exportedText } from '../exchange/exported-text.ts';
import { argumentsOf, exitCodes } from './command.ts';
import { demoShowPath } from './house-of-file.ts';
import { openOwnShow } from './own-show.ts';
import { showOfFile } from './show-of-file.ts';

const usage = `Usage: npm run --silent export-show -- [--own] [--act NAME]
Prints the demo day as JSON, in the shape of every exported show (assets/schema/show.schema.json).
  --own       the show of this machine instead; close its window first
  --act NAME  only this act, to send to a colleague (assets/schema/act.schema.json)
Exit code: 0 done, 1 the show could not be read or has no such act, 2 wrong use.`;

process.exitCode = await exportShow();

async function exportShow(): Promise<number> {
  const given = argumentsOf({ own: { type: 'boolean', default: false }, act: { type: 'string' } });
  if (given?.values.help) {
    console.log(usage);
    return exitCodes.done;
  }
  if (!given || given.positionals.length > 0) {
    console.error(usage);
    return exitCodes.wrongUse;
  }
  const { own, act } = given.values;
  const document = await (own ? ownDocument() : showOfFile(demoShowPath));
  if (!document.ok) {
    console.error(`${document.problem.what} ${document.problem.todo}`);
    return exitCodes.unreadable;
  }
  const show = showFromRows(document.value);
  const wanted = act === undefined ? null : [...show.acts.values()].find(({ name }) => name === act)?.id;
  const exported = wanted === undefined ? null : exportedText(show, wanted);
  if (!exported) {
    const names = [...show.acts.values()].map(({ name }) => `“${name}”`).join(', ');
    console.error(`The show has no act “${act}”. It has: ${names || 'none'}.`);
    return exitCodes.unreadable;
  }
  process.stdout.write(exported.text);
  return exitCodes.done;
}

async function ownDocument() {
  const opened = openOwnShow();
  if (!opened.ok) return opened;
  const answer = await opened.value.call('show.open', {});
  opened.value.close();
  return answer.ok ? ({ ok: true, value: answer.value.show } as const) : answer;
}
