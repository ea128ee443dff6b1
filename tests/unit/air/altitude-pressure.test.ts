import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { pressureAtAltitude } from '../../../src/air/altitude-pressure.ts';

describe('pressureAtAltitude', () => {
  it('is the formula that psychrolib has', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (const altitude of [-300, 0, 250, 1100, 3000, 8000]) {
      expect(pressureAtAltitude(altitude)).toBe(psychrolib.GetStandardAtmPressure(altitude));
    }
  });

  it.each([-6000, 12000, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d m', (altitude) => {
    expect(() => pressureAtAltitude(altitude)).toThrow(String(altitude));
  });
});
