import type { Locator } from 'playwright';
import { expect } from 'vitest';
import { ScreenPage } from './screen-page.ts';

/** The table of the mixes and what stands beside it. */
export class MixesPage extends ScreenPage {
  async open(): Promise<void> {
    await this.foldbook.goTo('Mixes');
    await this.table().waitFor();
  }

  table(): Locator {
    return this.page.getByRole('grid', { name: /^Mixes of/ });
  }

  cell(source: string, who: string): Locator {
    return this.page.getByRole('gridcell', { name: `${source} for ${who}:` });
  }

  /** What a cell says: "monitors, proposed, −6", or "not in this mix". */
  async feed(source: string, who: string): Promise<string> {
    const says = await this.cell(source, who).getAttribute('aria-label');
    return says?.replace(/^.*: /, '') ?? '';
  }

  /** What every given mix takes of every given source, row by row. */
  async feeds(sources: readonly string[], whos: readonly string[]): Promise<string[]> {
    const says: string[] = [];
    for (const source of sources) for (const who of whos) says.push(await this.feed(source, who));
    return says;
  }

  async choose(source: string, who: string): Promise<void> {
    await this.cell(source, who).click();
  }

  async chooseRange(from: [source: string, who: string], to: [source: string, who: string]): Promise<void> {
    await this.cell(...from).click();
    await this.cell(...to).click({ modifiers: ['Shift'] });
  }

  /** Draws over a range with the mouse. */
  async drawOver(from: [source: string, who: string], to: [source: string, who: string]): Promise<void> {
    await this.cell(...from).hover();
    await this.page.mouse.down();
    await this.cell(...to).hover();
    await this.page.mouse.up();
  }

  chosenCount(): Promise<number> {
    return this.table().locator('[aria-selected="true"]').count();
  }

  /** Heads of rows: of the whole page, since each belongs to its row by name and not by its place. */
  heads(name?: RegExp): Locator {
    return this.page.getByRole('rowheader', name && { name });
  }

  /** The sources and the listeners that the table shows, of those in sight. */
  sources(): Promise<string[]> {
    return this.heads().locator('strong').allInnerTexts();
  }

  listeners(): Promise<string[]> {
    return this.table().getByRole('columnheader').locator('strong').allInnerTexts();
  }

  /** Types into the chosen cells and presses Enter. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
  }

  /** The sentence at a cell that did not take what was typed. */
  refusal(): Promise<string> {
    return this.table().getByRole('alert').innerText();
  }

  details(): Locator {
    return this.page.getByRole('complementary', { name: 'Details' });
  }

  findings(): Locator {
    return this.page.getByRole('complementary', { name: 'Findings' });
  }

  /** Opens the details of the chosen cell from the keyboard. */
  async openDetails(): Promise<void> {
    await this.page.keyboard.press('Enter');
    await expect.poll(() => this.details().isVisible()).toBe(true);
  }

  async chooseInDetails(label: string, option: string): Promise<void> {
    await this.details().getByLabel(label, { exact: true }).selectOption({ label: option });
  }
}
