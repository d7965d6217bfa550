import type { Source } from '../../show/act.ts';
import type { Device, Id } from '../../show/rig.ts';
import type { OutputChange } from '../between-acts.ts';
import { type ActFacts, mixOf, sourceOf } from '../facts.ts';
import type { Case, FindingRule } from './rule.ts';
import { aboutSource, decibels, number } from './say.ts';
import { socketSaid } from './sockets.ts';

/** What is known of two acts that follow each other. */
export type TwoActs = { before: ActFacts; next: ActFacts; outputs: readonly OutputChange[] };

/** A kind of fault that only two acts together show; its subjects are rows of the next act. */
export type BetweenRule = Omit<FindingRule, 'find'> & { find: (acts: TwoActs) => readonly Case[] };

/** A gain that stays on a socket and is this far from what the next source needs can hurt. Common practice. */
const dangerousGainDb = 20;
/** An output that comes up by more than this on a recall is worth a look. Common practice. */
const louderDb = 6;
/** To take a pack back, wipe it, change its battery and hand it out again. Common practice. */
const packTurnaroundMinutes = 10;

/** Faults between one act and the next. */
export const betweenFindings: readonly BetweenRule[] = [
  {
    code: 'phantom-left-from-before',
    severity: 'must fix',
    needs: 'sockets and 48 V of both acts',
    cause:
      '{source} must not get 48 V, and {socket}, where it is plugged, has it on for {other} of the act before.',
    remedy: 'Switch it off with the outputs muted before {source} is plugged, or plug it elsewhere.',
    find: ({ before, next }) =>
      sharedSockets(before, next)
        .filter(({ old, source }) => source.phantom === 'harmful' && old.phantomOn)
        .map(({ old, source, socketId }) => ({
          say: { source, socket: socketSaid(next, socketId), other: old.source },
          about: [aboutSource(source), { of: 'socket', id: socketId }],
        })),
  },
  {
    code: 'gain-left-from-before',
    severity: 'must fix',
    needs: 'sockets of both acts, and the gains that were set or are needed',
    cause:
      '{source} comes to {socket}, where the gain stands at {gain} for {other} of the act before; it needs about {needed}.',
    remedy: 'Turn the gain down, with the outputs muted, before {source} is plugged.',
    find: ({ before, next }) =>
      sharedSockets(before, next).flatMap(({ old, source, socketId }) => {
        const stands = old.gainDb;
        const gain = next.gains[next.index.sourceAt.get(source.id) ?? -1];
        const needed = gain?.gainDb ?? gain?.neededDb ?? null;
        if (stands === null || needed === null || stands - needed <= dangerousGainDb) return [];
        return [
          {
            say: {
              source,
              socket: socketSaid(next, socketId),
              gain: decibels(stands),
              other: old.source,
              needed: decibels(needed),
            },
            about: [aboutSource(source), { of: 'socket' as const, id: socketId }],
          },
        ];
      }),
  },
  {
    code: 'louder-on-recall',
    severity: 'must fix',
    needs: 'what every output carries in both acts',
    cause: 'On recall {output} comes up by {rise} for {mix}.',
    remedy: 'Recall with all outputs muted, and open {output} from silence.',
    find: ({ next, outputs }) =>
      outputs.flatMap(({ outputId, mixId, fromDb, toDb }) => {
        if (fromDb === null || toDb === null || toDb - fromDb <= louderDb) return [];
        return [caseOfOutput(next, outputId, mixId, { rise: decibels(toDb - fromDb).replace('+', '') })];
      }),
  },
  {
    code: 'opens-on-recall',
    severity: 'look again',
    needs: 'what every output carries in both acts',
    cause: 'On recall outputs open that carried nothing before: {outputs}.',
    remedy: 'Recall with all outputs muted, and open each from silence when somebody is there to hear it.',
    find: ({ next, outputs }) => {
      const opened = outputs.filter((it) => it.fromDb === null && it.toDb !== null);
      if (opened.length === 0) return [];
      const rows = opened.flatMap(({ outputId }) => next.index.output(outputId) ?? []);
      return [
        {
          say: { outputs: rows },
          about: opened.map(({ outputId }) => ({ of: 'output' as const, id: outputId })),
        },
      ];
    },
  },
  {
    code: 'pack-handed-straight-on',
    severity: 'look again',
    needs: 'packs and times of both acts',
    cause: '{device} is worn in both acts, and only {minutes} minutes lie between them.',
    remedy: 'Give the next act another pack, or have wipes and batteries ready at the stage.',
    find: ({ before, next }) => {
      const end = before.sheet.act.endMinute;
      const start = next.sheet.act.startMinute;
      if (end === null || start === null || start - end >= packTurnaroundMinutes) return [];
      const worn = new Set(packsOf(before).map((device) => device.id));
      return packsOf(next)
        .filter((device) => worn.has(device.id))
        .map((device) => ({
          say: { device, minutes: number(Math.max(0, start - end), 0) },
          about: [{ of: 'device', id: device.id }],
        }));
    },
  },
];

type OldLine = { source: Source; phantomOn: boolean; gainDb: number | null };

/** Sockets that both acts use, with what stands there from the act before. */
function sharedSockets(before: ActFacts, next: ActFacts): { old: OldLine; source: Source; socketId: Id }[] {
  const olds = new Map<Id, OldLine>();
  before.plan.patches.forEach(({ sourceId, socketId, phantomOn }, at) => {
    const source = sourceOf(before, sourceId);
    const gain = before.gains[at];
    if (source && socketId !== null)
      olds.set(socketId, { source, phantomOn, gainDb: gain?.gainDb ?? gain?.neededDb ?? null });
  });
  return next.plan.patches.flatMap(({ sourceId, socketId }) => {
    const old = socketId === null ? undefined : olds.get(socketId);
    const source = sourceOf(next, sourceId);
    return old && source && socketId !== null ? [{ old, source, socketId }] : [];
  });
}

function packsOf(facts: ActFacts): Device[] {
  return facts.mixes
    .flatMap(({ planned }) => planned.deviceIds)
    .flatMap((id) => facts.index.device(id) ?? [])
    .filter((device) => device.kind === 'in-ear');
}

function caseOfOutput(next: ActFacts, outputId: Id, mixId: Id, say: NonNullable<Case['say']>): Case {
  return {
    say: { output: next.index.output(outputId), mix: mixOf(next, mixId), ...say },
    about: [
      { of: 'output', id: outputId },
      { of: 'mix', id: mixId },
    ],
  };
}
