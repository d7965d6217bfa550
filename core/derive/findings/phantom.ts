import { switchesOf } from '../../plan/plan-phantom.ts';
import type { Source } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import { remembered } from '../../show/remember.ts';
import { type ActFacts, sourceOf } from '../facts.ts';
import type { FindingRule } from './rule.ts';
import { aboutSource, caseOfEachSource, casesOfSources } from './say.ts';

/** Faults of phantom power. */
export const phantomFindings: readonly FindingRule[] = [
  {
    code: 'phantom-harms',
    severity: 'must fix',
    when: ['lines that 48 V harms'],
    needs: 'which sources 48 V harms, and the switches of their sockets',
    cause: '{source} must not get 48 V, but the switch of its socket is on.',
    remedy: 'Switch it off with the outputs muted, or plug {source} where 48 V is off.',
    find: (facts) => caseOfEachSource(patched(facts, (source, on) => source.phantom === 'harmful' && on)),
  },
  {
    code: 'phantom-missing',
    severity: 'look again',
    when: ['lines that lack 48 V'],
    needs: 'which sources need 48 V, and the switches of their sockets',
    cause: '{source} needs 48 V, but the switch of its socket is off: it will be silent.',
    remedy: 'Switch it on with the outputs muted, or plug {source} where 48 V is on.',
    find: (facts) => caseOfEachSource(patched(facts, (source, on) => source.phantom === 'needed' && !on)),
  },
  {
    code: 'phantom-bank-disagrees',
    severity: 'must fix',
    when: ['lines that 48 V harms'],
    needs: 'which sockets share one 48 V switch',
    cause: '48 V is needed by {needing} and harmful to {harmed}, but all hang on one switch.',
    remedy: 'Plug one of them into another bank.',
    find: (facts) =>
      sourcesBySwitch(facts).flatMap((sources) => {
        const needing = sources.filter((source) => source.phantom === 'needed');
        const harmed = sources.filter((source) => source.phantom === 'harmful');
        if (needing.length === 0 || harmed.length === 0) return [];
        return [
          {
            say: { needing, harmed },
            about: [...needing, ...harmed].map(aboutSource),
          },
        ];
      }),
  },
  {
    code: 'phantom-decided-both-ways',
    severity: 'look again',
    when: ['decisions'],
    needs: 'what was decided on 48 V, and which sockets share one switch',
    cause:
      '48 V was decided on for {on} and off for {off}, but both hang on one switch; the plan leaves it off.',
    remedy: 'Decide it for the switch, or plug one of them into another bank.',
    find: (facts) =>
      sourcesBySwitch(facts).flatMap((sources) => {
        const decisionOf = ({ id }: Source) =>
          facts.decided.phantomOfSource[facts.index.sourceAt.get(id) ?? -1];
        const decidedAs = (on: boolean) => sources.filter((source) => decisionOf(source)?.value === on);
        const on = decidedAs(true);
        const off = decidedAs(false);
        if (on.length === 0 || off.length === 0) return [];
        return [{ say: { on, off }, about: [...on, ...off].map(aboutSource) }];
      }),
  },
  {
    code: 'phantom-not-said',
    severity: 'know this',
    needs: 'what the rider says on 48 V',
    cause: 'Nobody has said whether 48 V is needed or harmful for {sources}; the plan leaves it off.',
    remedy: 'Ask the band: no mark in a rider means unknown, not off.',
    find: (facts) => {
      const sources = facts.sheet.sources.filter(
        (source, at) =>
          source.phantom === 'not said' &&
          (source.pickUp === 'mic' || source.pickUp === 'di') &&
          source.audience !== 'not here' &&
          facts.decided.phantomOfSource[at] === undefined,
      );
      return casesOfSources(sources);
    },
  },
];

function patched(facts: ActFacts, isSo: (source: Source, on: boolean) => boolean): Source[] {
  return facts.sheet.sources.filter((source, at) => {
    const patch = facts.plan.patches[at];
    return patch !== undefined && patch.socketId !== null && isSo(source, patch.phantomOn);
  });
}

/** Sources that hang on one switch, in groups of at least two. */
const sourcesBySwitch = remembered((facts: ActFacts): Source[][] => {
  const switchOf = switchesOf(facts.sheet);
  const groups = new Map<number, Source[]>();
  for (const { sourceId, socketId } of facts.plan.patches) {
    const source = sourceOf(facts, sourceId);
    const number = socketId === null ? undefined : switchOf(socketId);
    if (!source || number === undefined) continue;
    addToList(groups, number, source);
  }
  return [...groups.values()].filter((sources) => sources.length > 1);
});
