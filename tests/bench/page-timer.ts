import type { CDPSession, Page } from 'playwright';
import { median } from './median.ts';
import { percentile } from './percentiles.ts';

/** What one thing done in the page cost. */
export type Taken = {
  /** From the event in the page to the frame that shows its whole outcome, on the wall. */
  wallMs: number;
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
  arm(event: string, outcome: string): void;
  stopped(): Promise<{ wallMs: number; touched: number }>;
};
declare global {
  interface Window {
    benchClock: Clock;
    longTasks: number[];
  }
}

/**
 * Plain JavaScript of the page. `outcome` is the body of a function that tells whether the page shows what it should;
 * it is asked after every change of the document. The frame is over when a task runs after its animation frame.
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
  arm(event, outcome) {
    const isThere = new Function(outcome);
    this.result = new Promise((resolve) => {
      let started = 0, found = false;
      const changes = [];
      const observer = new MutationObserver((records) => {
        changes.push(records);
        if (found || !isThere()) return;
        found = true;
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => {
            const wallMs = performance.now() - started;
            observer.disconnect();
            resolve({ wallMs, touched: countTouched(changes.flat()) });
          };
          port2.postMessage(null);
        });
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

  /** From `event` in the page, which `act` brings about, until `outcome` holds and is painted. */
  async take(event: string, outcome: string, act: () => Promise<void>): Promise<Taken> {
    await this.#page.evaluate(([name, holds]) => window.benchClock.arm(name, holds), [
      event,
      outcome,
    ] as const);
    const before = await this.#metrics();
    // Asked before the key: to take a question in is work for the page's main thread, and it would fall into what is
    // timed. For the same reason the page counts what was touched only once the clock has stopped.
    const stopped = this.#page.evaluate(() => window.benchClock.stopped());
    await act();
    const { wallMs, touched } = await stopped;
    const after = await this.#metrics();
    const spent = (name: string) => ((after.get(name) ?? 0) - (before.get(name) ?? 0)) * 1000;
    return {
      wallMs,
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
