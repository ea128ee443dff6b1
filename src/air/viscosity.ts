// Dynamic viscosity of air by Sutherland's law; pressure and humidity hardly matter here.
//
// Source: U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), equation 51.

const SUTHERLAND_CONSTANT = 1.458e-6; // kg/(m·s·√K)
const SUTHERLAND_TEMPERATURE = 110.4; // K
const FREEZING_POINT = 273.15; // K

/**
 * Dynamic viscosity of air, μ = 1.458e-6·T^1.5/(T + 110.4) with T in kelvin.
 * Made for −100 to 200 °C and more; rises with temperature.
 * @param temperature - dry-bulb temperature, above −273.15 [°C]
 * @returns dynamic viscosity [Pa·s]
 * @throws RangeError at or below absolute zero
 * @example sutherlandViscosity(20); // => 1.81341e-5
 */
export function sutherlandViscosity(temperature: number): number {
  const kelvin = temperature + FREEZING_POINT;
  if (!(kelvin > 0 && Number.isFinite(kelvin))) {
    throw new RangeError(`no viscosity of air at ${temperature} °C`);
  }
  return (SUTHERLAND_CONSTANT * kelvin ** 1.5) / (kelvin + SUTHERLAND_TEMPERATURE);
}
