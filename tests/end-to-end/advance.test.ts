import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { AdvancePage } from './pages/advance-page.ts';
import { Foldbook } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();
const lanternRow = join(import.meta.dirname, '..', 'fixtures', 'lantern-row.csv');

const csv = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

async function start() {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  return { foldbook, advance: new AdvancePage(foldbook), mixes: new MixesPage(foldbook) };
}

async function bringIn() {
  const all = await start();
  await all.advance.bringInNewAct(lanternRow);
  await expect.poll(() => all.foldbook.actName()).toBe('Lantern Row');
  return all;
}

test('from a rider to a plan: bring in, answer, choose a copy, kill the program, find it all again', async () => {
  const { foldbook, advance, mixes } = await bringIn();
  expect(await advance.counter()).toBe('1 line not settled');
  expect(await advance.questions().innerText()).toContain('What is "Tin can"?');
  await advance.questions().focus();
  await foldbook.press('2');
  await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
  expect(await advance.source('Tin can')).toContain('lead vocal');

  await mixes.open();
  const before = await mixes.feed('Kick in', 'Bram');
  expect(before).toMatch(/^monitors, proposed, /);
  await mixes.choose('Kick in', 'Bram');
  await mixes.openDetails();
  await mixes.chooseInDetails('Copy', 'front of house');
  await expect.poll(() => mixes.feed('Kick in', 'Bram')).toMatch(/^front of house, decided, /);
  expect(await foldbook.listeningLine()).toMatch(/^Listening to Bram, mix 2, in-ears stereo, on cue pack/);
  await mixes.choose('Kick in', 'Nell');
  expect(await foldbook.listeningLine()).toMatch(/^Listening to Nell, mix 1, wedge, on cue wedge/);
  await foldbook.saved();

  await foldbook.kill();
  await foldbook.reopen();
  await foldbook.press('Control+k');
  await foldbook.page.keyboard.type('lantern');
  await foldbook.press('Enter');
  expect(await foldbook.actName()).toBe('Lantern Row');
  await mixes.open();
  expect(await mixes.feed('Kick in', 'Bram')).toMatch(/^front of house, decided, /);
  await foldbook.goTo('Advance');
  await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
  expect(await advance.source('Tin can')).toContain('lead vocal');
});

describe('a rider that was brought in', () => {
  test('is shown as it came beside what it was taken to mean', async () => {
    const { advance } = await bringIn();
    expect(await advance.riderLine('OH L').innerText()).toMatch(/small condenser/);
    expect(await advance.source('OH L')).toEqual(
      expect.arrayContaining(['3', 'overhead', '4', 'mic', 'needed', 'Bram']),
    );
    expect(await advance.mixes().getByRole('gridcell', { name: 'in-ears', exact: true }).count()).toBe(1);
  });

  test('links a line, its source and its question when one of them is pointed at', async () => {
    const { advance } = await bringIn();
    await advance.riderLine('Lead vocal').first().hover();
    await expect.poll(() => advance.sourceRow('Lead vocal').getAttribute('class')).toBe('is-marked');
    await advance.sourceRow('Bass').hover();
    await expect.poll(() => advance.riderLine('5 | Bass').getAttribute('aria-selected')).toBe('true');
    await advance.questions().getByText('What is "Tin can"?').hover();
    await expect.poll(() => advance.sourceRow('Tin can').getAttribute('class')).toBe('is-marked');
    expect(await advance.riderLine('Tin can').getAttribute('aria-selected')).toBe('true');
  });

  test('keeps what was put right by hand when a question is answered and asked again', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.sourceRow('Tin can').getByRole('gridcell', { name: 'Tin can', exact: true }).click();
    await foldbook.page.keyboard.type('Megaphone');
    await foldbook.press('Enter');
    await advance.questions().focus();
    await foldbook.press('2');
    await expect.poll(() => advance.source('Megaphone')).toContain('lead vocal');
    await advance.questions().getByText('1 answered').click();
    await advance
      .questions()
      .getByRole('button', { name: /Ask again/ })
      .click();
    await expect.poll(() => advance.counter()).toBe('1 line not settled');
    expect(await advance.source('Megaphone')).not.toContain('lead vocal');
  });

  test('and its answer go and come with undo and redo', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.questions().focus();
    await foldbook.press('2');
    await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
    await foldbook.saved();
    await foldbook.press('Control+z');
    await expect.poll(() => advance.counter()).toBe('1 line not settled');
    await foldbook.press('Control+Shift+z');
    await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
  });

  test('takes a kind by its first letters, and refuses one that does not exist', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.sourceRow('Bass').getByRole('gridcell', { name: 'bass di', exact: true }).click();
    await foldbook.page.keyboard.type('gizmo');
    await foldbook.press('Enter');
    expect(await advance.sources().getByRole('alert').innerText()).toMatch(/“gizmo” is not known here/);
    await foldbook.press('Escape');
    await foldbook.page.keyboard.type('double');
    await foldbook.press('Enter');
    expect(await advance.source('Bass')).toContain('double bass');
  });
});

describe('a word that is taught', () => {
  const second = (name: string) => ({
    name,
    mimeType: 'text/csv',
    buffer: Buffer.from('Ch,Source,Mic\n1,Kick,mic\n2,Tin can,own mic\n'),
  });

  test('holds for the riders of every band until it is forgotten, and one undo takes it back', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.questions().focus();
    await foldbook.press('w', 'w');
    expect(await advance.remembering('Tin can')).toBe('all');
    await foldbook.press('2');
    await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
    expect(await advance.source('Tin can')).toContain('lead vocal');
    await advance.bringInNewAct(second('second.csv'));
    await expect.poll(() => foldbook.actName()).toBe('second');
    expect(await advance.source('Tin can')).toContain('lead vocal');
    await advance.forget('Tin can');
    await expect.poll(() => advance.source('Tin can')).not.toContain('lead vocal');
    await foldbook.saved();
    await foldbook.press('Control+z');
    await expect.poll(() => advance.source('Tin can')).toContain('lead vocal');
  });

  test('for one band is not heard of in the rider of another', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.questions().focus();
    await foldbook.press('w', '2');
    await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
    await advance.bringInNewAct(second('second.csv'));
    await expect.poll(() => foldbook.actName()).toBe('second');
    expect(await advance.questions().innerText()).toContain('What is "Tin can"?');
  });
});

/** A rider with a question of every weight; its lines stand in another order than what they block. */
const doubtful = {
  name: 'herons.txt',
  mimeType: 'text/plain',
  buffer: Buffer.from(
    [
      'Input list',
      '1 Kick',
      '2 Backing Vox Bea',
      '3 Backing Vox Cleo',
      '4 Keys L/R DI',
      '5 Zorbulator',
      '',
      'Monitors',
      'Mix 1 Bea: the girls a bit, kick',
      'Mix 2 Cleo: girls loud',
    ].join('\n'),
  ),
};

test('questions come in the order of what they block, say their guess and how sure it is, and take one key each', async () => {
  const { foldbook, advance } = await start();
  await advance.bringInNewAct(doubtful);
  await expect.poll(() => foldbook.actName()).toBe('herons');
  expect(await advance.asked()).toEqual([
    expect.stringContaining('What is "Zorbulator"?'),
    expect.stringContaining('"Keys L/R DI" has one number.'),
    expect.stringContaining('Mix 1 wishes "the girls a bit"'),
    expect.stringContaining('Mix 2 wishes "girls loud"'),
  ]);
  expect(await advance.guess()).toMatch(/A source of another kind \(taken for now, without a hint\)/);
  await advance.questions().focus();
  await foldbook.press('2');
  await expect.poll(() => advance.guess()).toMatch(/Two lines, a stereo pair \(taken for now, 75.% sure\)/);
  await foldbook.press('1');
  await expect.poll(() => advance.guess()).toMatch(/Leave the wish out \(taken for now, 30.% sure\)/);

  // The word of a wish is remembered by its answer, and the next wish with it needs none.
  await foldbook.press('w', '4');
  await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
  await advance.riderLine('Mix 2 Cleo').click();
  await expect.poll(() => advance.reason()).toContain('Your own word: “girls” means backing vocals.');
});

test('a word is taught without a question, for a group or a device, holds at once and is forgotten again', async () => {
  const { foldbook, advance } = await start();
  await advance.bringInNewAct(doubtful);
  await expect.poll(() => foldbook.actName()).toBe('herons');
  await advance.teach('the girls', 'backing vocals', 'this band');
  await expect.poll(async () => (await advance.asked()).length).toBe(3);
  await advance.teach('girls', 'backing vocals', 'every band');
  await expect.poll(async () => (await advance.asked()).length).toBe(2);
  await advance.forget('girls');
  await expect.poll(async () => (await advance.asked()).length).toBe(3);
  await foldbook.page.getByRole('button', { name: /^Own words/ }).click();
  expect((await new AxeBuilder({ page: foldbook.page }).analyze()).violations).toEqual([]);
});

test('what was answered for a band is answered as before on its next rider, and can be asked again', async () => {
  const { foldbook, advance } = await bringIn();
  await advance.questions().focus();
  await foldbook.press('2');
  await expect.poll(() => advance.counter()).toBe('Every line is accounted for');
  await advance.bringInNewAct({
    name: 'lantern-row.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('Ch,Source,Mic\n1,Kick,mic\n2,Tin can,own mic\n'),
  });
  await expect.poll(() => advance.questions().innerText()).toMatch(/1 answered, 1 as before/);
  await advance.questions().getByText('1 answered').click();
  expect(await advance.questions().innerText()).toMatch(/lead vocal\s+\(answered as before\)/);
  await advance
    .questions()
    .getByRole('button', { name: /Ask again/ })
    .click();
  await expect.poll(() => advance.questions().innerText()).toContain('What is "Tin can"?');
});

describe('several files dropped at once', () => {
  const pair = [
    { name: 'north.csv', content: 'Ch,Source,Mic\n1,Kick,mic\n2,Zorbulator,DI\n' },
    { name: 'south.csv', content: 'Ch,Source,Mic\n1,Accordion,DI\n' },
  ];
  const acts = (foldbook: Foldbook) => foldbook.runningOrder().getByRole('listitem').count();

  test('become an act each, with one summary, a sentence for what is no rider, and one undo', async () => {
    const { foldbook, advance, mixes } = await start();
    const before = await acts(foldbook);
    await mixes.open();
    const broken = { name: 'broken.xlsx', content: 'PK\u0003\u0004 no workbook' };
    const dragging = await advance.drag([...pair, broken]);
    await expect.poll(() => advance.letGo().allInnerTexts()).toEqual(['Let go: each file becomes an act.']);
    await dragging.letGo();
    await expect.poll(() => advance.whatCame()).toContain('2 files became acts, 1 could not be read.');
    const told = await advance.whatCame();
    expect(told).toMatch(/north\.csv\s+north\s+2 sources, 0 mixes, \d open question/);
    expect(told).toMatch(/broken\.xlsx\s+\S+.*\./);
    expect(await advance.letGo().count()).toBe(0);
    expect((await new AxeBuilder({ page: foldbook.page }).analyze()).violations).toEqual([]);
    expect(await acts(foldbook)).toBe(before + 2);
    await foldbook.saved();
    await foldbook.page.getByRole('button', { name: 'south', exact: true }).click();
    await expect.poll(() => foldbook.actName()).toBe('south');
    expect(await advance.source('Accordion')).toContain('accordion');
    await foldbook.press('Control+z');
    await expect.poll(() => acts(foldbook)).toBe(before);
    await foldbook.saved();

    await foldbook.page.getByRole('button', { name: 'New act' }).click();
    await advance.drop(['one.xlsx', 'two.docx'].map((name) => ({ name, content: 'PK\u0003\u0004 nothing' })));
    await expect.poll(() => advance.whatCame()).toContain('0 files became acts, 2 could not be read.');
    expect(await acts(foldbook)).toBe(before);
    expect(await foldbook.savedState()).toBe('Saved');
  });

  test('one alone, on an act that has a rider, is asked about before anything changes', async () => {
    const { foldbook, advance } = await bringIn();
    const dragging = await advance.drag([{ name: 'later.csv', content: 'Ch,Source\n1,Kick\n' }]);
    await expect.poll(() => advance.letGo().innerText()).toContain('a rider for Lantern Row');
    await dragging.letGo();
    await foldbook.page.getByText('Is later.csv a later version of lantern-row.csv?').waitFor();
    expect(await foldbook.savedState()).toBe('Saved');
  });
});

describe('the reply to the band', () => {
  test('says what is offered, asks what is open, and is copied and kept as text and as PDF', async () => {
    const { foldbook, advance } = await bringIn();
    await advance.openReply();
    const { subject, body } = await advance.reply();
    expect(subject).toBe('Your monitors: Lantern Row, Saturday, 2031-06-14');
    expect(body).toMatch(/You asked for 2 mixes, and we give you 2 on the house desk/);
    expect(body).toMatch(/1\. Nell: wedge\. From us: Wedge \d\./);
    expect(body).toContain('1. What is "Tin can"?');
    expect((await new AxeBuilder({ page: foldbook.page }).analyze()).violations).toEqual([]);
    await foldbook.press('Enter');
    await expect
      .poll(() => foldbook.page.evaluate(() => navigator.clipboard.readText()))
      .toBe(`${subject}\n\n${body}\n`);
    const kept = await advance.keepReply('Save as text');
    expect(kept.name).toBe('Reply to Lantern Row.txt');
    expect(kept.content.toString()).toBe(`${subject}\n\n${body}\n`);
    const paper = await advance.keepReply('Save as PDF');
    expect(paper.name).toMatch(/\.pdf$/);
    expect(paper.content.subarray(0, 5).toString()).toBe('%PDF-');
  });
});

describe('other ways in', () => {
  test('a pasted text becomes an act, called as it says, or as the engineer is asked to say', async () => {
    const { foldbook, advance } = await start();
    const list = '1 Kick - dynamic mic\n2 Lead vocal - dynamic vocal mic\n\nMix 1: Ada, wedge: vocal lots';
    await advance.pasteForNewAct(`Paper Herons\n\nInput list\n${list}`);
    await expect.poll(() => foldbook.actName()).toBe('Paper Herons');
    await advance.pasteForNewAct(list);
    await foldbook.page.getByText('The text does not say what the band is called.').waitFor();
    await foldbook.page.keyboard.type('Tin Foxes');
    await foldbook.press('Enter');
    await expect.poll(() => foldbook.actName()).toBe('Tin Foxes');
    expect(await advance.sources().getByRole('row').count()).toBe(3);
    expect(await advance.source('Kick')).toContain('mic');
  });

  test('a file that is no rider gets a sentence and changes nothing', async () => {
    const { foldbook, advance } = await start();
    const acts = await foldbook.runningOrder().getByRole('listitem').count();
    const noise = { name: 'rider.xlsx', mimeType: 'application/octet-stream', buffer: randomBytes(3000) };
    await advance.bringInNewAct(noise);
    await expect.poll(() => foldbook.problem()).toMatch(/rider\.xlsx/);
    expect(await foldbook.runningOrder().getByRole('listitem').count()).toBe(acts);
    expect(await foldbook.savedState()).toBe('Saved');
  });

  test('an act can begin without a rider and be filled by hand', async () => {
    const { foldbook, advance, mixes } = await start();
    await foldbook.page.getByRole('button', { name: 'New act' }).click();
    await foldbook.page.getByRole('button', { name: 'Start an act without a rider' }).click();
    await expect.poll(() => foldbook.actName()).toBe('New act');
    await foldbook.page.getByRole('button', { name: 'Add a source' }).click();
    await foldbook.page.getByRole('button', { name: 'Add a mix' }).click();
    expect(await advance.source('Source 1')).toContain('other');
    await mixes.open();
    expect(await mixes.feed('Source 1', 'Mix 1')).toBe('not in this mix');
  });
});

test('an act is taken off the day after a question, and one undo brings all of it back', async () => {
  const { foldbook, advance } = await bringIn();
  const acts = () => foldbook.runningOrder().getByRole('listitem').count();
  const before = await acts();
  await foldbook.page.getByRole('button', { name: 'Remove this act' }).click();
  await foldbook.press('Enter');
  expect(await acts()).toBe(before);
  await foldbook.page.getByRole('button', { name: 'Remove this act' }).click();
  await foldbook.page.getByRole('button', { name: 'Yes, remove the act' }).click();
  await expect.poll(acts).toBe(before - 1);
  await foldbook.saved();
  await foldbook.press('Control+z');
  await expect.poll(acts).toBe(before);
  await foldbook.openAct('Lantern Row');
  expect(await advance.source('Kick in')).toContain('kick in');
});

test('a second rider is merged into the act and both can be read', async () => {
  const { foldbook, advance } = await bringIn();
  await advance.bringInAnother(csv('changes.csv', 'Ch,Source,Mic\n8,Accordion,DI\n'), 'addition');
  await expect.poll(() => advance.source('Accordion')).toContain('accordion');
  expect(await advance.source('Kick in')).toContain('kick in');
  expect(await foldbook.page.getByLabel('Rider', { exact: true }).innerText()).toMatch(
    /lantern-row.csv\s+changes.csv/,
  );
});

describe('a later version of a rider', () => {
  const later = readFileSync(lanternRow, 'utf8')
    .replace('2,Snare top', '2,Accordion,DI,,,Nell\n3,Snare top')
    .replace('3,OH L', '4,OH L')
    .replace('4,OH R', '5,OH R')
    .replace('5,Bass,DI', '6,Bass,dynamic mic')
    .replace('6,Tin can', '7,Tin can')
    .replace('7,Lead vocal', '8,Lead vocal')
    .replace('bass some', 'bass lots');

  /** The engineer says line by hand what the bass is; then the later version comes. */
  async function compared() {
    const all = await bringIn();
    const { foldbook, advance } = all;
    await advance.sourceRow('Bass').getByRole('gridcell', { name: 'di', exact: true }).click();
    await foldbook.page.keyboard.type('line');
    await foldbook.press('Enter');
    await expect.poll(() => advance.source('Bass')).toContain('line');
    await advance.bringInAnother(csv('lantern-row-2.csv', later), 'later version');
    await expect.poll(async () => (await advance.consequences()).length).toBeGreaterThan(3);
    return all;
  }

  test('is compared in words, and what it would overwrite is left unless it is taken', async () => {
    const { foldbook, advance } = await compared();
    const [first, ...others] = await advance.consequences();
    expect(first).toEqual(['Source Bass: pick-up from line to mic', false]);
    expect(others).toContainEqual(['New: Source Accordion (accordion, di)', true]);
    expect(others).toContainEqual([
      expect.stringMatching(/^Wish Mix 1: bass: amount from some to lots/),
      true,
    ]);
    expect(await advance.lineChanges()).toMatch(/New\s+2 \| Accordion/);
    expect((await new AxeBuilder({ page: foldbook.page }).analyze()).violations).toEqual([]);
    await advance.replaceRider();
    await expect.poll(() => advance.source('Accordion')).toContain('accordion');
    expect(await advance.source('Bass')).toContain('line');
    expect(await foldbook.page.getByLabel('Rider', { exact: true }).innerText()).toMatch(
      /lantern-row.csv \(replaced\)/,
    );
    await foldbook.saved();
    await foldbook.press('Control+z');
    await expect.poll(() => advance.sourceRow('Accordion').count()).toBe(0);
  });

  test('is known by the name of its band where it comes as a new act', async () => {
    const { foldbook, advance } = await bringIn();
    const acts = () => foldbook.runningOrder().getByRole('listitem').count();
    const before = await acts();
    await advance.bringInNewAct(csv('lantern-row-2.csv', later));
    await foldbook.page.getByText('Is lantern-row-2.csv a later version of lantern-row.csv?').waitFor();
    await foldbook.press('Enter');
    await expect.poll(async () => (await advance.consequences()).length).toBeGreaterThan(3);
    await advance.replaceRider();
    await expect.poll(() => advance.source('Accordion')).toContain('accordion');
    expect(await acts()).toBe(before);
    await advance.bringInNewAct(csv('lantern-row-3.csv', later));
    await foldbook.page.getByRole('button', { name: 'No: make another act of that name' }).click();
    await expect.poll(acts).toBe(before + 1);
  });

  test('is taken and left by keys', async () => {
    const { foldbook, advance } = await compared();
    await foldbook.press('Space', 'ArrowDown', 'Space');
    const [first, second] = await advance.consequences();
    expect(first?.[1]).toBe(true);
    expect(second?.[1]).toBe(false);
    await advance.replaceRider();
    await expect.poll(() => advance.source('Bass')).toContain('mic');
  });
});
