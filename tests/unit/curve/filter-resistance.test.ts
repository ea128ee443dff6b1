import { describe, expect, it } from 'vitest';
import type { FilterSpec } from '../../../src/curve/collector-spec.ts';
import {
  blindingOf,
  cleanResistance,
  TEST_VISCOSITY,
} from '../../../src/curve/filter-resistance.ts';

describe('the resistance of a clean filter', () => {
  it('is the same, whichever way it is told', () => {
    const told: FilterSpec[] = [
      { kind: 'resistance', resistance: 500 },
      { kind: 'media', area: 4, testPressure: 200, testVelocity: 0.1 },
      { kind: 'measured', flow: 0.3, pressure: 150 },
    ];
    for (const filter of told) {
      expect(cleanResistance(filter, TEST_VISCOSITY)).toBeCloseTo(500, 10);
    }
  });

  it('goes with the viscosity of the air', () => {
    const stated: FilterSpec = { kind: 'resistance', resistance: 500, viscosity: 1.5e-5 };
    expect(cleanResistance(stated, 1.5e-5)).toBeCloseTo(500, 10);
    expect(cleanResistance(stated, 1.8e-5)).toBeCloseTo(600, 10);
  });

  it('is none without a filter', () => {
    expect(cleanResistance({ kind: 'none' }, 1.8e-5)).toBe(0);
    expect(blindingOf({ kind: 'none' })).toBe(1);
  });

  it('leaves blinding to be counted once, elsewhere', () => {
    const blinded: FilterSpec = { kind: 'measured', flow: 0.5, pressure: 100, blinding: 3 };
    expect(cleanResistance(blinded, TEST_VISCOSITY)).toBeCloseTo(200, 10);
    expect(blindingOf(blinded)).toBe(3);
  });

  it.each<[string, FilterSpec]>([
    ['-1', { kind: 'resistance', resistance: -1 }],
    ['0', { kind: 'resistance', resistance: 1, viscosity: 0 }],
    ['0', { kind: 'media', area: 0, testPressure: 1, testVelocity: 1 }],
    ['NaN', { kind: 'media', area: 1, testPressure: Number.NaN, testVelocity: 1 }],
    ['0', { kind: 'measured', flow: 0, pressure: 100 }],
  ])('refuses %s in %j', (value, filter) => {
    expect(() => cleanResistance(filter, 1.8e-5)).toThrow(RangeError);
    expect(() => cleanResistance(filter, 1.8e-5)).toThrow(value);
  });
});
