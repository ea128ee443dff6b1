// The density of the air during a test.

import { humidityRatio, moistAirDensity } from '../../air/moist-air.ts';
import { roomAir } from '../../air/room-air.ts';
import { positive } from '../guard.ts';
import type { TestAir } from './throttle-test.ts';

/**
 * Density of the air of a test. The suction in the pipe thins the air a little more (2.5 kPa by
 * 2.5 %); that is left out, as everywhere here.
 *
 * @param air - where and how warm and damp it was, or its density
 * @returns density [kg/m³]
 * @throws RangeError where there is no such air
 * @example
 * testDensity({ kind: 'room', altitude: 0, temperature: 20, humidity: 0.5 }); // => 1.1989
 * testDensity({ kind: 'barometer', pressure: 101325, temperature: 20, humidity: 0.5 }); // => 1.1989
 */
export function testDensity(air: TestAir): number {
  switch (air.kind) {
    case 'room':
      return roomAir(air).density;
    case 'barometer': {
      const ratio = humidityRatio(air.temperature, air.humidity, air.pressure);
      return moistAirDensity(air.temperature, ratio, air.pressure);
    }
    case 'density':
      return positive('density', air.density);
    default:
      return air satisfies never;
  }
}
