import type { Locator } from 'playwright';
import { ScreenPage } from './screen-page.ts';

/** The Show screen as somebody at the screen uses it: by its keys. */
export class ShowPage extends ScreenPage {
  async open(): Promise<void> {
    await this.foldbook.press('Alt+6');
    await this.page.getByRole('region', { name: 'Where the act stands' }).waitFor();
  }

  /** Where the act stands, in words. */
  state(): Promise<string> {
    return this.page.getByRole('region', { name: 'Where the act stands' }).innerText();
  }

  clock(): Locator {
    return this.page.getByRole('timer');
  }

  /** What is about to happen; nothing is there where nothing is armed. */
  armed(): Locator {
    return this.page.getByRole('alert').filter({ hasText: 'again to move on' });
  }

  performers(): Locator {
    return this.page.getByRole('region', { name: 'Performers' });
  }

  /** A row of what somebody hears, without its line breaks. */
  async heard(who: string, source: string): Promise<string> {
    const row = this.page
      .getByRole('region', { name: `${who} hears` })
      .getByRole('row', { name: new RegExp(source) });
    return (await row.innerText()).replace(/\s+/g, ' ').trim();
  }

  async hearsSources(who: string): Promise<string[]> {
    return this.page
      .getByRole('region', { name: `${who} hears` })
      .getByRole('rowheader')
      .getByRole('button')
      .allInnerTexts();
  }

  log(): Locator {
    return this.page.getByRole('region', { name: 'As it ran' });
  }

  /** What was kept, the newest first, without the times of day. */
  async kept(): Promise<string[]> {
    const rows = await this.log()
      .getByRole('listitem')
      .filter({ has: this.page.locator('time') })
      .all();
    const texts = await Promise.all(rows.map((row) => row.innerText()));
    return texts.map((text) =>
      text
        .replace(/\s+/g, ' ')
        .replace(/^\d\d:\d\d /, '')
        .replace(/ ×$/, ''),
    );
  }

  /** The line that is large in the line check: its name. */
  line(): Promise<string> {
    return this.check().getByRole('heading', { level: 2 }).innerText();
  }

  check(): Locator {
    return this.page.getByRole('region', { name: 'Line check' });
  }

  async progress(): Promise<string> {
    return (await this.check().getByRole('status').first().innerText()).replace(/\s+/g, ' ');
  }

  /** The lines in their order, each with its place and what was found of it. */
  async lines(): Promise<string[]> {
    const texts = await this.page
      .getByRole('region', { name: 'Lines in their order' })
      .getByRole('listitem')
      .allInnerTexts();
    return texts.map((text) => text.replace(/\s+/g, ' ').trim());
  }

  /** What is known of the line that is large, as it stands there. */
  async known(term: string): Promise<string> {
    const entry = this.check()
      .locator('dl > div')
      .filter({ has: this.page.getByText(term, { exact: true }) });
    return (await entry.getByRole('definition').innerText()).replace(/\s+/g, ' ').trim();
  }
}
