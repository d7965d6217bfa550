import { airStage, type LatencyStage, pathLatencyMs } from '../acoustics/latency.ts';
import type { Feed } from './derived.ts';
import { type ActFacts, sourceOf } from './facts.ts';

/** The stages of a feed from microphone to ear that are known, in order; null where the desk's own is not known. */
function latencyStages(facts: ActFacts, feed: Feed): LatencyStage[] | null {
  const { rig } = facts.sheet;
  if (rig.deskLatencyMs === null) return null;
  const planned = facts.plan.mixes[facts.index.mixAt.get(feed.mixId) ?? -1];
  const device = facts.deviceById.get(planned?.deviceIds[0] ?? '');
  const copy = facts.sheet.copies.find((it) => it.sourceId === feed.sourceId && it.purpose === feed.purpose);
  const stages: LatencyStage[] = [
    { name: 'pick-up', latencyMs: sourceOf(facts, feed.sourceId)?.pickUpLatencyMs ?? 0 },
    { name: 'desk', latencyMs: rig.deskLatencyMs },
    { name: 'copy', latencyMs: copy?.latencyMs ?? 0 },
    { name: 'device', latencyMs: device?.latencyMs ?? 0 },
  ];
  if (device && device.kind !== 'in-ear' && device.listeningDistanceM !== null)
    stages.push(airStage(device.listeningDistanceM, rig.airTemperatureC));
  return stages.filter((stage) => stage.latencyMs > 0);
}

/** From microphone to ear, in milliseconds, as far as it is known; null where the desk's own latency is not. */
export function latencyToEar(facts: ActFacts, feed: Feed): number | null {
  const stages = latencyStages(facts, feed);
  return stages && pathLatencyMs(stages);
}
