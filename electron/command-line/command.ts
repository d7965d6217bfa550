import { type ParseArgsOptionsConfig, parseArgs } from 'node:util';
import type { Problem } from '../../core/contract/problem.ts';

/** Codes with which a command ends. */
export const exitCodes = { done: 0, unreadable: 1, wrongUse: 2 } as const;

// Who has read enough closes the pipe, as in "| head": that is the end of a command and no error of it.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exitCodes.done);
  throw error;
});

/** Takes a command line apart by its options; null where it is used wrongly. */
export function argumentsOf<T extends ParseArgsOptionsConfig>(options: T) {
  try {
    return parseArgs({
      options: { ...options, help: { type: 'boolean', short: 'h' } },
      allowPositionals: true,
    });
  } catch {
    return null;
  }
}

/** Says how a command is used, because that was asked for or because it was used wrongly. Answers the exit code. */
export function sayUsage(usage: string, isAsked = false): number {
  if (isAsked) console.log(usage);
  else console.error(usage);
  return isAsked ? exitCodes.done : exitCodes.wrongUse;
}

/** Says why a command could not be done. Answers the exit code. */
export function fail(why: string | Problem): number {
  console.error(typeof why === 'string' ? why : `${why.what} ${why.todo}`);
  return exitCodes.unreadable;
}
