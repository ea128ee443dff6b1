// The air of a room: what its height above the sea, its warmth and its damp make of it.
// Density is at the temperature of the room, not at the standard atmosphere's for that height.
//
// Sources: those of altitude-pressure.ts, moist-air.ts and viscosity.ts.

import type { Air } from './air.ts';
import { pressureAtAltitude } from './altitude-pressure.ts';
import { humidityRatio, moistAirDensity } from './moist-air.ts';
import { sutherlandViscosity } from './viscosity.ts';

/** Height above the sea [m], temperature [°C], relative humidity as a fraction [-]. */
export interface RoomConditions {
  readonly altitude: number;
  readonly temperature: number;
  readonly humidity: number;
}

/**
 * The air of a room.
 * @param room - height above the sea −5000 to 11000 [m], temperature −100 to 200 [°C],
 *   relative humidity 0 to 1 [-]
 * @returns density [kg/m³], viscosity [Pa·s] and absolute pressure [Pa]
 * @throws RangeError outside these ranges, or where the water would boil
 * @example roomAir({ altitude: 0, temperature: 20, humidity: 0.5 }).density; // => 1.1989
 * @example roomAir({ altitude: 1500, temperature: 20, humidity: 0.5 }).density; // => 0.99961
 */
export function roomAir(room: RoomConditions): Air {
  const pressure = pressureAtAltitude(room.altitude);
  const ratio = humidityRatio(room.temperature, room.humidity, pressure);
  return {
    density: moistAirDensity(room.temperature, ratio, pressure),
    viscosity: sutherlandViscosity(room.temperature),
    pressure,
  };
}
