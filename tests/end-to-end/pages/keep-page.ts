import { readFile } from 'node:fs/promises';
import type { Locator } from 'playwright';
import { ScreenPage } from './screen-page.ts';

/** The place for back-ups, kept states and files. */
export class KeepPage extends ScreenPage {
  readonly dialog = this.page.getByRole('dialog', { name: 'Back-ups, kept states and files' });

  async open(part: 'Back-ups' | 'Kept states' | 'Files' = 'Back-ups'): Promise<void> {
    await this.foldbook.press('Control+s');
    await this.button(part).click();
  }

  async close(): Promise<void> {
    await this.foldbook.press('Escape');
    await this.dialog.waitFor({ state: 'hidden' });
  }

  button(name: string | RegExp): Locator {
    return this.dialog.getByRole('button', { name, exact: typeof name === 'string' });
  }

  /** Waits until this is said. */
  async says(text: string | RegExp): Promise<void> {
    await this.dialog.getByText(text).first().waitFor();
  }

  /** Presses a button that gives a file, and answers its name and what is in it. */
  async saved(button: Locator): Promise<{ name: string; text: string }> {
    const [download] = await Promise.all([this.page.waitForEvent('download'), button.click()]);
    return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
  }

  async give(name: string, text: string): Promise<void> {
    await this.dialog
      .getByLabel('Choose a file of a show or an act (JSON)')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  }
}
