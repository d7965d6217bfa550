import { readFile } from 'node:fs/promises';
import type { Locator } from 'playwright';
import { expect } from 'vitest';
import { ScreenPage } from './screen-page.ts';

/** The Paper screen as somebody at the screen uses it. */
export class PaperPage extends ScreenPage {
  async open(): Promise<void> {
    await this.foldbook.goTo('Paper');
    await this.shows('Input list for the stage');
  }

  async choose(sheet: string): Promise<void> {
    await this.page.getByRole('radio', { name: sheet, exact: true }).check();
  }

  /** Types a measure of the labels and leaves the field. */
  async measure(name: string, text: string): Promise<void> {
    await this.page.getByLabel(name, { exact: true }).fill(text);
    await this.page.getByLabel(name, { exact: true }).press('Enter');
  }

  preview(sheet: string): Locator {
    return this.page.getByRole('region', { name: `Preview of ${sheet}`, exact: true });
  }

  /** Waits until the first page of a sheet is drawn. */
  async shows(sheet: string): Promise<void> {
    await this.preview(sheet)
      .getByRole('img', { name: /^Page 1 of/ })
      .waitFor();
    await expect.poll(() => this.said()).toMatch(/\d pages?/);
  }

  said(): Promise<string> {
    return this.page.getByRole('region', { name: 'Paper' }).getByRole('status').innerText();
  }

  /** Presses a key that saves, and reads what comes of it. */
  async save(key: string): Promise<{ name: string; bytes: Buffer }> {
    // One file at a time: while one is made, the keys do nothing.
    await expect.poll(() => this.page.getByRole('button', { name: /^Save PDF/ }).isEnabled()).toBe(true);
    const coming = this.page.waitForEvent('download');
    await this.foldbook.press(key);
    const file = await coming;
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  }

  /** How much of a picture is ink: a share of its pixels that are darker than middle grey. */
  inkOf(picture: Locator): Promise<number> {
    return picture.evaluate((image: HTMLImageElement) => {
      const canvas = document.createElement('canvas');
      canvas.width = image.naturalWidth;
      canvas.height = image.naturalHeight;
      const drawing = canvas.getContext('2d');
      drawing?.drawImage(image, 0, 0);
      const pixels = drawing?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      let dark = 0;
      for (let at = 0; at < pixels.length; at += 4) if ((pixels[at] ?? 255) < 128) dark++;
      return dark / (pixels.length / 4);
    });
  }
}
