import type { Locator } from 'playwright';
import { expect } from 'vitest';
import { ScreenPage } from './screen-page.ts';

/** The Day screen as somebody at the screen uses it. */
export class DayPage extends ScreenPage {
  async open(): Promise<void> {
    await this.foldbook.goTo('Day');
    await this.page.getByRole('grid').waitFor();
  }

  async openOrder(): Promise<void> {
    await this.page
      .getByRole('navigation', { name: 'Parts of the day' })
      .getByRole('button', { name: 'Running order' })
      .click();
    await this.page.getByRole('table', { name: /^Running order of/ }).waitFor();
  }

  async planAndWait(): Promise<void> {
    await this.foldbook.press('p');
    await this.difference().waitFor();
  }

  difference(): Locator {
    return this.page.getByRole('region', { name: 'What the plan changes' });
  }

  /** A line of the table of costs: "As it stands", "Planned", or a habit. */
  async cost(name: string): Promise<string> {
    const row = this.page.getByRole('row', { name: new RegExp(`^${name}`) });
    // Minutes come a moment after the lines; until then there is a dash.
    await expect.poll(() => row.innerText()).not.toMatch(/–/);
    return (await row.innerText()).replace(/\s+/g, ' ');
  }

  /** What is read out of the cell of a socket and an act. */
  async cell(socket: string, act: string): Promise<string> {
    const heads = await this.page.getByRole('grid').getByRole('columnheader').allInnerTexts();
    const column = heads.findIndex((head) => head.includes(act)) - 1;
    const row = this.page.getByRole('row').filter({
      has: this.page.getByRole('rowheader', { name: socket, exact: true }),
    });
    return (await row.getByRole('gridcell').nth(column).innerText()).replace(/\s+/g, ' ').trim();
  }

  /** Where a source of an act is: "A5". */
  async socketOf(source: string, act: string): Promise<string> {
    const heads = await this.page.getByRole('grid').getByRole('columnheader').allInnerTexts();
    const column = heads.findIndex((head) => head.includes(act)) - 1;
    for (const row of await this.page.getByRole('grid').locator('tbody tr').all())
      if ((await row.locator('td').nth(column).innerText()).includes(source))
        return row.locator('th').innerText();
    return '';
  }

  /** Goes to a cell with the keyboard. */
  async choose(socketRow: number, actColumn: number): Promise<void> {
    await this.page.getByRole('grid').focus();
    await this.foldbook.press('Control+Home', 'Control+ArrowUp', 'Control+ArrowLeft');
    for (let row = 0; row < socketRow; row++) await this.foldbook.press('ArrowDown');
    for (let column = 0; column < actColumn; column++) await this.foldbook.press('ArrowRight');
  }

  /** Goes to the cell of a socket, by its name, with the mouse. */
  async chooseCell(socket: string, actColumn: number): Promise<void> {
    const row = this.page.getByRole('row').filter({
      has: this.page.getByRole('rowheader', { name: socket, exact: true }),
    });
    await row.getByRole('gridcell').nth(actColumn).click();
    await this.page.getByRole('grid').focus();
  }

  chosen(): Promise<string> {
    return this.page.getByRole('region', { name: 'Chosen socket' }).innerText();
  }

  /** The acts in their order, each with its times. */
  async order(): Promise<string[]> {
    const rows = await this.page
      .getByRole('table', { name: /^Running order of/ })
      .locator('tbody tr')
      .all();
    return Promise.all(
      rows.map(async (row) => {
        const [starts, ends] = await row
          .locator('.order-time input')
          .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value));
        return `${await row.getByRole('rowheader').innerText()} ${starts}-${ends}`;
      }),
    );
  }

  async setTime(what: string, text: string): Promise<void> {
    const field = this.page.getByRole('textbox', { name: what });
    await field.fill(text);
    await field.press('Enter');
    await expect.poll(() => field.inputValue()).not.toBe('');
  }
}
