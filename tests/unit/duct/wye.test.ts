import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Join, momentumWyeK, wyeTerms } from '../../../src/duct/wye.ts';

const inlet = fc.record({
  flow: fc.double({ min: 0, max: 1, noNaN: true }),
  area: fc.double({ min: 0.002, max: 0.1, noNaN: true }),
  angle: fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
});
const inlets = fc
  .array(inlet, { minLength: 1, maxLength: 6 })
  .filter((all) => all.some(({ flow }) => flow > 1e-6));
const combinedArea = fc.double({ min: 0.002, max: 0.1, noNaN: true });

describe('momentum wye', () => {
  it('never creates energy, for any number of inlets, areas and angles', () => {
    fc.assert(
      fc.property(inlets, combinedArea, (all, combined) => {
        const total = all.reduce((sum, { flow }) => sum + flow, 0);
        const shares = all.map(({ flow }) => flow / total);
        const terms = momentumWyeK(all, combined).map((k, j) => (shares[j] ?? 0) * k);
        const power = terms.reduce((sum, term) => sum + term, 0);
        const size = terms.reduce((sum, term) => sum + Math.abs(term), 0);
        expect(power).toBeGreaterThanOrEqual(-1e-13 * (1 + size));
      }),
      { numRuns: 5000 },
    );
  });

  it('can pump: a fast run draws a slow branch in', () => {
    const [run, branch] = momentumWyeK(
      [
        { flow: 0.95, area: 0.01, angle: 0 },
        { flow: 0.05, area: 0.01, angle: Math.PI / 4 },
      ],
      0.01,
    );
    expect(branch).toBeLessThan(-0.7);
    expect(run).toBeGreaterThan(0);
  });

  it('loses nothing where one inlet goes straight on in the same bore', () => {
    expect(momentumWyeK([{ flow: 0.3, area: 0.01, angle: 0 }], 0.01)).toEqual([0]);
  });

  it('is the sudden expansion where one inlet goes straight on into a wider bore', () => {
    // (1 − A₁/A₂)² on the smaller, so times (A₂/A₁)² on the larger velocity pressure.
    const [k] = momentumWyeK([{ flow: 0.3, area: 0.005, angle: 0 }], 0.01);
    expect(k).toBeCloseTo(0.25 * 4, 12);
  });

  it('does not depend on which inlet is named first', () => {
    fc.assert(
      fc.property(inlets, combinedArea, (all, combined) => {
        const forwards = momentumWyeK(all, combined);
        const backwards = momentumWyeK(all.toReversed(), combined).toReversed();
        forwards.forEach((k, j) => {
          expect(Math.abs(k - (backwards[j] ?? Number.NaN))).toBeLessThan(
            1e-11 * (1 + Math.abs(k)),
          );
        });
      }),
    );
  });

  it('refuses what can not be', () => {
    expect(() => momentumWyeK([{ flow: 0, area: 1, angle: 0 }], 1)).toThrow('not 0');
    expect(() => momentumWyeK([{ flow: 1, area: 1, angle: 2 }], 1)).toThrow('not 2');
    expect(() => momentumWyeK([{ flow: 1, area: 0, angle: 0 }], 1)).toThrow('not 0');
    expect(() => momentumWyeK([{ flow: 1, area: 1, angle: 0 }], 0)).toThrow('not 0');
  });
});

describe('wye terms', () => {
  it('come to the same losses as the coefficients', () => {
    fc.assert(
      fc.property(inlets, combinedArea, (all, combined) => {
        const density = 1.2;
        const total = all.reduce((sum, { flow }) => sum + flow, 0);
        const pressure = 0.5 * density * (total / combined) ** 2;
        const terms = all.map(({ area, angle }) =>
          wyeTerms({ kind: 'momentum', angle }, area, combined, density),
        );
        const crossed = all.reduce(
          (sum, { flow }, k) => sum + (terms[k]?.cross ?? 0) * flow ** 2,
          0,
        );
        momentumWyeK(all, combined).forEach((k, j) => {
          const term = terms[j] ?? { own: 0, combined: 0 };
          const flow = all[j]?.flow ?? 0;
          const loss = term.own * flow ** 2 + term.combined * total ** 2 + crossed;
          const size = term.own * flow ** 2 + pressure + Math.abs(crossed);
          expect(Math.abs(loss - k * pressure)).toBeLessThan(1e-12 * size);
        });
      }),
    );
  });

  it('of a fixed join lie on one stream only', () => {
    const fixed = (of: 'own' | 'combined'): Join => ({ kind: 'fixed', coefficient: 0.28, of });
    const perFlow = 0.28 * 0.6;
    expect(wyeTerms(fixed('own'), 0.5, 2, 1.2)).toEqual({
      own: expect.closeTo(perFlow / 0.25, 12),
      combined: 0,
      cross: 0,
    });
    expect(wyeTerms(fixed('combined'), 0.5, 2, 1.2)).toEqual({
      own: 0,
      combined: expect.closeTo(perFlow / 4, 12),
      cross: 0,
    });
  });

  it('refuse what can not be', () => {
    const join: Join = { kind: 'momentum', angle: 0 };
    expect(() => wyeTerms(join, 0, 1, 1)).toThrow('not 0');
    expect(() => wyeTerms(join, 1, Number.NaN, 1)).toThrow('not NaN');
    expect(() => wyeTerms(join, 1, 1, -1)).toThrow('not -1');
    expect(() => wyeTerms({ kind: 'momentum', angle: -0.1 }, 1, 1, 1)).toThrow('not -0.1');
  });
});
