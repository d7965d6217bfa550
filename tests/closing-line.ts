import type { Reporter, TestCase, TestModule } from 'vitest/node';

/** Counts how the tests ended. A file that could not even be read counts as a failure. */
export class ClosingLine implements Reporter {
  #passed = 0;
  #failed = 0;
  #skipped = 0;
  #unhandled = 0;

  onTestCaseResult(test: TestCase): void {
    const { state } = test.result();
    if (state === 'passed') this.#passed += 1;
    else if (state === 'failed') this.#failed += 1;
    else this.#skipped += 1;
  }

  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    const unread = modules.filter(
      (it) => it.state() === 'failed' && [...it.children.allTests()].length === 0,
    );
    this.#unhandled = unread.length + unhandledErrors.length;
  }

  /** Whether tests ran and none failed. */
  get isGood(): boolean {
    return this.#passed > 0 && this.#failed + this.#unhandled === 0;
  }

  text(): string {
    return `${this.#passed} passed, ${this.#failed + this.#unhandled} failed, ${this.#skipped} skipped`;
  }
}
