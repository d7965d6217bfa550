import { needsSocket } from '../../plan/plan-sockets.ts';
import type { Source } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import { placeOfSource } from '../../show/place-of-source.ts';
import { remembered } from '../../show/remember.ts';
import type { Id } from '../../show/rig.ts';
import { socketName } from '../../show/socket-name.ts';
import { distanceM, placeOf } from '../../show/stage-place.ts';
import { type ActFacts, pairsOf, sourceOf } from '../facts.ts';
import { flows } from '../sends.ts';
import { casesOf, type FindingRule } from './rule.ts';
import { aboutSource, listed, number } from './say.ts';

/** Faults of where sources are plugged. */
export const socketFindings: readonly FindingRule[] = [
  {
    code: 'source-without-socket',
    severity: 'must fix',
    when: ['lines without socket'],
    needs: 'the sockets of the rig, their 48 V switches, and those the act needs',
    cause: '{source} has no socket: {reason}.',
    remedy: 'Drop a source, mark what is not to be heard here, or bring a box.',
    find: (facts) =>
      casesOf(facts.plan.patches, ({ sourceId, socketId, why }) => {
        const source = socketId === null ? sourceOf(facts, sourceId) : undefined;
        if (!source || !needsSocket(source)) return null;
        const needed = facts.sheet.sources.filter(needsSocket).length;
        const there = facts.sheet.sockets.filter((socket) => socket.reservedFor === null).length;
        const reason =
          needed > there
            ? `needed ${needed}, free to use ${there}`
            : why.replace(/^No/, 'no').replace(/\.$/, '');
        return { say: { source, reason }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'socket-used-twice',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'the sockets of all sources',
    cause: 'Socket {socket} is given to {sources}: only one of them can be plugged there.',
    remedy: 'Plug one of them elsewhere.',
    find: (facts) => {
      return [...sourcesBySocket(facts)]
        .filter(([, sources]) => sources.length > 1)
        .map(([id, sources]) => ({
          say: { socket: socketSaid(facts, id), sources },
          about: [{ of: 'socket', id } as const, ...sources.map(aboutSource)],
        }));
    },
  },
  {
    code: 'socket-is-reserved',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the sockets of all sources, and what the rig reserves',
    cause: '{source} is plugged at {socket}, which is kept for {use}.',
    remedy: 'Plug it elsewhere, or free the socket.',
    find: (facts) => {
      return [...sourcesBySocket(facts)].flatMap(([id, sources]) => {
        const use = facts.index.socket(id)?.reservedFor ?? null;
        if (use === null) return [];
        return sources.map((source) => ({
          say: { source, socket: socketSaid(facts, id), use },
          about: [{ of: 'socket', id } as const, aboutSource(source)],
        }));
      });
    },
  },
  {
    code: 'cable-does-not-reach',
    severity: 'look again',
    when: ['boxes with a reach'],
    needs: 'where sources and boxes stand, and how far their cables reach',
    cause: '{source} stands {apart} m from box {box}, and its cables reach {reach} m.',
    remedy: 'Plug it into a nearer box, move the box, or lay a longer cable.',
    find: (facts) =>
      casesOf(facts.plan.patches, ({ sourceId, socketId }) => {
        const socket = socketId === null ? undefined : facts.index.socket(socketId);
        const box = socket && facts.index.box(socket.boxId);
        const to = box && placeOf(box);
        if (!socket || !to || box.reachM === null) return null;
        const source = sourceOf(facts, sourceId);
        const from = source && placeOfSource(facts.sheet, source);
        if (!from) return null;
        const apartM = distanceM(from, to);
        if (apartM <= box.reachM) return null;
        return {
          say: {
            source,
            box,
            apart: number(apartM),
            reach: number(box.reachM),
          },
          about: [aboutSource(source), { of: 'socket', id: socket.id }],
        };
      }),
  },
  {
    code: 'pair-sockets-apart',
    severity: 'know this',
    when: ['pairs'],
    needs: 'stereo pairs, and the sockets of all sources',
    cause: '{one} and {other} are a pair, but not side by side on one box.',
    remedy: 'Plug them side by side, so that nobody swaps the sides.',
    find: (facts) =>
      pairsOf(facts).flatMap(({ one, oneAt, other, otherAt }) => {
        const a = facts.index.socket(facts.plan.patches[oneAt]?.socketId ?? '');
        const b = facts.index.socket(facts.plan.patches[otherAt]?.socketId ?? '');
        if (!a || !b || (a.boxId === b.boxId && Math.abs(a.number - b.number) === 1)) return [];
        return [{ say: { one, other }, about: [one, other].map(aboutSource) }];
      }),
  },
  {
    code: 'no-spare-vocal',
    severity: 'look again',
    when: ['lead vocals'],
    needs: 'the sources of the act',
    cause: '{lead} has no spare: if the microphone fails, there is nothing ready to take.',
    remedy: 'Add a spare vocal microphone with the same copies and mixes, muted.',
    find: (facts) => {
      const heard = facts.sheet.sources.filter((source) => source.audience !== 'not here');
      const lead = heard.find((source) => source.kind === 'lead vocal');
      if (!lead || heard.some((source) => source.kind === 'spare vocal')) return [];
      return [{ say: { lead }, about: [aboutSource(lead)] }];
    },
  },
  {
    code: 'spare-vocal-unlike-lead',
    severity: 'look again',
    when: ['lead vocals'],
    needs: 'the copies and feeds of the lead vocal and its spare',
    cause: '{spare} cannot stand in for {lead}: it lacks {lack}.',
    remedy: 'Give the spare the same copies and mixes as the lead vocal, muted.',
    find: (facts) => {
      const leadAt = facts.sheet.sources.findIndex((source) => source.kind === 'lead vocal');
      const lead = facts.sheet.sources[leadAt];
      if (!lead) return [];
      return facts.sheet.sources.flatMap((spare, spareAt) => {
        if (spare.kind !== 'spare vocal' || spare.audience === 'not here') return [];
        const lack = lackOfSpare(facts, leadAt, spareAt);
        if (lack === null) return [];
        return [{ say: { spare, lead, lack }, about: [spare, lead].map(aboutSource) }];
      });
    },
  },
];

/** A socket as it is written on the box: A1. */
export function socketSaid(facts: ActFacts, id: Id): string {
  return socketName(facts.sheet, id) ?? 'that is not in the rig';
}

const sourcesBySocket = remembered((facts: ActFacts): Map<Id, Source[]> => {
  const bySocket = new Map<Id, Source[]>();
  for (const { sourceId, socketId } of facts.plan.patches) {
    const source = sourceOf(facts, sourceId);
    if (!source || socketId === null) continue;
    addToList(bySocket, socketId, source);
  }
  return bySocket;
});

function lackOfSpare(facts: ActFacts, leadAt: number, spareAt: number): string | null {
  const lead = facts.copies[leadAt];
  const spare = facts.copies[spareAt];
  if (lead?.monitors != null && spare?.monitors == null) return 'a copy for monitors';
  const missing = facts.sheet.mixes.filter((_, mixAt) => {
    return flows(facts.sends, leadAt, mixAt) && !flows(facts.sends, spareAt, mixAt);
  });
  return missing.length === 0 ? null : `a place in ${listed(missing)}`;
}
