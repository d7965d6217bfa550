import { expect, test } from 'vitest';
import { chromiumForFile } from '../helpers/chromium.ts';
import { DayPage } from './pages/day-page.ts';
import { Foldbook } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';
import { PaperPage } from './pages/paper-page.ts';

/** Two riders as bands send them, in a mail. The second leaves a question: nobody knows what a "Krummholz" is. */
const riders = [
  {
    act: 'Copper Lanterns',
    rider: `Copper Lanterns
Ch;Instrument;Mic
1;Kick;dynamic mic
2;Snare top;dynamic mic
3;Hi-hat;condenser
4;Bass DI;DI
5;Guitar left;dynamic mic
6;Lead vocal Iva;dynamic vocal mic
Monitors
Mix 1: Iva, wedge: lots of lead vocal, some guitar
Mix 2: Drums, in-ears stereo: everything`,
  },
  {
    act: 'Slow Ferry',
    rider: `Slow Ferry
Ch;Instrument;Mic
1;Accordion;condenser
2;Krummholz;condenser
3;Double bass;DI
4;Lead vocal Odd;dynamic vocal mic
Monitors
Mix 1: Odd, wedge: lots of lead vocal, little accordion`,
  },
] as const;

const browser = chromiumForFile();

/** Everything below is done with keys; the mouse never moves, nothing is pressed by its place. */
class Hands {
  readonly #foldbook: Foldbook;
  constructor(foldbook: Foldbook) {
    this.#foldbook = foldbook;
  }

  /** Goes on with Tab until the focus is on what is called so. */
  async tabTo(name: RegExp): Promise<void> {
    for (let step = 0; step < 120; step++) {
      if (name.test(await this.#foldbook.focused())) return;
      await this.#foldbook.press('Tab');
    }
    throw new Error(`Tab does not lead to ${name}.`);
  }

  /** Goes on with F6 until the focus is on what is called so. */
  async partWith(name: RegExp): Promise<void> {
    for (let step = 0; step < 12; step++) {
      if (name.test(await this.#foldbook.focused())) return;
      await this.#foldbook.press('F6');
    }
    throw new Error(`F6 does not lead to ${name}.`);
  }

  async press(name: RegExp): Promise<void> {
    await this.tabTo(name);
    await this.#foldbook.press('Enter');
  }

  /** Pastes what somebody copied in another program. */
  async paste(text: string): Promise<void> {
    await this.#foldbook.page.evaluate((written) => navigator.clipboard.writeText(written), text);
    await this.#foldbook.press('Control+v');
  }
}

test('a festival day from an empty show to the paper, with the keyboard alone', {
  timeout: 120_000,
}, async () => {
  const foldbook = await Foldbook.start(browser());
  const { page } = foldbook;
  const hands = new Hands(foldbook);

  // The first start leads to the rig, then to the first rider.
  await hands.press(/^Set up the rig/);
  await hands.press(/^Begin with a small rig/);
  await page.getByRole('grid', { name: 'Stage boxes' }).waitFor();
  await foldbook.press('Alt+2');
  await hands.press(/^Bring in a rider/);

  for (const [place, { act, rider }] of riders.entries()) {
    if (place > 0) await hands.press(/New act/);
    await hands.tabTo(/paste the text/i);
    await hands.paste(rider);
    await hands.press(/^Read this text/);
    await page.getByText(/not settled|Every line is accounted for/).waitFor();
    await hands.tabTo(/^Act$/);
    await foldbook.press('Control+a');
    await foldbook.type(act, 'Enter');
    await expect.poll(() => foldbook.actName()).toBe(act);
  }

  // One line is still open: its question is answered with one key.
  expect(await page.getByText('1 line not settled').count()).toBe(1);
  await hands.tabTo(/^Open questions/);
  await foldbook.press('1');
  await page.getByText('Every line is accounted for').waitFor();

  // The mixes: down to the second act's vocal, and less of it than was asked for.
  await foldbook.press('Alt+2');
  await hands.partWith(/^Mixes of Slow Ferry/);
  await foldbook.type('/', 'vocal', 'Enter', '-3', 'Enter');
  const mixes = new MixesPage(foldbook);
  await expect.poll(() => mixes.feed('Lead vocal Odd', 'Odd')).toMatch(/decided, −3/);
  await foldbook.saved();
  await foldbook.press('Control+z');
  await expect.poll(() => mixes.feed('Lead vocal Odd', 'Odd')).toMatch(/proposed/);
  await foldbook.saved();
  await foldbook.press('Control+Shift+z');
  await expect.poll(() => mixes.feed('Lead vocal Odd', 'Odd')).toMatch(/decided, −3/);
  await foldbook.press('p');
  await page.getByRole('region', { name: 'Path of Lead vocal Odd' }).waitFor();
  await foldbook.press('Escape');

  // The stage: the singer is put on it and walks to where the wedge will be.
  await foldbook.press('Alt+3');
  await page
    .getByRole('region', { name: 'Without a place yet' })
    .or(page.getByText('Without a place yet'))
    .first()
    .waitFor();
  await hands.press(/^Put .*Odd/);
  await hands.tabTo(/^Performer Odd|^Odd/i);
  const before = await foldbook.focused();
  await foldbook.press('Enter', 'ArrowLeft');
  await expect.poll(() => foldbook.focused()).not.toBe(before);

  // The day: one patch for both acts is found and taken.
  await foldbook.press('Alt+4');
  await page.getByRole('grid').first().waitFor();
  await foldbook.press('p');
  await new DayPage(foldbook).difference().waitFor();
  await foldbook.press('t');
  await new DayPage(foldbook).difference().waitFor({ state: 'detached' });

  // The changeover to the second act: a task is ticked, its clock runs.
  await foldbook.press('Alt+5');
  await page.getByRole('heading', { name: /^From Copper Lanterns/ }).waitFor();
  await hands.tabTo(/Mute every output/);
  await foldbook.press('Space', 'b');
  await page.getByText(/^1 of \d+ tasks done/).waitFor();

  // The show: from the first act to the next in two presses.
  await foldbook.press('Alt+PageUp', 'Alt+6', 'b');
  await page
    .getByText(/^on stage/)
    .first()
    .waitFor();
  await foldbook.press('n', 'n');
  await expect.poll(() => foldbook.actName()).toBe('Slow Ferry');
  expect(
    await foldbook
      .runningOrder()
      .getByRole('button', { name: /Copper/ })
      .innerText(),
  ).toMatch(/done/);

  // And on paper.
  await foldbook.press('Alt+7');
  const paper = new PaperPage(foldbook);
  await paper.shows('Input list for the stage');
  expect((await paper.save('s')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
  await foldbook.saved();
});
