import { severities } from '../../show/words.ts';
import type { Finding } from '../derived.ts';
import type { ActFacts } from '../facts.ts';
import { copyFindings } from './copies.ts';
import { cueFindings } from './cue.ts';
import { deviceFindings } from './devices.ts';
import { feedFindings } from './feeds.ts';
import { mixFindings } from './mixes.ts';
import { outputFindings } from './outputs.ts';
import { performerFindings } from './performers.ts';
import { phantomFindings } from './phantom.ts';
import { type FindingRule, findingOf } from './rule.ts';
import { socketFindings } from './sockets.ts';

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
];

const bySeverity = severities.map((severity) => findingRules.filter((rule) => rule.severity === severity));

/** All faults of an act, the most serious first, then in the order of the table. */
export function findFaults(facts: ActFacts): Finding[] {
  const findings: Finding[] = [];
  for (const rules of bySeverity)
    for (const rule of rules) for (const found of rule.find(facts)) findings.push(findingOf(rule, found));
  return findings;
}
