import type { Decision, Source } from '../../show/act.ts';
import { findCircles } from '../circles.ts';
import type { Subject } from '../derived.ts';
import { type ActFacts, mixOf, sourceOf } from '../facts.ts';
import { flows } from '../sends.ts';
import { casesOf, type FindingRule } from './rule.ts';
import { aboutSource, caseOfEachSource, copyName } from './say.ts';

/** Faults of effects and of whatever else comes back to the desk. */
export const effectFindings: readonly FindingRule[] = [
  {
    code: 'signal-in-a-circle',
    severity: 'must fix',
    when: ['decisions', 'something that comes back'],
    needs: 'what feeds effects, what comes back to the desk, and all feeds',
    cause: '{names} {feed} in a circle: the signal comes back to itself and howls.',
    remedy: 'Break the circle: take one link of it out.',
    find: (facts) =>
      findCircles(facts.sheet, facts.index, facts.sends, facts.cues).map((about) => ({
        say: {
          names: about.flatMap((subject) => rowOf(facts, subject) ?? []),
          feed: about.length === 1 ? 'feeds itself' : 'feed each other',
        },
        about,
      })),
  },
  {
    code: 'effect-fed-by-nothing',
    severity: 'know this',
    when: ['effect returns'],
    needs: 'what feeds effects',
    cause: '{source} is an effect that comes back, but nothing is named that feeds it.',
    remedy: 'Name the copies that feed it.',
    find: (facts) =>
      caseOfEachSource(
        facts.sheet.sources.filter((source) => isHouseEffect(source) && sendsTo(facts, source).length === 0),
      ),
  },
  {
    code: 'foh-effect-in-a-mix',
    severity: 'look again',
    when: ['effect returns'],
    needs: 'what feeds effects, and all feeds',
    cause: '{source} is in {mixes}, but is an effect fed from FOH channels: it moves with every FOH fader.',
    remedy: 'Feed an effect for the stage from the copies for monitors.',
    find: (facts) =>
      casesOf(facts.sheet.sources, (source, at) => {
        if (!isEffectReturn(source)) return null;
        const fohSends = sendsTo(facts, source).filter((send) => send.purpose === 'foh');
        if (fohSends.length === 0) return null;
        const mixes = facts.sheet.mixes.filter((_, mixAt) => flows(facts.sends, at, mixAt));
        const doubled = fohSends.filter((send) => has(facts, send, 'monitors'));
        if (doubled.length === 0 || mixes.length === 0) return null;
        return { say: { source, mixes }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'monitor-effect-at-front-of-house',
    severity: 'look again',
    when: ['effect returns'],
    needs: 'what feeds effects, and where they are heard',
    cause:
      '{source} is fed from copies for the stage, but has a channel for front of house: what the performer asks for reaches the audience.',
    remedy: 'Let it be heard in the monitors only.',
    find: (facts) =>
      casesOf(facts.sheet.sources, (source, at) => {
        if (!isEffectReturn(source)) return null;
        const fromStage = sendsTo(facts, source).some(
          (send) => send.purpose !== 'foh' && send.purpose !== 'parallel',
        );
        return fromStage && facts.copies[at]?.foh != null
          ? { say: { source }, about: [aboutSource(source)] }
          : null;
      }),
  },
  {
    code: 'effect-send-without-copy',
    severity: 'look again',
    when: ['effect returns'],
    needs: 'what feeds effects, and the copies there are',
    cause: '{effect} is to be fed from {copy} of {source}, which has no such channel.',
    remedy: 'Feed it from a copy that is there.',
    find: (facts) =>
      facts.sheet.sources.filter(isEffectReturn).flatMap((effect) =>
        sendsTo(facts, effect).flatMap((send) => {
          const source = sourceOf(facts, send.sourceId);
          if (!source || has(facts, send, send.purpose)) return [];
          return [
            {
              say: { effect, source, copy: copyName(send.purpose) },
              about: [effect, source].map(aboutSource),
            },
          ];
        }),
      ),
  },
];

const isEffectReturn = (source: Source) => source.kind === 'effect return';

type EffectSend = Extract<Decision, { about: 'effect send' }>;

/** An effect that comes back inside the desk; one that is plugged in from outside is fed outside. */
function isHouseEffect(source: Source): boolean {
  return isEffectReturn(source) && source.pickUp === null && source.audience !== 'not here';
}

function sendsTo(facts: ActFacts, effect: Source): EffectSend[] {
  if (!isEffectReturn(effect)) return [];
  return facts.sheet.decisions.filter(
    (decision): decision is EffectSend =>
      decision.about === 'effect send' && decision.returnSourceId === effect.id,
  );
}

function has(facts: ActFacts, send: EffectSend, purpose: EffectSend['purpose']): boolean {
  return facts.copies[facts.index.sourceAt.get(send.sourceId) ?? -1]?.[purpose] != null;
}

function rowOf(facts: ActFacts, subject: Subject): { name: string } | undefined {
  if (subject.of === 'source') return sourceOf(facts, subject.id);
  if (subject.of === 'mix') return mixOf(facts, subject.id);
  return subject.of === 'cueOutput' ? facts.sheet.cueOutputs.find((cue) => cue.id === subject.id) : undefined;
}
