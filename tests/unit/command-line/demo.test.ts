import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { actSheet, actsOfDay } from '../../../core/show/act-sheet.ts';
import { ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { demoShowText, makeDemoShow } from '../../../electron/command-line/demo/demo-show.ts';
import { demoShowPath } from '../../../electron/command-line/house-of-file.ts';

const stored = readFileSync(demoShowPath, 'utf8');
const document = ShowDocument.parse(JSON.parse(stored));
const show = showFromRows(document);
const acts = actsOfDay(show, document.days[0]?.id ?? '');

test('the demo in the repository is what its riders are read as today (else: npm run make-demo)', async () => {
  expect(demoShowText(await makeDemoShow()) === stored).toBe(true);
});

test('eight acts in running order, none begins before the one before has ended', () => {
  expect(acts).toHaveLength(8);
  const times = acts.flatMap((act) => [act.startMinute ?? -1, act.endMinute ?? -1]);
  expect(times).toEqual([...times].sort((a, b) => a - b));
  expect(new Set(acts.map((act) => act.state))).toEqual(new Set(['ready', 'advancing']));
});

describe.each(acts.map((act) => ({ name: act.name, act })))('$name', ({ act }) => {
  const sheet = actSheet(show, act.id);
  if (!sheet) throw new Error(`${act.name} has no sheet`);
  const [rider] = document.riders.filter((it) => it.actId === act.id);
  if (!rider) throw new Error(`${act.name} has no rider`);
  const answers = Object.fromEntries(
    document.answers.filter((it) => it.riderId === rider.id).map((it) => [it.questionKey, it.value]),
  );
  const open = readRider(rider.grid, answers).questions.filter((it) => !(it.key in answers));

  test('is still open to questions exactly while it is being advanced', () => {
    expect(open.length > 0).toBe(act.state === 'advancing');
  });

  test('has a channel and a socket for every source, and more channels than sources', () => {
    const { plan } = deriveAct(sheet);
    expect(plan.copies.filter((copy) => copy.channel === null)).toEqual([]);
    expect(plan.patches.filter((patch) => patch.socketId === null)).toEqual([]);
    expect(plan.copies.length).toBeGreaterThan(sheet.sources.length);
  });

  test('has its performers on the plot', () => {
    expect(sheet.performers.length).toBeGreaterThan(0);
    const lost = sheet.performers.filter((it) => it.xM === null).map((it) => it.name);
    expect(lost).toEqual([]);
  });
});
