import { delayMs } from './delay.ts';
import { requireNotNegative } from './range.ts';

/** One stage of a path from microphone to ear: a wireless link, the desk, a converter. */
export type LatencyStage = { name: string; latencyMs: number };

/** Sum of the stages, in milliseconds; 0 for none. */
export function pathLatencyMs(stages: readonly LatencyStage[]): number {
  return stages.reduce((sumMs, { name, latencyMs }) => {
    requireNotNegative({ [`latencyMs of ${name}`]: latencyMs });
    return sumMs + latencyMs;
  }, 0);
}

/** The stage that a loudspeaker adds: the way through the air to the ear. */
export function airStage(distanceM: number, airTemperatureC: number): LatencyStage {
  return { name: 'air', latencyMs: delayMs(distanceM, airTemperatureC) };
}
