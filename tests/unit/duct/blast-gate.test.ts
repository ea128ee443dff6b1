import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gateCoefficient, gateOpenArea } from '../../../src/duct/blast-gate.ts';

const travel = fc.double({ min: 0, max: 1, noNaN: true });
const leak = fc.double({ min: 1e-4, max: 0.1, noNaN: true });

describe('open area', () => {
  it('is the segment that a straight blade leaves', () => {
    expect(gateOpenArea(0)).toBe(0);
    expect(gateOpenArea(0.5)).toBeCloseTo(0.5, 15);
    expect(gateOpenArea(1)).toBeCloseTo(1, 15);
    // A quarter of the diameter: (π/3 − (√3/2)·½)/π of the circle.
    expect(gateOpenArea(0.25)).toBeCloseTo((Math.PI / 3 - Math.sqrt(3) / 4) / Math.PI, 12);
  });

  it('and what the blade covers make up the pipe', () => {
    fc.assert(
      fc.property(travel, (open) => {
        expect(gateOpenArea(open) + gateOpenArea(1 - open)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('gate coefficient', () => {
  it('falls as the gate opens, and never rises', () => {
    fc.assert(
      fc.property(travel, travel, leak, (one, other, hole) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        expect(gateCoefficient(more, hole)).toBeLessThanOrEqual(gateCoefficient(less, hole));
      }),
      { numRuns: 2000 },
    );
    for (let step = 8; step < 200; step++) {
      expect(gateCoefficient((step + 1) / 200)).toBeLessThan(gateCoefficient(step / 200));
    }
  });

  it('is the leak alone when shut, some 4e4 for half a percent', () => {
    expect(gateCoefficient(0, 0.005, 0.1)).toBeCloseTo(39601.1, 9);
    expect(gateCoefficient(0, 0.001, 0)).toBeCloseTo(998001, 6);
  });

  it('is the slot alone when drawn right out', () => {
    expect(gateCoefficient(1)).toBeCloseTo(0.1, 12);
    expect(gateCoefficient(1, 0.005, 0)).toBeCloseTo(0, 12);
  });

  it('half open loses as the jet of 0.674 of half the pipe does', () => {
    expect(gateCoefficient(0.5, 0.005, 0)).toBeCloseTo((1 / 0.337 - 1) ** 2, 9);
  });

  it('moves by little when the blade does', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.999, noNaN: true }), (open) => {
        const ratio = gateCoefficient(open) / gateCoefficient(open + 1e-6);
        expect(Math.abs(ratio - 1)).toBeLessThan(1e-3);
      }),
    );
  });

  it('refuses a gate that is none', () => {
    expect(() => gateCoefficient(-0.1)).toThrow('not -0.1');
    expect(() => gateCoefficient(1.1)).toThrow('not 1.1');
    expect(() => gateCoefficient(Number.NaN)).toThrow('not NaN');
    expect(() => gateCoefficient(0.5, 0)).toThrow(RangeError);
    expect(() => gateCoefficient(0.5, 0.01, -1)).toThrow('not -1');
  });
});
