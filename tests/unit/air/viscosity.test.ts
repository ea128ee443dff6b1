import { describe, expect, it } from 'vitest';
import { sutherlandViscosity } from '../../../src/air/viscosity.ts';

describe('sutherlandViscosity', () => {
  it('is that of the standard atmosphere at 15 °C: 1.7894e-5 Pa·s (U.S. Standard Atmosphere 1976)', () => {
    expect(Math.abs(sutherlandViscosity(15) - 1.7894e-5)).toBeLessThanOrEqual(5e-10);
  });

  it('rises with temperature', () => {
    const values = [-40, -10, 0, 20, 60, 150].map(sutherlandViscosity);
    expect(values).toEqual(values.toSorted((a, b) => a - b));
    expect(new Set(values).size).toBe(values.length);
  });

  it.each([-273.15, -400, Number.NaN])('refuses %d °C', (temperature) => {
    expect(() => sutherlandViscosity(temperature)).toThrow(RangeError);
  });
});
