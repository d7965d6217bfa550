import type { Locator } from 'playwright';
import { ScreenPage } from './screen-page.ts';

type Point = { x: number; y: number };

/** The drawing of the stage and the numbers beside it. */
export class StagePage extends ScreenPage {
  async open(): Promise<void> {
    await this.foldbook.goTo('Stage');
    await this.drawing().waitFor();
  }

  drawing(): Locator {
    return this.page.getByRole('group', { name: /^Stage of/ });
  }

  /** A mark by how its name begins when it is read out: "Performer Elin". */
  mark(name: string): Locator {
    return this.drawing().getByRole('button', { name: new RegExp(`^${name}`) });
  }

  /** Where a mark is said to be, with what else is said of it: "2.0 m stage left, 1.0 m upstage". */
  async said(name: string): Promise<string> {
    return (await this.mark(name).getAttribute('aria-label'))?.replace(/^.*: /, '') ?? '';
  }

  panel(): Locator {
    return this.page.getByRole('complementary', { name: 'Numbers of the stage' });
  }

  field(label: string): Locator {
    return this.panel().getByLabel(label, { exact: true });
  }

  async type(label: string, text: string): Promise<void> {
    await this.field(label).fill(text);
    await this.page.keyboard.press('Enter');
  }

  tool(name: string): Locator {
    return this.page
      .getByRole('group', { name: 'Tools of the stage' })
      .getByRole('button', { name, exact: true });
  }

  async middleOf(name: string): Promise<Point> {
    const box = await this.mark(name).locator('.stage-shape').boundingBox();
    if (!box) throw new Error(`${name} is not on the drawing.`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** Pixels of a metre, from the floor of a stage whose width is known. */
  async pxPerM(stageWidthM: number): Promise<number> {
    const box = await this.drawing().locator('.stage-floor').boundingBox();
    return (box?.width ?? 0) / stageWidthM;
  }

  /** Drags with the mouse over the screen, and lets go. */
  async drag(name: string, by: Point): Promise<void> {
    const from = await this.middleOf(name);
    const { mouse } = this.page;
    await mouse.move(from.x, from.y);
    await mouse.down();
    await mouse.move(from.x + by.x / 2, from.y + by.y / 2);
    await mouse.move(from.x + by.x, from.y + by.y);
    await mouse.up();
  }

  /** Drags with a finger. */
  async dragWithFinger(name: string, by: Point): Promise<void> {
    const from = await this.middleOf(name);
    const session = await this.page.context().newCDPSession(this.page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: Point | null) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
    await touch('touchStart', from);
    await touch('touchMove', { x: from.x + by.x / 2, y: from.y + by.y / 2 });
    await touch('touchMove', { x: from.x + by.x, y: from.y + by.y });
    await touch('touchEnd', null);
    await session.detach();
  }
}
