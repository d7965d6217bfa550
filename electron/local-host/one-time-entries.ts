import { randomBytes } from 'node:crypto';

const lifeMs = 30_000;

/** Paths that open the page once, soon after they were made. */
export class OneTimeEntries {
  readonly #endsAt = new Map<string, number>();
  readonly #now: () => number;

  constructor(now: () => number = Date.now) {
    this.#now = now;
  }

  make(): string {
    const path = `/enter/${randomBytes(24).toString('base64url')}`;
    this.#endsAt.set(path, this.#now() + lifeMs);
    return path;
  }

  /** Whether the path is an entry that still works. Afterwards it does not. */
  use(path: string): boolean {
    const endsAt = this.#endsAt.get(path);
    this.#endsAt.delete(path);
    return endsAt !== undefined && this.#now() <= endsAt;
  }
}
