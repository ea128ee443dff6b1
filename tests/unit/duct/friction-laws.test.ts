import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { swameeJain } from '../../../src/duct/swamee-jain.ts';

const relativeRoughness = fc.oneof(
  fc.constant(0),
  fc.double({ min: -6, max: -1, noNaN: true }).map((power) => 10 ** power),
);
const reynolds = fc.double({ min: 1, max: 7.5, noNaN: true }).map((power) => 10 ** power);
const joints = [2000, 4000];

describe.each([colebrook, swameeJain])('$name', (law) => {
  it('joins in value and slope at Re 2000 and Re 4000', () => {
    fc.assert(
      fc.property(relativeRoughness, fc.constantFrom(...joints), (rough, joint) => {
        const below = joint * (1 - 1e-12);
        const above = joint * (1 + 1e-12);
        // Over a gap of 2e-12 the law itself moves by some 1e-12 of its value.
        const value = law.factor(joint, rough);
        expect(Math.abs(law.factor(above, rough) - law.factor(below, rough))).toBeLessThan(
          1e-10 * value,
        );
        const steep = (joint * Math.abs(law.slope(above, rough) - law.slope(below, rough))) / value;
        expect(steep).toBeLessThan(1e-9);
      }),
    );
  });

  it('has the slope that central differences see', () => {
    fc.assert(
      fc.property(reynolds, relativeRoughness, (re, rough) => {
        const step = re * 1e-5;
        fc.pre(joints.every((joint) => Math.abs(re - joint) > 2 * step));
        const seen = (law.factor(re + step, rough) - law.factor(re - step, rough)) / (2 * step);
        // Rounding of f over the step gives 1e-11 of f/Re, curvature 1e-10.
        const scale = law.factor(re, rough) / re;
        expect(Math.abs(seen - law.slope(re, rough)) / scale).toBeLessThan(1e-8);
      }),
      { numRuns: 1000 },
    );
  });

  it('makes the loss rise with the flow everywhere, so that a branch has one answer', () => {
    fc.assert(
      fc.property(reynolds, relativeRoughness, (re, rough) => {
        // The loss goes with f·Re²; laminar flow has the exponent 1, rough flow 2.
        const exponent = 2 + (re * law.slope(re, rough)) / law.factor(re, rough);
        expect(exponent).toBeGreaterThan(1 - 1e-12);
      }),
      { numRuns: 2000 },
    );
  });

  it('rises with roughness in turbulent flow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3.61, max: 7.5, noNaN: true }),
        fc.double({ min: 1e-5, max: 0.05, noNaN: true }),
        (power, rough) => {
          const re = 10 ** power;
          expect(law.factor(re, rough * 1.1)).toBeGreaterThan(law.factor(re, rough));
        },
      ),
    );
  });

  it('is laminar up to Re 2000, whatever the wall', () => {
    expect(law.factor(1000, 0.05)).toBe(0.064);
    expect(law.slope(1000, 0)).toBe(-64e-6);
  });
});

describe('Colebrook–White', () => {
  it('satisfies its own equation to rounding', () => {
    fc.assert(
      fc.property(reynolds, relativeRoughness, (re, rough) => {
        fc.pre(re >= 4000);
        const x = 1 / Math.sqrt(colebrook.factor(re, rough));
        const right = -2 * Math.log10(rough / 3.7 + (2.51 * x) / re);
        expect(Math.abs(x - right) / x).toBeLessThan(2e-15);
      }),
      { numRuns: 2000 },
    );
  });

  it('is Blasius within 3 % in a smooth pipe', () => {
    // H. Blasius (1913): f = 0.3164/Re^0.25, from 5e3 to 1e5. Two fits of like data.
    for (const re of [5e3, 1e4, 3e4, 1e5]) {
      expect(Math.abs(colebrook.factor(re, 0) / (0.3164 / re ** 0.25) - 1)).toBeLessThan(0.03);
    }
  });

  it('is Nikuradse’s rough law where the wall is rough and the flow fast', () => {
    // J. Nikuradse (1933): 1/√f = 1.14 − 2·log10(ε/D); 1.14 is 2·log10(3.7) to two decimals.
    const x = 1 / Math.sqrt(colebrook.factor(1e8, 0.02));
    expect(x).toBeCloseTo(1.14 - 2 * Math.log10(0.02), 2);
  });

  it('differs from Swamee–Jain by less than the 3 % that P. K. Swamee and A. K. Jain (1976) allow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log10(5000), max: 7.5, noNaN: true }),
        fc.double({ min: -6, max: -2, noNaN: true }),
        (power, rough) => {
          const ratio =
            swameeJain.factor(10 ** power, 10 ** rough) /
            colebrook.factor(10 ** power, 10 ** rough);
          expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
        },
      ),
    );
  });
});
