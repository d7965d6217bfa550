import type { CDPSession, Page } from 'playwright';
import { median } from './median.ts';
import { percentile } from './percentiles.ts';

/** What one thing done in the page cost. */
export type Taken = {
  /** From the event in the page to the frame that shows its outcome, and to the news awaited with it, on the wall. */
  wallMs: number;
  /** To the frame that shows that news too. */
  allShownMs: number;
  /** Processor time of the page's main thread; what else runs on the machine does not count. */
  threadMs: number;
  /** Of that: script, style and layout. */
  scriptMs: number;
  layoutMs: number;
  /** Elements that were added or whose text or attributes changed. */
  touched: number;
};

/** What is put into the page: it starts a clock at an event and stops it in the frame that shows the outcome. */
type Clock = {
  arm(event: string, outcome: string, news: string | null): void;
  stopped(): Promise<{ wallMs: number; allShownMs: number; touched: number }>;
};
declare global {
  interface Window {
    benchClock: Clock;
    longTasks: number[];
  }
}

/**
 * Plain JavaScript of the page. `outcome` is the body of a function that tells whether the page shows what it should,
 * `news` of one that tells whether the page has heard what it waits for; both are asked after every change of the
 * document. The frame is over when a task runs after its animation frame.
 */
const clockSource = `
window.longTasks = [];
new PerformanceObserver((list) => {
  for (const it of list.getEntries()) window.longTasks.push(it.duration);
}).observe({ entryTypes: ['longtask'] });
function countTouched(records) {
  const touched = new Set();
  for (const it of records) {
    touched.add(it.target);
    for (const node of it.addedNodes) {
      touched.add(node);
      node.querySelectorAll?.('*').forEach((inner) => touched.add(inner));
    }
  }
  return touched.size;
}
window.benchClock = {
  arm(event, outcome, news) {
    const isThere = new Function(outcome), isHeard = news ? new Function(news) : null;
    this.result = new Promise((resolve) => {
      let started = 0, found = false, heardMs = 0, paintedMs = 0, framesDue = 0;
      const changes = [];
      const now = () => performance.now() - started;
      const afterFrame = (then) => {
        framesDue += 1;
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => {
            framesDue -= 1;
            then();
            if (!paintedMs || !heardMs || framesDue > 0) return;
            observer.disconnect();
            resolve({ wallMs: Math.max(paintedMs, heardMs), allShownMs: now(), touched: countTouched(changes.flat()) });
          };
          port2.postMessage(null);
        });
      };
      const observer = new MutationObserver((records) => {
        changes.push(records);
        if (!found && isThere()) {
          found = true;
          if (!isHeard) heardMs = now();
          afterFrame(() => { paintedMs = now(); });
        }
        if (!heardMs && isHeard?.()) {
          heardMs = now();
          afterFrame(() => {});
        }
      });
      window.addEventListener(event, (it) => {
        started = it.timeStamp;
        observer.observe(document.documentElement, { subtree: true, childList: true, characterData: true, attributes: true });
      }, { capture: true, once: true });
    });
  },
  stopped() { return this.result; },
};
`;

/** Times what is done in a page, one thing at a time. */
export class PageTimer {
  readonly #page: Page;
  readonly #session: CDPSession;

  private constructor(page: Page, session: CDPSession) {
    this.#page = page;
    this.#session = session;
  }

  static async in(page: Page): Promise<PageTimer> {
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    await page.evaluate(clockSource);
    return new PageTimer(page, session);
  }

  /** From `event` in the page, which `act` brings about, until `outcome` holds and is painted and `news` is heard. */
  async take(
    event: string,
    outcome: string,
    act: () => Promise<void>,
    news: string | null = null,
  ): Promise<Taken> {
    await this.#page.evaluate(([name, holds, heard]) => window.benchClock.arm(name, holds, heard), [
      event,
      outcome,
      news,
    ] as const);
    const before = await this.#metrics();
    // Asked before the key: to take a question in is work for the page's main thread, and it would fall into what is
    // timed. For the same reason the page counts what was touched only once the clock has stopped.
    const stopped = this.#page.evaluate(() => window.benchClock.stopped());
    await act();
    const { wallMs, allShownMs, touched } = await stopped;
    const after = await this.#metrics();
    const spent = (name: string) => ((after.get(name) ?? 0) - (before.get(name) ?? 0)) * 1000;
    return {
      wallMs,
      allShownMs,
      touched,
      threadMs: spent('TaskDuration'),
      scriptMs: spent('ScriptDuration'),
      layoutMs: spent('LayoutDuration') + spent('RecalcStyleDuration'),
    };
  }

  /** The long tasks (over 50 ms, as the browser counts them) since the last call. */
  longTasks(): Promise<number[]> {
    return this.#page.evaluate(() => window.longTasks.splice(0));
  }

  async #metrics(): Promise<Map<string, number>> {
    const { metrics } = await this.#session.send('Performance.getMetrics');
    return new Map(metrics.map(({ name, value }) => [name, value]));
  }
}

/** One line: the goal beside what was measured. */
export function reportTaken(what: string, taken: readonly Taken[], goal: { ms: number; at: number }): void {
  const wall = taken.map((it) => it.wallMs);
  const ms = (value: number) => value.toFixed(1);
  const reached = percentile(wall, goal.at);
  console.log(
    `${what}: ${ms(reached)} ms at the ${Math.round(goal.at * 100)}th percentile of ${taken.length}, goal ${goal.ms} ms: ${reached <= goal.ms ? 'held' : 'NOT HELD'}`,
  );
  console.log(`  on the wall: tenth ${ms(percentile(wall, 0.1))}, middle ${ms(median(wall))} ms`);
  const middle = (of: (it: Taken) => number) => median(taken.map(of));
  console.log(
    `  main thread, middle: ${ms(middle((it) => it.threadMs))} ms, of it script ${ms(middle((it) => it.scriptMs))}, style and layout ${ms(middle((it) => it.layoutMs))}; elements touched ${middle((it) => it.touched)}`,
  );
}
