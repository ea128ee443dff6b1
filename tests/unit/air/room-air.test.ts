import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roomAir } from '../../../src/air/room-air.ts';

const rooms = fc.record({
  altitude: fc.double({ min: -400, max: 4000, noNaN: true }),
  temperature: fc.double({ min: -30, max: 45, noNaN: true }),
  humidity: fc.double({ min: 0, max: 1, noNaN: true }),
});

describe('roomAir', () => {
  it('is lighter higher up, warmer, and damper', () => {
    fc.assert(
      fc.property(rooms, (room) => {
        const { density } = roomAir(room);
        const higher = roomAir({ ...room, altitude: room.altitude + 10 });
        const warmer = roomAir({ ...room, temperature: room.temperature + 1 });
        const drier = roomAir({ ...room, humidity: room.humidity / 2 });
        expect(higher.density).toBeLessThan(density);
        expect(warmer.density).toBeLessThan(density);
        expect(drier.density).toBeGreaterThanOrEqual(density);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('has the gas law: dry air at the same temperature is as dense as its pressure is high', () => {
    const sea = roomAir({ altitude: 0, temperature: 20, humidity: 0 });
    const high = roomAir({ altitude: 1100, temperature: 20, humidity: 0 });
    // The least humidity ratio kept, 1e-7, moves both alike.
    expect(high.density / sea.density).toBeCloseTo(high.pressure / sea.pressure, 12);
  });

  it('takes viscosity from the temperature alone', () => {
    const sea = roomAir({ altitude: 0, temperature: 18, humidity: 0.2 });
    const high = roomAir({ altitude: 2500, temperature: 18, humidity: 0.9 });
    expect(high.viscosity).toBe(sea.viscosity);
  });

  it.each([
    [{ altitude: 20000, temperature: 20, humidity: 0.5 }, '20000'],
    [{ altitude: 0, temperature: 999, humidity: 0.5 }, '999'],
    [{ altitude: 0, temperature: 20, humidity: 45 }, '45'],
    [{ altitude: Number.NaN, temperature: 20, humidity: 0.5 }, 'NaN'],
  ])('refuses %j and names the value', (room, value) => {
    expect(() => roomAir(room)).toThrow(RangeError);
    expect(() => roomAir(room)).toThrow(value);
  });
});
