import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import { severities } from '../show/words.ts';
import { factsOfAct } from './derive-act.ts';
import type { Finding } from './derived.ts';
import type { ActFacts } from './facts.ts';
import { betweenFindings } from './findings/between.ts';
import { findingOf } from './findings/tell.ts';

/** What an output carries in the next act against the act before, as expected sums with the mix's lowering. */
export type OutputChange = {
  outputId: Id;
  /** The mix that leaves there in the next act. */
  mixId: Id;
  /** null: it carried nothing. */
  fromDb: number | null;
  /** null: the mix is empty. */
  toDb: number | null;
};

/** What the engineer has to know before recalling the next act. */
export type BetweenActs = {
  /** Every output of the next act, so that what gets louder is seen before it is heard. */
  outputs: OutputChange[];
  findings: Finding[];
};

/** What follows from one act following another on the same rig. */
export function deriveBetween(before: ActSheet, next: ActSheet): BetweenActs {
  const acts = { before: factsOfAct(before), next: factsOfAct(next) };
  const outputs = outputChanges(acts.before, acts.next);
  const findings = severities.flatMap((severity) =>
    betweenFindings
      .filter((rule) => rule.severity === severity)
      .flatMap((rule) => rule.find({ ...acts, outputs }).map((found) => findingOf({ rule, found }))),
  );
  return { outputs, findings };
}

function outputChanges(before: ActFacts, next: ActFacts): OutputChange[] {
  const fromDb = new Map(sumsOfOutputs(before).map(({ outputId, sumDb }) => [outputId, sumDb]));
  return sumsOfOutputs(next).map(({ outputId, mixId, sumDb }) => ({
    outputId,
    mixId,
    fromDb: fromDb.get(outputId) ?? null,
    toDb: sumDb,
  }));
}

function sumsOfOutputs(facts: ActFacts): { outputId: Id; mixId: Id; sumDb: number | null }[] {
  return facts.mixes.flatMap(({ mix, planned, mixAt }) => {
    const level = facts.levels[mixAt];
    const sumDb = level?.sumDb == null ? null : level.sumDb + level.loweredByDb;
    return planned.outputIds.map((outputId) => ({ outputId, mixId: mix.id, sumDb }));
  });
}
