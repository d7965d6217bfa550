import { requireNotNegative, requirePositive } from './range.ts';
import { soundSpeedMPerS } from './sound-speed.ts';

/**
 * Time that sound takes over a distance, in milliseconds: about 2.9 ms a metre at 20 C (rule of thumb: 3).
 * Source: ISO 9613-1:1993 for the speed.
 */
export function delayMs(distanceM: number, airTemperatureC: number): number {
  requireNotNegative({ distanceM });
  return (1000 / soundSpeedMPerS(airTemperatureC)) * distanceM;
}

/** Distance that sound covers in a time, in metres. */
export function distanceM(delayMs: number, airTemperatureC: number): number {
  requireNotNegative({ delayMs });
  return (soundSpeedMPerS(airTemperatureC) / 1000) * delayMs;
}

/** The nearest whole number of samples for a delay. */
export function samplesOfDelay(delayMs: number, sampleRateHz: number): number {
  requireNotNegative({ delayMs });
  requirePositive({ sampleRateHz });
  return Math.round(delayMs * (sampleRateHz / 1000));
}

/** Delay of a number of samples, in milliseconds. */
export function delayMsOfSamples(samples: number, sampleRateHz: number): number {
  requireNotNegative({ samples });
  requirePositive({ sampleRateHz });
  return (samples / sampleRateHz) * 1000;
}
