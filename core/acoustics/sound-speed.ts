import { requireBetween } from './range.ts';

const coldestAirC = -60;
const hottestAirC = 60;
const kelvinAtZeroC = 273.15;
/** Mole fraction in outdoor air, 400 ppm; the older 314 ppm give 0.008 m/s more. */
const carbonDioxide = 0.0004;

/**
 * Speed of sound in dry air, in metres per second, from -60 to 60 degrees Celsius.
 * Source: ISO 9613-1:1993, 343.2 m/s at 293.15 K and the square root of the absolute temperature.
 * Textbooks spread from 342.6 to 344 m/s at 20 C.
 */
export function soundSpeedMPerS(airTemperatureC: number): number {
  requireBetween(coldestAirC, hottestAirC, { airTemperatureC });
  return 343.2 * Math.sqrt((airTemperatureC + kelvinAtZeroC) / 293.15);
}

export type Air = { temperatureC: number; relativeHumidityPercent: number; pressureKpa: number };

/**
 * Speed of sound in humid air, in metres per second; null outside 0 to 30 degrees Celsius and 75 to 102 kPa, for
 * which the formula was published. Humidity matters little: 0.6 m/s at 20 C and 50 %, under 0.02 ms over 3 m.
 * Source: O. Cramer, J. Acoust. Soc. Am. 93 (1993) 2510, equation 15 and table III. One public page of it drops
 * the coefficient -2.93e-10 and shifts the rest by one.
 */
export function soundSpeedInHumidAirMPerS(air: Air): number | null {
  const { temperatureC: t, relativeHumidityPercent, pressureKpa } = air;
  requireBetween(0, 100, { relativeHumidityPercent });
  requireBetween(coldestAirC, hottestAirC, { temperatureC: t });
  requireBetween(1, 200, { pressureKpa });
  if (t < 0 || t > 30 || pressureKpa < 75 || pressureKpa > 102) return null;
  const p = pressureKpa * 1000;
  const water = waterVapourFraction(t, relativeHumidityPercent, p);
  return (
    331.5024 +
    0.603055 * t -
    0.000528 * t ** 2 +
    (51.471935 + 0.1495874 * t - 0.000782 * t ** 2) * water +
    (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * t ** 2) * p +
    (-85.20931 - 0.228525 * t + 5.91e-5 * t ** 2) * carbonDioxide -
    2.835149 * water ** 2 -
    2.15e-13 * p ** 2 +
    29.179762 * carbonDioxide ** 2 +
    0.000486 * water * p * carbonDioxide
  );
}

/**
 * Mole fraction of water in the air. Source: R. S. Davis, Metrologia 29 (1992) 67 for the saturation pressure;
 * the older constants in the appendix of the 1993 paper give 0.0008 m/s less at 20 C and 100 %.
 */
function waterVapourFraction(
  temperatureC: number,
  relativeHumidityPercent: number,
  pressurePa: number,
): number {
  const kelvin = temperatureC + kelvinAtZeroC;
  const enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * temperatureC ** 2;
  const saturationPa = Math.exp(
    1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin,
  );
  return ((relativeHumidityPercent / 100) * enhancement * saturationPa) / pressurePa;
}
