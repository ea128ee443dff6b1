// The air of the shop as numbers.

import type { Air } from '../air/air.ts';
import { roomAir } from '../air/room-air.ts';
import type { ShopAir } from './schema/air-schema.ts';

/** Pressure of the room where the document states none: that of the sea's level [Pa]. */
const USUAL_PRESSURE = 101_325;

/**
 * Density, viscosity and pressure of the air in the shop.
 *
 * @param air - the air as the document states it
 * @returns density [kg/m³], viscosity [Pa·s] and pressure [Pa]
 */
export function airOf(air: ShopAir): Air {
  if (air.kind === 'room') return roomAir(air);
  const { density, viscosity, pressure = USUAL_PRESSURE } = air;
  return { density, viscosity, pressure };
}
