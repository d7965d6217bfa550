import { showFromRows } from '../../core/show/show.ts';
import { exportedText } from '../exchange/exported-text.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import { demoShowPath } from './house-of-file.ts';
import { withOwnShow } from './own-show.ts';
import { showOfFile } from './show-of-file.ts';

const usage = `Usage: npm run --silent export-show -- [--own] [--act NAME]
Prints the demo day as JSON, in the shape of every exported show (assets/schema/show.schema.json).
  --own       the show of this machine instead; close its window first
  --act NAME  only this act, to send to a colleague (assets/schema/act.schema.json)
Exit code: 0 done, 1 the show could not be read or has no such act, 2 wrong use.`;

process.exitCode = await exportShow();

async function exportShow(): Promise<number> {
  const given = argumentsOf({ own: { type: 'boolean', default: false }, act: { type: 'string' } });
  if (!given || given.values.help || given.positionals.length > 0) return sayUsage(usage, given?.values.help);
  const { own, act } = given.values;
  const document = await (own ? ownDocument() : showOfFile(demoShowPath));
  if (!document.ok) return fail(document.problem);
  const show = showFromRows(document.value);
  const wanted = act === undefined ? null : [...show.acts.values()].find(({ name }) => name === act)?.id;
  const exported = wanted === undefined ? null : exportedText(show, wanted);
  if (!exported) {
    const names = [...show.acts.values()].map(({ name }) => `“${name}”`).join(', ');
    return fail(`The show has no act “${act}”. It has: ${names || 'none'}.`);
  }
  process.stdout.write(exported.text);
  return exitCodes.done;
}

async function ownDocument() {
  const answer = await withOwnShow((show) => show.call('show.open', {}));
  return answer.ok ? ({ ok: true, value: answer.value.show } as const) : answer;
}
