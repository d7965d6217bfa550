import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { unitsOfSources } from '../../../core/plan/doubling-order.ts';
import type { Plan } from '../../../core/plan/plan.ts';
import { planAct } from '../../../core/plan/plan-act.ts';
import { needsSocket } from '../../../core/plan/plan-sockets.ts';
import type { ActSheet } from '../../../core/show/act-sheet.ts';
import { anySheet, patienceMs } from './any-act.ts';

vi.setConfig({ testTimeout: patienceMs });

function holds(name: string, check: (sheet: ActSheet, plan: Plan) => void): void {
  test(name, () =>
    fc.assert(
      fc.property(anySheet, (sheet) => check(sheet, planAct(sheet))),
      { numRuns: 400 },
    ),
  );
}

/** Values that occur more than once. */
function twice<T>(values: readonly T[]): T[] {
  return values.filter((value, at) => values.indexOf(value) !== at);
}

const there = <T>(value: T | null | undefined): value is T => value !== null && value !== undefined;

describe('whatever an act holds, its plan', () => {
  holds('has one patch for each source and one plan for each mix, in sheet order', (sheet, plan) => {
    expect(plan.patches.map((it) => it.sourceId)).toEqual(sheet.sources.map((it) => it.id));
    expect(plan.mixes.map((it) => it.mixId)).toEqual(sheet.mixes.map((it) => it.id));
  });

  holds('keeps every copy row of the engineer', (sheet, plan) => {
    const last = new Map(sheet.copies.map((row) => [`${row.sourceId} ${row.purpose}`, row]));
    for (const row of last.values()) {
      const planned = plan.copies.filter((it) => it.sourceId === row.sourceId && it.purpose === row.purpose);
      expect(planned.length).toBe(row.wanted ? 1 : 0);
      if (row.wanted && row.channel !== null) expect(planned[0]?.channel).toBe(row.channel);
    }
  });

  holds('has at most one copy of a source for one purpose', (_, plan) => {
    expect(twice(plan.copies.map((it) => `${it.sourceId} ${it.purpose}`))).toEqual([]);
  });

  holds('gives no proposed channel twice, and none that the desk does not have', (sheet, plan) => {
    const decided = new Set(sheet.copies.map((row) => row.channel));
    const channels = plan.copies.map((it) => it.channel).filter(there);
    for (const channel of twice(channels)) expect(decided).toContain(channel);
    for (const channel of channels)
      if (!decided.has(channel)) expect(channel).toBeLessThanOrEqual(sheet.rig.channelCount);
  });

  holds('leaves no channel of the desk free while a copy has none', (sheet, plan) => {
    const used = new Set(plan.copies.map((it) => it.channel));
    const isFull = Array.from({ length: sheet.rig.channelCount }, (_, at) => at + 1).every((channel) =>
      used.has(channel),
    );
    if (plan.copies.some((it) => it.channel === null)) expect(isFull).toBe(true);
  });

  holds(
    'proposes copies for monitors to the whole of what belongs together, or to none of it',
    (sheet, plan) => {
      const proposed = new Set(
        plan.copies
          .filter((it) => it.purpose === 'monitors' && it.why.startsWith('A copy for'))
          .map((it) => it.sourceId),
      );
      for (const places of new Set(unitsOfSources(sheet.sources))) {
        const unit = places.flatMap((at) => sheet.sources[at] ?? []);
        if (!unit.some((source) => proposed.has(source.id))) continue;
        for (const source of unit.filter((it) => it.audience === 'front of house and monitors'))
          expect(plan.copies.some((it) => it.sourceId === source.id && it.purpose === 'monitors')).toBe(true);
      }
    },
  );

  holds(
    'plugs sources where it was decided, and proposes no socket that is taken, reserved or a spare line’s',
    (sheet, plan) => {
      const decided = new Map(
        sheet.decisions.flatMap((it) => (it.about === 'socket' ? [[it.sourceId, it.socketId]] : [])),
      );
      const kept = new Set([
        ...decided.values(),
        ...sheet.alternates.map((it) => it.socketId),
        ...sheet.sockets.filter((it) => it.reservedFor !== null).map((it) => it.id),
      ]);
      const proposed = plan.patches
        .filter((it) => !decided.has(it.sourceId))
        .map((it) => it.socketId)
        .filter(there);
      for (const { sourceId, socketId } of plan.patches)
        if (decided.has(sourceId)) expect(socketId).toBe(decided.get(sourceId));
      expect(twice(proposed)).toEqual([]);
      for (const socketId of proposed) expect(kept.has(socketId)).toBe(false);
      for (const source of sheet.sources.filter((it) => !needsSocket(it) && !decided.has(it.id)))
        expect(plan.patches.find((it) => it.sourceId === source.id)?.socketId).toBeNull();
    },
  );

  holds(
    'gives sources on one 48 V switch one state, and never 48 V to what it harms unless that was decided',
    (sheet, plan) => {
      const boxes = new Map(sheet.boxes.map((box) => [box.id, box]));
      const states = new Map<string, boolean>();
      for (const patch of plan.patches) {
        const socket = sheet.sockets.find((it) => it.id === patch.socketId);
        const bankSize = boxes.get(socket?.boxId ?? '')?.phantomBankSize;
        const source = sheet.sources.find((it) => it.id === patch.sourceId);
        if (source?.phantom === 'harmful' && patch.phantomOn)
          expect(sheet.decisions.some((it) => it.about === 'phantom' && it.on)).toBe(true);
        if (!socket || bankSize === undefined) continue;
        const name = `${socket.boxId} ${Math.ceil(socket.number / bankSize)}`;
        expect(states.get(name) ?? patch.phantomOn).toBe(patch.phantomOn);
        states.set(name, patch.phantomOn);
      }
    },
  );

  holds(
    'proposes no bus that is taken, reserved or the cue’s, and odd and even ones to stereo mixes',
    (sheet, plan) => {
      const decided = new Set(sheet.decisions.flatMap((it) => (it.about === 'bus' ? [it.mixId] : [])));
      const cueBusIds = new Set(sheet.cueOutputs.map((it) => it.busId));
      const proposed = plan.mixes.filter((it) => !decided.has(it.mixId));
      const decidedBusIds = new Set(
        plan.mixes.filter((it) => decided.has(it.mixId)).flatMap((it) => it.busIds),
      );
      expect(twice(proposed.flatMap((it) => it.busIds))).toEqual([]);
      for (const { format, busIds } of proposed) {
        const buses = busIds.flatMap((id) => sheet.buses.filter((bus) => bus.id === id));
        for (const bus of buses) {
          expect([bus.reservedFor, cueBusIds.has(bus.id), decidedBusIds.has(bus.id)]).toEqual([
            null,
            false,
            false,
          ]);
        }
        const [left, right] = buses.map((bus) => bus.number);
        if (format === 'stereo' && left !== undefined) expect([left % 2, right]).toEqual([1, left + 1]);
        else expect(buses.length).toBeLessThanOrEqual(1);
      }
    },
  );

  holds('proposes no output that is taken, reserved, a record feed or the cue’s', (sheet, plan) => {
    const decided = new Set(sheet.decisions.flatMap((it) => (it.about === 'output' ? [it.mixId] : [])));
    const cueOutputIds = new Set(sheet.cueOutputs.flatMap((it) => [it.outputId, it.secondOutputId]));
    const decidedIds = new Set(
      plan.mixes.filter((it) => decided.has(it.mixId)).flatMap((it) => it.outputIds),
    );
    const proposed = plan.mixes.filter((it) => !decided.has(it.mixId)).flatMap((it) => it.outputIds);
    expect(twice(proposed)).toEqual([]);
    for (const id of proposed) {
      const output = sheet.outputs.find((it) => it.id === id);
      expect([output?.reservedFor, output?.place === 'record']).toEqual([null, false]);
      expect([cueOutputIds.has(id), decidedIds.has(id)]).toEqual([false, false]);
    }
  });

  holds(
    'proposes devices of the right kind, never the engineer’s, reserved ones or one twice',
    (sheet, plan) => {
      const decided = new Set(sheet.decisions.flatMap((it) => (it.about === 'device' ? [it.mixId] : [])));
      const decidedIds = new Set(
        plan.mixes.filter((it) => decided.has(it.mixId)).flatMap((it) => it.deviceIds),
      );
      const proposed = plan.mixes.filter((it) => !decided.has(it.mixId));
      expect(twice(proposed.flatMap((it) => it.deviceIds))).toEqual([]);
      for (const { mixId, deviceIds } of proposed) {
        const mix = sheet.mixes.find((it) => it.id === mixId);
        expect(deviceIds.length).toBeLessThanOrEqual(mix?.deviceCount ?? 0);
        for (const id of deviceIds) {
          const device = sheet.devices.find((it) => it.id === id);
          expect([device?.kind, device?.forCue, device?.reservedFor]).toEqual([mix?.deviceKind, false, null]);
          expect(decidedIds.has(id)).toBe(false);
        }
      }
    },
  );
});
