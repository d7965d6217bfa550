import { pairsOf, sourceOf } from '../facts.ts';
import { alternatesInUse } from '../inputs.ts';
import type { FindingRule } from './rule.ts';
import { aboutSource, casesOfSources } from './say.ts';

/** Faults of second feeds. */
export const alternateFindings: readonly FindingRule[] = [
  {
    code: 'not-on-own-line',
    severity: 'know this',
    when: ['alternates'],
    needs: 'which sources are on an alternate',
    cause: 'An alternate is heard in place of {sources}: {kinds}.',
    remedy: 'Put them back before the act plays, unless it is meant so.',
    find: (facts) => {
      const away = facts.inputs.filter((input) => input.from !== 'own line');
      const sources = away.flatMap((input) => sourceOf(facts, input.sourceId) ?? []);
      const kinds = [...new Set(away.map((input) => `a ${input.from}`))].join(' or ');
      return casesOfSources(sources, { kinds });
    },
  },
  {
    code: 'recording-during-the-show',
    severity: 'must fix',
    when: ['alternates'],
    needs: 'the state of the act, and which sources are on a recorded track',
    cause:
      'The act is {state}, but a recording still plays in place of {sources}: nothing that is sung or played there is heard.',
    remedy: 'Put all sources back on their own lines, with the outputs muted.',
    find: (facts) => {
      const { state } = facts.sheet.act;
      if (state !== 'next' && state !== 'on stage') return [];
      const sources = facts.inputs
        .filter((input) => input.from === 'recorded track')
        .flatMap((input) => sourceOf(facts, input.sourceId) ?? []);
      return casesOfSources(sources, { state });
    },
  },
  {
    code: 'spare-line-plugged-nowhere',
    severity: 'look again',
    when: ['alternates'],
    needs: 'the socket of every spare line',
    cause: '{source} has a spare line that is plugged nowhere, so it would be silent.',
    remedy: 'Give the spare line a socket.',
    find: (facts) =>
      facts.sheet.alternates.flatMap((alternate) => {
        const source = sourceOf(facts, alternate.sourceId);
        const plugged = alternate.socketId !== null && facts.index.socketAt.has(alternate.socketId);
        if (!source || alternate.kind !== 'spare line' || plugged) return [];
        return [{ say: { source }, about: [aboutSource(source)] }];
      }),
  },
  {
    code: 'spare-line-shares-a-socket',
    severity: 'must fix',
    when: ['alternates'],
    needs: 'the sockets of all sources and of every spare line',
    cause: 'The spare line of {source} is on the socket of {other}.',
    remedy: 'Give the spare line a socket of its own.',
    find: (facts) =>
      facts.sheet.alternates.flatMap((alternate) => {
        const source = sourceOf(facts, alternate.sourceId);
        const patch =
          alternate.socketId === null
            ? undefined
            : facts.plan.patches.find((it) => it.socketId === alternate.socketId);
        const other = patch && sourceOf(facts, patch.sourceId);
        if (!source || !other) return [];
        return [
          {
            say: { source, other },
            about: [
              aboutSource(source),
              aboutSource(other),
              { of: 'socket' as const, id: patch.socketId ?? '' },
            ],
          },
        ];
      }),
  },
  {
    code: 'pair-on-different-feeds',
    severity: 'look again',
    when: ['alternates'],
    needs: 'stereo pairs, and which sources are on an alternate',
    cause: '{one} is on {first}, and {other}, the other side of its pair, on {second}.',
    remedy: 'Put both sides on the same feed.',
    find: (facts) =>
      pairsOf(facts).flatMap(({ one, oneAt, other, otherAt }) => {
        const first = facts.inputs[oneAt]?.from ?? 'own line';
        const second = facts.inputs[otherAt]?.from ?? 'own line';
        if (first === second) return [];
        const feed = (from: string) => `its ${from}`;
        return [
          {
            say: { one, other, first: feed(first), second: feed(second) },
            about: [one, other].map(aboutSource),
          },
        ];
      }),
  },
  {
    code: 'two-alternates-at-once',
    severity: 'look again',
    when: ['alternates'],
    needs: 'which alternates are switched on',
    cause: '{source} has two alternates switched on; only {heard} is heard.',
    remedy: 'Switch one of them off.',
    find: (facts) => {
      const heard = alternatesInUse(facts.sheet);
      return facts.sheet.alternates.flatMap((alternate) => {
        const source = sourceOf(facts, alternate.sourceId);
        const first = heard.get(alternate.sourceId);
        if (!source || !alternate.inUse || !first || first.id === alternate.id) return [];
        return [{ say: { source, heard: `its ${first.kind}` }, about: [aboutSource(source)] }];
      });
    },
  },
];
