import { describe, expect, it } from 'vitest';
import { tapFactor } from '../../../src/curve/tap-factor.ts';
import { velocityPressureFactor } from '../../../src/curve/velocity-pressure-factor.ts';
import { exampleCurve } from './example-spec.ts';

/** A bore of 0.02 m², in which 0.3 m³/s moves at 15 m/s. */
const diameter = 0.15957691216057307;

describe('the velocity pressure factor', () => {
  it('gives 135 Pa for 1.2 kg/m³ at 15 m/s', () => {
    expect(velocityPressureFactor(1.2, diameter) * 0.3 ** 2).toBeCloseTo(135, 10);
  });

  it('falls with the fourth power of the diameter', () => {
    const ratio = velocityPressureFactor(1.2, 0.1) / velocityPressureFactor(1.2, 0.2);
    expect(ratio).toBeCloseTo(16, 10);
  });

  it('refuses a pipe without bore and air without density', () => {
    expect(() => velocityPressureFactor(1.2, 0)).toThrow('not 0');
    expect(() => velocityPressureFactor(Number.NaN, 0.1)).toThrow('NaN');
  });
});

describe('the tap factor', () => {
  it('is the velocity pressure of the pipe that holds the tap, and nothing on other bases', () => {
    const tap = { ...exampleCurve, basis: { kind: 'tap', diameter } } as const;
    expect(tapFactor(tap)).toBe(velocityPressureFactor(1.2, diameter));
    expect(tapFactor(exampleCurve)).toBe(0);
    expect(tapFactor({ ...exampleCurve, basis: { kind: 'fan-static' } })).toBe(0);
  });
});
