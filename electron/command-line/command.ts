import { type ParseArgsOptionsConfig, parseArgs } from 'node:util';

/** Codes with which a command ends. */
export const exitCodes = { done: 0, unreadable: 1, wrongUse: 2 } as const;

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
