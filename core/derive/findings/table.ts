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
import { occasionsOf } from './occasions.ts';
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

const bySeverity = severities.flatMap((severity) =>
  findingRules.filter((rule) => rule.severity === severity),
);

/** All faults of an act, the most serious first, then in the order of the table. */
export function findFaults(facts: ActFacts): Found[] {
  const faults: Found[] = [];
  const there = occasionsOf(facts);
  for (const rule of bySeverity) {
    if (rule.when && !rule.when.some((occasion) => there[occasion])) continue;
    for (const found of rule.find(facts)) faults.push({ rule, found });
  }
  return faults;
}
