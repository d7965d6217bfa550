import type { Page } from 'playwright';
import type { Foldbook } from './foldbook.ts';

/** What every page object has: the program, for its keys and ways, and the page itself. */
export abstract class ScreenPage {
  protected readonly foldbook: Foldbook;
  protected readonly page: Page;

  constructor(foldbook: Foldbook) {
    this.foldbook = foldbook;
    this.page = foldbook.page;
  }
}
