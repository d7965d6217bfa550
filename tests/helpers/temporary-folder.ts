import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of the running test's own; it goes when the test is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'foldbook-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  return folder;
}
