import { severities } from '../../show/words.ts';
import type { ActFacts } from '../facts.ts';
import { alternateFindings } from './alternates.ts';
import { copyFindings } from './copies.ts';
import { cueFindings } from './cue.ts';
import { deviceFindings } from './devices.ts';
import { effectFindings } from './effects.ts';
import { elsewhereFindings } from './elsewhere.ts';
import { feedFindings } from './feeds.ts';
import { gainFindings } from './gain.ts';
import { mixFindings } from './mixes.ts';
import { occasionNames, occasionsOf } from './occasions.ts';
import { outputFindings } from './outputs.ts';
import { performerFindings } from './performers.ts';
import { phantomFindings } from './phantom.ts';
import { referenceFindings } from './references.ts';
import { riderFindings } from './rider.ts';
import type { FindingRule } from './rule.ts';
import { socketFindings } from './sockets.ts';
import { stageFindings } from './stage.ts';
import type { Found } from './tell.ts';

/** Every kind of fault that is looked for in an act. */
export const findingRules: readonly FindingRule[] = [
  ...copyFindings,
  ...feedFindings,
  ...performerFindings,
  ...mixFindings,
  ...outputFindings,
  ...deviceFindings,
  ...cueFindings,
  ...socketFindings,
  ...phantomFindings,
  ...gainFindings,
  ...effectFindings,
  ...alternateFindings,
  ...elsewhereFindings,
  ...stageFindings,
  ...riderFindings,
  ...referenceFindings,
];

/** The most serious first, then in the order of the table. */
const inOrder = severities.flatMap((severity) =>
  findingRules
    .filter((rule) => rule.severity === severity)
    .map((rule) => ({ rule, when: rule.when?.map((occasion) => occasionNames.indexOf(occasion)) ?? null })),
);

/** All faults of an act, the most serious first, then in the order of the table. */
export function findFaults(facts: ActFacts): Found[] {
  const faults: Found[] = [];
  // By place in the list of occasions: a lookup by name would take longer than most rules.
  const there = Object.values(occasionsOf(facts));
  for (const { rule, when } of inOrder) {
    if (when !== null && !isOneThere(when, there)) continue;
    const cases = rule.find(facts);
    for (let at = 0; at < cases.length; at++) {
      const found = cases[at];
      if (found) faults.push({ rule, found });
    }
  }
  return faults;
}

function isOneThere(places: readonly number[], there: readonly boolean[]): boolean {
  for (const place of places) if (there[place]) return true;
  return false;
}
