import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator } from 'playwright';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';
import { ScreenPage } from './screen-page.ts';

/** The rider as it came, what it was taken to mean, and what it leaves open. */
export class AdvancePage extends ScreenPage {
  /** Brings a file in as the rider of a new act. */
  async bringInNewAct(file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
    await this.page.getByRole('button', { name: 'New act' }).click();
    await this.page.getByLabel(/Choose a file/).setInputFiles(file);
  }

  /** Brings a file in to the open act, which has a rider already, and says what it is to that one. */
  async bringInAnother(
    file: { name: string; mimeType: string; buffer: Buffer },
    as: 'later version' | 'addition',
  ): Promise<void> {
    await this.page.getByRole('button', { name: 'Bring in another rider' }).click();
    await this.page.getByLabel(/Choose a file/).setInputFiles(file);
    const name = as === 'addition' ? /^No: add/ : /^Yes: compare/;
    await this.page.getByRole('button', { name }).click();
  }

  /** What a later version would do to the act: each sentence, and whether it is taken. */
  async consequences(): Promise<[sentence: string, isTaken: boolean][]> {
    const boxes = await this.#comparison().getByRole('checkbox').all();
    return Promise.all(
      boxes.map(async (box) => [
        await box.evaluate((it) => it.parentElement?.innerText.trim() ?? ''),
        await box.isChecked(),
      ]),
    );
  }

  lineChanges(): Promise<string> {
    return this.page.getByRole('region', { name: 'In the rider' }).innerText();
  }

  #comparison(): Locator {
    return this.page.getByRole('region', { name: /^What .* changes against/ });
  }

  async replaceRider(): Promise<void> {
    await this.#comparison()
      .getByRole('button', { name: /^Replace the rider/ })
      .click();
  }

  /** Drags files of the machine over the middle of the window, as the browser itself hears it, and lets go there. */
  async drag(files: { name: string; content: string | Buffer }[]): Promise<{ letGo: () => Promise<void> }> {
    const folder = temporaryFolder();
    const paths = files.map(({ name, content }) => {
      writeFileSync(join(folder, name), content);
      return join(folder, name);
    });
    const { width, height } = this.page.viewportSize() ?? { width: 1280, height: 800 };
    const browser = await this.page.context().newCDPSession(this.page);
    const send = async (type: 'dragEnter' | 'dragOver' | 'drop') => {
      await browser.send('Input.dispatchDragEvent', {
        type,
        x: width / 2,
        y: height / 2,
        data: { items: [], files: paths, dragOperationsMask: 1 },
      });
    };
    await send('dragEnter');
    await send('dragOver');
    return { letGo: () => send('drop') };
  }

  async drop(files: { name: string; content: string | Buffer }[]): Promise<void> {
    await (await this.drag(files)).letGo();
  }

  /** The summary of several files. */
  whatCame(): Promise<string> {
    return this.page.getByRole('region', { name: 'What came of the files' }).innerText();
  }

  async openReply(): Promise<void> {
    await this.page.getByRole('button', { name: 'Reply to the band' }).click();
  }

  async reply(): Promise<{ subject: string; body: string }> {
    const letter = this.page.getByRole('dialog', { name: 'Reply to the band' });
    return {
      subject: await letter.getByLabel('Subject').inputValue(),
      body: await letter.getByLabel('Text', { exact: true }).inputValue(),
    };
  }

  /** Presses a way to keep the reply, and takes the file that comes. */
  async keepReply(way: 'Save as text' | 'Save as PDF'): Promise<{ name: string; content: Buffer }> {
    const [download] = await Promise.all([
      this.page.waitForEvent('download'),
      this.page.getByRole('button', { name: way }).click(),
    ]);
    return { name: download.suggestedFilename(), content: readFileSync(await download.path()) };
  }

  /** What the window says while files are held over it. */
  letGo(): Locator {
    return this.page.getByText(/^Let go: /);
  }

  /** Teaches a word in the list of own words, and closes it. */
  async teach(word: string, meaning: string, band: 'this band' | 'every band'): Promise<void> {
    await this.page.getByRole('button', { name: /^Own words/ }).click();
    const list = this.page.getByRole('dialog', { name: 'Own words' });
    await list.getByLabel('Word', { exact: true }).fill(word);
    await list.getByLabel('Means', { exact: true }).selectOption({ label: meaning });
    await list.getByLabel('Holds for', { exact: true }).selectOption(band === 'this band' ? 'band' : 'all');
    await list.getByRole('button', { name: 'Teach' }).click();
    await list.getByRole('button', { name: `Forget “${word}”` }).waitFor();
    await list.getByRole('button', { name: 'Close' }).click();
  }

  /** Why the line that is looked at was read as it was. */
  reason(): Promise<string> {
    return this.page.locator('.rider-why').innerText();
  }

  async pasteForNewAct(text: string): Promise<void> {
    await this.page.getByRole('button', { name: 'New act' }).click();
    await this.page.getByLabel(/Or paste the text/).fill(text);
    await this.page.getByRole('button', { name: 'Read this text' }).click();
  }

  riderLine(words: string): Locator {
    return this.page
      .getByRole('listbox', { name: /The rider as it came/ })
      .getByRole('option', { name: words });
  }

  /** "1 line not settled", or "Every line is accounted for". */
  counter(): Promise<string> {
    return this.page.getByText(/lines? not settled|Every line is accounted for/).innerText();
  }

  questions(): Locator {
    return this.page.getByRole('region', { name: 'Open questions' });
  }

  /** The open questions in their order. */
  asked(): Promise<string[]> {
    return this.questions().locator('ol').first().getByRole('listitem').allInnerTexts();
  }

  /** The first answer of the current question, which the reading already uses. */
  guess(): Promise<string> {
    return this.questions().locator('.question-option').first().innerText();
  }

  /** How the word of the open question is to be remembered: "", "band" or "all". */
  remembering(word: string): Promise<string> {
    return this.page.getByLabel(new RegExp(`Remember “${word}”`)).inputValue();
  }

  /** Forgets a taught word in the list of them, and closes the list. */
  async forget(word: string): Promise<void> {
    await this.page.getByRole('button', { name: /^Own words/ }).click();
    await this.page.getByRole('button', { name: `Forget “${word}”` }).click();
    await this.page.getByRole('button', { name: 'Close' }).click();
  }

  sources(): Locator {
    return this.page.getByRole('grid', { name: 'Sources' });
  }

  mixes(): Locator {
    return this.page.getByRole('grid', { name: 'Mixes' });
  }

  /** The cells of the source of a name, as they are read. */
  async source(name: string): Promise<string[]> {
    return this.sourceRow(name).getByRole('gridcell').allInnerTexts();
  }

  sourceRow(name: string): Locator {
    return this.sources()
      .getByRole('row')
      .filter({ has: this.page.getByRole('gridcell', { name, exact: true }) });
  }
}
