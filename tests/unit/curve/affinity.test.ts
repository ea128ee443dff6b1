import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fanLaws, fanLawsFor } from '../../../src/curve/affinity.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

describe('the fan laws', () => {
  it('at a tenth more speed: flow 1.1, pressure 1.21, power 1.331', () => {
    const laws = fanLaws({ speedRatio: 1.1, wheelRatio: 1, densityRatio: 1 });
    expect(laws.flow).toBeCloseTo(1.1, 12);
    expect(laws.pressure).toBeCloseTo(1.21, 12);
    expect(laws.power).toBeCloseTo(1.331, 12);
  });

  it('with a wheel twice as large: flow 8, pressure 4, power 32', () => {
    const laws = fanLaws({ speedRatio: 1, wheelRatio: 2, densityRatio: 1 });
    expect(laws).toEqual({ flow: 8, pressure: 4, power: 32 });
  });

  it('keep power in step with flow times pressure', () => {
    const ratio = fc.double({ min: 0.1, max: 4, noNaN: true });
    fc.assert(
      fc.property(ratio, ratio, ratio, (speedRatio, wheelRatio, densityRatio) => {
        const laws = fanLaws({ speedRatio, wheelRatio, densityRatio });
        expect(laws.power / (laws.flow * laws.pressure)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('leave a collector alone that runs as on its chart', () => {
    expect(fanLawsFor(exampleSpec(), chartAir)).toEqual({ flow: 1, pressure: 1, power: 1 });
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuse a ratio of %f', (ratio) => {
    const conditions = { speedRatio: 1, wheelRatio: ratio, densityRatio: 1 };
    expect(() => fanLaws(conditions)).toThrow(RangeError);
    expect(() => fanLaws(conditions)).toThrow(String(ratio));
  });
});
