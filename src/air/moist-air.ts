// Water in the air and what it does to the density, by psychrolib.
// That package keeps its unit system in one shared object. We make our own object for each
// question, set to SI, so nothing here depends on anyone else's setting or disturbs it.
//
// Source: ASHRAE Handbook of Fundamentals (2017), chapter 1, equations 5, 6, 11, 20 and 26,
// as implemented by PsychroLib 2.5.

import psychrolib from 'psychrolib';
import type { Psychrometrics } from 'psychrolib';

/**
 * Mass of water vapour carried by each kilogram of dry air.
 * @param temperature - dry-bulb temperature, −100 to 200 [°C]
 * @param humidity - relative humidity, 0 to 1 [-]
 * @param pressure - absolute pressure, above that of the vapour [Pa]
 * @returns humidity ratio, at least 1e-7 [-]
 * @throws RangeError outside these ranges
 * @example humidityRatio(20, 0.5, 101325); // => 0.00726
 */
export function humidityRatio(temperature: number, humidity: number, pressure: number): number {
  mustLie('temperature', temperature, -100, 200);
  mustLie('relative humidity', humidity, 0, 1);
  const vapour = inSi().GetVapPresFromRelHum(temperature, humidity);
  if (!(pressure > vapour)) {
    throw new RangeError(
      `pressure must be above ${vapour} Pa, that of the vapour, not ${pressure}`,
    );
  }
  return inSi().GetHumRatioFromVapPres(vapour, pressure);
}

/**
 * Density of moist air. Falls as it gets warmer, damper or higher.
 * @param temperature - dry-bulb temperature, −100 to 200 [°C]
 * @param ratio - mass of water vapour to mass of dry air, 0 or more [-]
 * @param pressure - absolute pressure, above 0 [Pa]
 * @returns mass of air and vapour in a volume [kg/m³]
 * @throws RangeError outside these ranges
 * @example moistAirDensity(30, 0.02, 95461); // => 1.084119863
 */
export function moistAirDensity(temperature: number, ratio: number, pressure: number): number {
  mustLie('temperature', temperature, -100, 200);
  mustLie('humidity ratio', ratio, 0, Number.MAX_VALUE);
  mustLie('pressure', pressure, Number.MIN_VALUE, Number.MAX_VALUE);
  return inSi().GetMoistAirDensity(temperature, ratio, pressure);
}

function inSi(): Psychrometrics {
  const own = new psychrolib.constructor();
  own.SetUnitSystem(own.SI);
  return own;
}

function mustLie(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} must be ${low} to ${high}, not ${value}`);
  }
}
