import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { pressureTerms } from '../../../src/curve/pressure-terms.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

/** A bore of 0.02 m²: 0.3 m³/s are 15 m/s, and 135 Pa of velocity pressure at 1.2 kg/m³. */
const bore = 0.15957691216057307;
const tap = { basis: { kind: 'tap', diameter: bore } } as const;
const filter = { kind: 'resistance', resistance: 1000, blinding: 2 } as const;
const separator = { kind: 'coefficient', coefficient: 4, diameter: bore } as const;

const changes = (...given: Parameters<typeof pressureTerms>) =>
  pressureTerms(...given).terms.map(({ kind, change }) => [kind, Math.round(change * 1e6) / 1e6]);

describe('pressureTerms', () => {
  it('has nothing to say of total suction at the conditions of the curve', () => {
    expect(pressureTerms(exampleSpec(), chartAir, 0.3)).toEqual({
      entered: 1800,
      terms: [],
      available: 1800,
    });
  });

  it('names the velocity pressure at the tap, the separator and the filter', () => {
    const spec = exampleSpec({ filter, separator }, tap);
    // 135 Pa at the tap, four times as much in the separator, 2 · 1000 · 0.3 in the filter.
    expect(changes(spec, chartAir, 0.3)).toEqual([
      ['tap', -135],
      ['separator', -540],
      ['filter', -600],
    ]);
    expect(pressureTerms(spec, chartAir, 0.3).available).toBeCloseTo(525, 9);
  });

  it('names density, speed and wheel, one after the other', () => {
    const spec = exampleSpec({ speedRatio: 0.5 });
    const thin = { ...chartAir, density: 0.9 };
    // 2040 at 0.2 m³/s; three quarters of it; then a quarter of three quarters of 1300 at 0.4.
    expect(pressureTerms(spec, thin, 0.2).entered).toBe(2040);
    expect(changes(spec, thin, 0.2)).toEqual([
      ['density', -510],
      ['speed', 243.75 - 1530],
    ]);
    // Twice the wheel: four times the pressure that stands at an eighth of the flow.
    expect(changes(exampleSpec({ wheelRatio: 2 }), chartAir, 0.4)).toEqual([
      ['wheel', 4 * 2042.5 - 1300],
    ]);
  });

  it('names what a second collector adds', () => {
    const pair = exampleSpec({ arrangement: { kind: 'parallel', count: 2 } });
    const row = exampleSpec({ arrangement: { kind: 'series', count: 2 } });
    // Each takes 0.2 of 0.4 m³/s: 2040 instead of 1300; in a row both make 1300.
    expect(changes(pair, chartAir, 0.4)).toEqual([['arrangement', 740]]);
    expect(changes(row, chartAir, 0.4)).toEqual([['arrangement', 1300]]);
  });

  it('leaves out a clean filter that the points hold', () => {
    const includes = { includes: { filter: true, separator: true } };
    const clean = exampleSpec({ filter: { ...filter, blinding: 1 }, separator }, includes);
    expect(changes(clean, chartAir, 0.3)).toEqual([]);
    expect(changes(exampleSpec({ filter, separator }, includes), chartAir, 0.3)).toEqual([
      ['filter', -300],
    ]);
  });

  it('adds up to what the ducts get, whatever applies', () => {
    const ratio = fc.double({ min: 0.5, max: 2, noNaN: true });
    const flows = fc.double({ min: 0, max: 0.8, noNaN: true });
    const arrangement = fc.record({
      kind: fc.constantFrom('parallel' as const, 'series' as const),
      count: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(
        ratio,
        ratio,
        ratio,
        flows,
        arrangement,
        (speedRatio, wheelRatio, thin, flow, several) => {
          const spec = exampleSpec(
            { speedRatio, wheelRatio, filter, separator, arrangement: several },
            tap,
          );
          const air = { ...chartAir, density: 1.2 * thin };
          const { entered, terms, available } = pressureTerms(spec, air, flow);
          const sum = terms.reduce((total, { change }) => total + change, entered);
          const expected = availableSuction(collectorCurve(spec, air), flow);
          // Some 1e5 Pa at the most, in sums of ten terms.
          expect(Math.abs(sum - expected)).toBeLessThan(
            1e-8 * Math.max(1e3, Math.abs(entered), Math.abs(expected)),
          );
          expect(Math.abs(available - expected)).toBeLessThan(
            1e-8 * Math.max(1e3, Math.abs(expected)),
          );
        },
      ),
    );
  });
});
