import psychrolib from 'psychrolib';
import { afterEach, describe, expect, it } from 'vitest';
import { humidityRatio, moistAirDensity } from '../../../src/air/moist-air.ts';

describe('moist air and the setting that psychrolib keeps', () => {
  afterEach(() => psychrolib.SetUnitSystem(psychrolib.SI));

  it('gives the same answer whatever unit system the shared object is in', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    const before = [humidityRatio(20, 0.5, 101325), moistAirDensity(20, 0.01, 101325)];
    const inchPound = psychrolib.SI - 1;
    psychrolib.SetUnitSystem(inchPound);
    expect([humidityRatio(20, 0.5, 101325), moistAirDensity(20, 0.01, 101325)]).toEqual(before);
  });

  it('leaves that setting alone', () => {
    const inchPound = psychrolib.SI - 1;
    psychrolib.SetUnitSystem(inchPound);
    humidityRatio(20, 0.5, 101325);
    // Sea level in psi, not in Pa.
    expect(psychrolib.GetStandardAtmPressure(0)).toBeCloseTo(14.696, 6);
  });
});

describe('humidityRatio', () => {
  it('is what ASHRAE table 2 (2017, chapter 1) has for saturated air at 20 °C: 14.76 g/kg', () => {
    // The table has real gas, which carries 0.5 % more than the ideal mixture here.
    expect(Math.abs(humidityRatio(20, 1, 101325) / 0.01476 - 1)).toBeLessThan(0.006);
  });

  it('refuses air that boils its water away', () => {
    expect(() => humidityRatio(120, 1, 101325)).toThrow(RangeError);
    expect(() => humidityRatio(20, 0.5, 0)).toThrow(RangeError);
  });
});

describe('moistAirDensity', () => {
  it.each([
    [20, -0.01, 101325],
    [20, 0.01, 0],
    [-300, 0.01, 101325],
    [20, Number.NaN, 101325],
  ])('refuses %d °C, %d kg/kg, %d Pa', (temperature, ratio, pressure) => {
    expect(() => moistAirDensity(temperature, ratio, pressure)).toThrow(RangeError);
  });
});
