import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyShow, ShowDocument } from '../../core/show/show.ts';
import { thisMachine } from '../../electron/copies/copy-names.ts';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { fakeBrowser } from '../helpers/fake-browser.ts';
import { smallDisk } from '../helpers/small-disk.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';
import { barriers } from './pages/barriers.ts';
import { Foldbook } from './pages/foldbook.ts';
import { KeepPage } from './pages/keep-page.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();

const asFed = 'front of house, decided, −11';

/** The feed of a guitar is made -11 dB, and said to be saved. */
async function editFeed(foldbook: Foldbook): Promise<MixesPage> {
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  await mixes.choose('Guitar', 'Tarn');
  await mixes.type('-11');
  return mixes;
}

async function expectNoBarrier(foldbook: Foldbook, part = 'dialog'): Promise<void> {
  expect(await barriers(foldbook.page, 'night', part)).toEqual([]);
  await foldbook.press('F8');
  expect(await barriers(foldbook.page, 'day', part)).toEqual([]);
  await foldbook.press('F8');
}

test('a back-up is made, looked into, restored by the keyboard after a question, and one undo takes it back', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const keep = new KeepPage(foldbook);
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  const before = await mixes.feed('Guitar', 'Tarn');
  await keep.open();
  await keep.button('Make a back-up now').click();
  await keep.says('The back-up is made.');
  await keep.close();
  await editFeed(foldbook);
  await foldbook.saved();
  await keep.open();
  await keep.dialog.getByRole('radio', { name: /by hand/ }).focus();
  await foldbook.press('Space');
  await keep.says(/Restoring it would change 1 row/);
  await keep.says(/^decision .*Guitar, Mix 1, level/);
  await expectNoBarrier(foldbook);
  await keep.button('Restore this back-up …').focus();
  await foldbook.press('Enter');
  await keep.says(/one undo takes the step back/);
  await foldbook.press('Enter');
  expect(await keep.button('Restore this back-up …').count(), 'the safe answer is under Enter').toBe(1);
  await keep.button('Restore this back-up …').click();
  await keep.button('Yes, restore').click();
  await keep.says('Restored. One undo takes it back.');
  await keep.says(/before a step/);
  await keep.close();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe(before);
  await foldbook.press('Control+z');
  await expect.poll(() => mixes.feed('Guitar', 'Tarn')).toBe(asFed);
});

test('a state of the act is kept, what changed since is told with who wrote it, and it is brought back', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const keep = new KeepPage(foldbook);
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  const before = await mixes.feed('Guitar', 'Tarn');
  await keep.open('Kept states');
  await keep.says('No state is kept yet.');
  await keep.dialog.getByLabel('Name of the state').fill('After the sound check');
  await foldbook.press('Enter');
  await keep.says('Kept as “After the sound check”.');
  await keep.close();
  await editFeed(foldbook);
  await foldbook.saved();
  await keep.open('Kept states');
  await keep.dialog.getByRole('radio', { name: /After the sound check/ }).check();
  await keep.says('1 row differs:');
  await keep.says('Who wrote it, and when');
  expect(await keep.dialog.getByRole('region', { name: /What changed since/ }).innerText()).toMatch(/-11/);
  await expectNoBarrier(foldbook);
  await keep.button('Bring back “After the sound check” …').click();
  await keep.button('Yes, bring it back').click();
  await keep.says('“After the sound check” is back.');
  await keep.says('Nothing differs.');
  await keep.dialog.getByLabel('Of', { exact: true }).selectOption('days');
  await keep.says('No state is kept yet.');
  await keep.close();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe(before);
});

test('an act goes out as a file and comes in beside after a look; a show replaces only when that is said', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const keep = new KeepPage(foldbook);
  const acts = () => foldbook.runningOrder().getByRole('button', { name: 'Glass Antlers' }).count();
  await keep.open('Files');
  const whole = await keep.saved(keep.button('Save the whole show as a file'));
  expect(ShowDocument.parse(JSON.parse(whole.text)).acts).toHaveLength(smallFestival().acts.size);
  await keep.dialog.getByLabel('Act', { exact: true }).selectOption('Glass Antlers');
  const act = await keep.saved(keep.button('Save this act as a file'));
  expect(act.name).toBe('Glass Antlers.foldbook-act.json');

  await keep.give('notes.json', '{"kick": 1}');
  await keep.says(/The file is no show that can be read/);
  await keep.give(act.name, act.text);
  await keep.says('Already in this show: Glass Antlers.');
  await expectNoBarrier(foldbook);
  await keep.button('Bring it in beside what is here').click();
  await keep.says(/is in the show. One undo takes it out again/);
  expect(await acts()).toBe(2);

  await keep.give(whole.name, whole.text);
  await keep.says(/Putting it in the place of the show would change/);
  await keep.button('Put it in the place of the show …').click();
  await keep.button('No, leave the show as it is').click();
  expect(await acts()).toBe(2);
  await keep.button('Put it in the place of the show …').click();
  await keep.button('Yes, replace the show').click();
  await expect.poll(acts).toBe(1);
  await keep.close();
  await foldbook.press('Control+z');
  await expect.poll(acts).toBe(2);
});

test('a second laptop takes over from the newest back-up on the stick, and says whose it is and how old', async () => {
  const stick = temporaryFolder();
  const surroundings = { FOLDBOOK_COPIES: stick };
  const first = await Foldbook.start(browser(), smallFestival(), undefined, { surroundings });
  await editFeed(first);
  await first.saved();
  await new KeepPage(first).open();
  await new KeepPage(first).button('Make a back-up now').click();
  await new KeepPage(first).says('The back-up is made.');
  await first.kill();
  // Both programs of this test run on one machine: on the stick the first is given another name.
  for (const name of readdirSync(stick))
    renameSync(join(stick, name), join(stick, name.replace(`.${thisMachine()}.`, '.tower.')));
  const second = await Foldbook.start(browser(), emptyShow(), undefined, { surroundings });
  expect(await second.problem()).toMatch(/of the machine “tower”, which is 0 minutes old/);
  const mixes = new MixesPage(second);
  await mixes.open();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe(asFed);
  await new KeepPage(second).open();
  await new KeepPage(second).says(/of the machine “tower”/);
});

test('a show whose folder cannot be written: loud, kept elsewhere, saved elsewhere, and in its file once it can be', async () => {
  const home = temporaryFolder();
  const folder = join(temporaryFolder(), 'taken', 'show');
  // A file where a folder should be: nobody can make the folder of the show, not even root.
  writeFileSync(dirname(folder), '');
  const foldbook = await Foldbook.start(browser(), smallFestival(), undefined, {
    folder,
    surroundings: { HOME: home },
  });
  expect(await foldbook.problem()).toMatch(/^Your work is not in its file\..*kept in “.*Foldbook rescued/s);
  const mixes = await editFeed(foldbook);
  await expect.poll(() => foldbook.savedState()).toBe('Not in its file');
  await expectNoBarrier(foldbook, 'footer');
  const save = foldbook.page.getByRole('button', { name: 'Save the show elsewhere' });
  const { text } = await new KeepPage(foldbook).saved(save);
  const { decisions } = ShowDocument.parse(JSON.parse(text));
  expect(decisions).toContainEqual(expect.objectContaining({ about: 'level', levelDb: -11 }));
  rmSync(dirname(folder));
  mkdirSync(folder, { recursive: true });
  await foldbook.saved();
  await save.waitFor({ state: 'hidden' });
  await foldbook.kill();
  await foldbook.reopen();
  await mixes.open();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe(asFed);
});

test('on a disk that is full the window says so, and says “Saved” when there is room again', async (context) => {
  const folder = smallDisk();
  if (!folder) return context.skip('no small disk can be mounted here');
  const foldbook = await Foldbook.start(browser(), smallFestival(), undefined, {
    folder,
    surroundings: { HOME: temporaryFolder() },
  });
  await editFeed(foldbook);
  await foldbook.saved();
  const { bavail, bsize } = statfsSync(folder);
  writeFileSync(join(folder, 'film'), Buffer.alloc(bavail * bsize));
  const mixes = new MixesPage(foldbook);
  for (let level = 1; level <= 20; level++) await mixes.type(`-${level}`);
  await expect.poll(() => foldbook.problem()).toMatch(/Your work is not in its file.*disk.*full/is);
  rmSync(join(folder, 'film'));
  await foldbook.saved();
  expect(await foldbook.page.getByRole('alert').count()).toBe(0);
});

test('a second start is answered by the window that is there; after a kill that window finds the program again', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const opened = join(temporaryFolder(), 'opened');
  const second = foldbook.startSecond(fakeBrowser(`echo yes > ${opened}`));
  expect(await second.ended).toBe(0);
  await expect.poll(() => foldbook.page.title()).toBe('Here is Foldbook');
  expect(await foldbook.problem()).toContain('The program was started once more: this is its window.');
  expect(() => readFileSync(opened), 'no other window').toThrow();
  await foldbook.press('F6');
  await expect.poll(() => foldbook.page.title()).toMatch(/– Foldbook$/);

  await foldbook.kill();
  const mixes = await editFeed(foldbook);
  await expect.poll(() => foldbook.savedState()).toMatch(/^Not saved yet/);
  foldbook.startAgain();
  await foldbook.saved();
  await foldbook.page.reload();
  await mixes.open();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe(asFed);
});
