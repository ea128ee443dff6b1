import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  elementLoss,
  onOtherVelocityPressure,
  plainCoefficient,
  sumOfCoefficients,
  timesCoefficient,
} from '../../../src/duct/coefficient.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';

const air = { density: 1.2, viscosity: 1.81e-5, pressure: 101325 };
const fraction = fc.double({ min: 0, max: 40, noNaN: true });
const diameter = fc.double({ min: 0.05, max: 0.3, noNaN: true });

describe('onOtherVelocityPressure', () => {
  it('keeps the loss in pascal at any flow', () => {
    fc.assert(
      fc.property(fraction, diameter, diameter, (fixed, from, to) => {
        const moved = onOtherVelocityPressure(plainCoefficient(fixed), from, to);
        const before = elementLoss(plainCoefficient(fixed), from, 0, air, colebrook)(0.2).loss;
        const after = elementLoss(moved, to, 0, air, colebrook)(0.2).loss;
        expect(after).toBeCloseTo(before, 6 - Math.ceil(Math.log10(before + 1)));
      }),
    );
  });

  it('refuses to move friction, which belongs to its own pipe', () => {
    const friction = { fixed: 0, frictional: 3 };
    expect(() => onOtherVelocityPressure(friction, 0.1, 0.2)).toThrow(RangeError);
    expect(() => onOtherVelocityPressure(plainCoefficient(1), 0, 0.2)).toThrow('not 0');
  });
});

describe('sums', () => {
  it('adds each part for itself, and nothing is zero', () => {
    const parts = [plainCoefficient(0.5), { fixed: 0.25, frictional: 12 }, plainCoefficient(-0.1)];
    expect(sumOfCoefficients(parts)).toEqual({ fixed: 0.65, frictional: 12 });
    expect(sumOfCoefficients([])).toEqual({ fixed: 0, frictional: 0 });
  });

  it('multiplies both parts', () => {
    expect(timesCoefficient({ fixed: 0.5, frictional: 2 }, 3)).toEqual({
      fixed: 1.5,
      frictional: 6,
    });
    expect(() => timesCoefficient(plainCoefficient(1), -1)).toThrow('not -1');
  });
});

describe('elementLoss', () => {
  it('is K times the velocity pressure for a plain fitting', () => {
    // 0.2 m³/s in 100 mm: 25.4648 m/s, 389.0733 Pa.
    const { loss, slope } = elementLoss(plainCoefficient(2), 0.1, 9e-5, air, colebrook)(0.2);
    expect(loss).toBeCloseTo(778.147, 3);
    expect(slope).toBeCloseTo((2 * 778.147) / 0.2, 1);
  });

  it('is Hagen–Poiseuille in laminar flow, also at rest', () => {
    // 128·μ·L/(π·D⁴) for 3 m of 100 mm.
    const resistance = (128 * 1.81e-5 * 3) / (Math.PI * 1e-4);
    const pipe = elementLoss({ fixed: 0, frictional: 30 }, 0.1, 9e-5, air, colebrook);
    expect(pipe(0)).toEqual({ loss: 0, slope: expect.closeTo(resistance, 12) });
    expect(pipe(1e-3).loss).toBeCloseTo(resistance * 1e-3, 12);
    expect(pipe(1e-3).slope).toBeCloseTo(resistance, 12);
  });

  it('has the slope that central differences see, either way round', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 40, noNaN: true }),
        fraction,
        fc.double({ min: 0.002, max: 0.5, noNaN: true }),
        fc.constantFrom(1, -1),
        (fixed, frictional, size, sign) => {
          const loss = elementLoss({ fixed, frictional }, 0.1, 9e-5, air, colebrook);
          const flow = size * sign;
          const step = size * 1e-5;
          const seen = (loss(flow + step).loss - loss(flow - step).loss) / (2 * step);
          // Curvature and rounding over the step come to 1e-9; a joint of the law to 1e-5.
          expect(Math.abs(seen - loss(flow).slope)).toBeLessThanOrEqual(3e-5 * loss(flow).slope);
          expect(loss(-flow).loss).toBe(-loss(flow).loss);
          expect(loss(-flow).slope).toBe(loss(flow).slope);
        },
      ),
    );
  });

  it('refuses a pipe that is none', () => {
    expect(() => elementLoss(plainCoefficient(1), 0, 0, air, colebrook)).toThrow('not 0');
    expect(() => elementLoss(plainCoefficient(1), 0.1, -1, air, colebrook)).toThrow('not -1');
  });
});
