import { airStage, type LatencyStage, pathLatencyMs } from '../acoustics/latency.ts';
import { latencyGuidance } from '../acoustics/latency-tolerance.ts';
import type { Mix, Source } from '../show/act.ts';
import { addToList } from '../show/add-to-list.ts';
import type { Id } from '../show/rig.ts';
import { factsOfKind } from '../show/source-kinds.ts';
import type { Feed, OwnLatency } from './derived.ts';
import { type ActFacts, copyRowOf } from './facts.ts';
import { feedOf } from './feeds.ts';
import { flows } from './sends.ts';

/**
 * How late performers hear their own sources, where the desk's own latency is known; else empty. Only one's own
 * voice or instrument is heard twice, and so only its delay disturbs.
 */
export function deriveOwnLatencies(facts: Omit<ActFacts, 'ownLatencies'>): OwnLatency[] {
  if (facts.sheet.rig.deskLatencyMs === null) return [];
  const listeners = new Map<Id, Id[]>();
  for (const { mixId, performerId } of facts.sheet.listeners) addToList(listeners, mixId, performerId);
  return facts.sheet.mixes.flatMap((mix, mixAt) =>
    facts.sheet.sources.flatMap((source, sourceAt) => {
      const { performerId } = source;
      if (performerId === null || !flows(facts.sends, sourceAt, mixAt)) return [];
      if (!listeners.get(mix.id)?.includes(performerId)) return [];
      return [ownLatency(facts, mix, source, performerId, feedOf(facts, sourceAt, mixAt))];
    }),
  );
}

function ownLatency(
  facts: Omit<ActFacts, 'ownLatencies'>,
  mix: Mix,
  source: Source,
  performerId: Id,
  feed: Feed,
): OwnLatency {
  const stages = latencyStages(facts, source, feed);
  const latencyMs = pathLatencyMs(stages);
  const monitor = mix.deviceKind === 'in-ear' ? 'in-ear' : 'wedge';
  const { rated, sentences } = latencyGuidance(latencyMs, factsOfKind(source.kind).group, monitor);
  return { performerId, sourceId: source.id, mixId: mix.id, stages, latencyMs, rated, sentences };
}

/** From microphone to ear, as far as it is known. */
function latencyStages(facts: Omit<ActFacts, 'ownLatencies'>, source: Source, feed: Feed): LatencyStage[] {
  const { rig } = facts.sheet;
  const planned = facts.plan.mixes[facts.index.mixAt.get(feed.mixId) ?? -1];
  const device = facts.index.device(planned?.deviceIds[0] ?? '');
  const copy = feed.purpose === null ? undefined : copyRowOf(facts, source.id, feed.purpose);
  const stages: LatencyStage[] = [
    { name: 'pick-up', latencyMs: source.pickUpLatencyMs ?? 0 },
    { name: 'desk', latencyMs: rig.deskLatencyMs ?? 0 },
    { name: 'copy', latencyMs: copy?.latencyMs ?? 0 },
    { name: 'device', latencyMs: device?.latencyMs ?? 0 },
  ];
  if (device && device.kind !== 'in-ear' && device.listeningDistanceM !== null)
    stages.push(airStage(device.listeningDistanceM, rig.airTemperatureC));
  return stages.filter((stage) => stage.latencyMs > 0);
}
