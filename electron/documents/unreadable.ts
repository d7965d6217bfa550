import type { Problem } from '../../core/contract/problem.ts';

/**
 * Thrown inside this folder where a file cannot be read; `readDocument` turns it into a problem. Expected trouble
 * is data everywhere else: this one exists because it has to leave the middle of a parser's callbacks.
 */
export class Unreadable extends Error {
  readonly problem: Problem;

  constructor(what: string, todo: string, code: Problem['code'] = 'unreadable file') {
    super(what);
    this.problem = { code, what, todo };
  }
}

/** A file that holds more than any rider does: what there is too much of, and what to do. */
export function tooMuch(what: string): Unreadable {
  return new Unreadable(
    what,
    'Check that this is the rider. If it is, save only the pages with the input list and the monitor wishes as a file of their own and bring that in.',
    'file too large',
  );
}
