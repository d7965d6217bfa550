import type { LineFinding, LineResult } from '../show/as-ran.ts';
import type { Id } from '../show/rig.ts';
import type { Severity } from '../show/words.ts';
import type { CheckLine } from './lines-to-check.ts';

/** A line that was not found well at the line check and has not been since. */
export type LineFault = {
  sourceId: Id;
  found: Exclude<LineFinding, 'ok'>;
  severity: Severity;
  cause: string;
  remedy: string;
  foundAt: string;
};

type Told = { name: string; where: string; came: string };

/** What each result means and what to do about it (common practice of line checks; the cautions are ours). */
const table: Record<
  LineFault['found'],
  { severity: Severity; cause(it: Told): string; remedy(it: Told): string }
> = {
  silent: {
    severity: 'must fix',
    cause: ({ name, where }) => `${name}${where} was silent at the line check.`,
    remedy: () =>
      'Keep its channels muted and follow the line: switch on the microphone or box, cable, socket, 48 V where it needs it, gain. Then listen again.',
  },
  noisy: {
    severity: 'look again',
    cause: ({ name, where }) => `${name}${where} was noisy at the line check.`,
    remedy: () =>
      'With its channels muted change the cable, then the DI or the microphone; for hum use the ground switch of the DI. Never lift the earth of a mains plug. Then listen again.',
  },
  swapped: {
    severity: 'must fix',
    cause: ({ name, where, came }) => `${came} came where ${name}${where} belongs.`,
    remedy: () =>
      'Mute both, switch their 48 V off, and change the two plugs; or swap the two sockets in the plan. Then listen to both again.',
  },
  later: {
    severity: 'know this',
    cause: ({ name, where }) => `${name}${where} was put off at the line check.`,
    remedy: () => 'Listen to it before the set begins, or bring it up with care.',
  },
};

/** The faults of the lines, in the order of the lines. */
export function lineFaults(lines: readonly CheckLine[], results: ReadonlyMap<Id, LineResult>): LineFault[] {
  return lines.flatMap(({ source, socketName }): LineFault[] => {
    const result = results.get(source.id);
    if (!result || result.found === 'ok') return [];
    const came = lines.find((it) => it.source.id === result.cameSourceId)?.source.name;
    const told = {
      name: source.name,
      where: socketName === '' ? '' : ` (${socketName})`,
      came: came ?? 'Another line',
    };
    const { severity, cause, remedy } = table[result.found];
    return [
      {
        sourceId: source.id,
        found: result.found,
        severity,
        cause: cause(told),
        remedy: remedy(told),
        foundAt: result.foundAt,
      },
    ];
  });
}
