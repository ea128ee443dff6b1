import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  availableSlope,
  availableSuction,
  collectorCurve,
  producedPressure,
} from '../../../src/curve/collector-curve.ts';
import type { CollectorSpec } from '../../../src/curve/collector-spec.ts';
import { chartAir, exampleCurve, exampleSpec } from './example-spec.ts';

const suction = (spec: CollectorSpec, flow: number, air = chartAir) =>
  availableSuction(collectorCurve(spec, air), flow);

const filterIncluded = { includes: { filter: true, separator: false } };
const separatorIncluded = { includes: { filter: false, separator: true } };
const filter = { kind: 'resistance', resistance: 1000 } as const;
/** K 4 on a bore of 0.02 m²: 4 · ½ · 1.2 / 0.02² = 6000 Pa/(m³/s)². */
const separator = { kind: 'coefficient', coefficient: 4, diameter: 0.15957691216057307 } as const;

describe('a collector at the conditions of its curve', () => {
  it('gives the ducts what was entered, point by point', () => {
    for (const { flow, pressure } of exampleCurve.points) {
      expect(suction(exampleSpec(), flow)).toBe(pressure);
    }
  });

  it('reads a fan static pressure as total suction, and takes ½ρV² off a tap reading', () => {
    const rated = exampleSpec({}, { basis: { kind: 'fan-static' } });
    expect(suction(rated, 0.3)).toBe(1800);
    // 0.3 m³/s through 0.02 m² is 15 m/s: ½ · 1.2 · 15² = 135 Pa.
    const read = exampleSpec({}, { basis: { kind: 'tap', diameter: separator.diameter } });
    expect(suction(read, 0.3)).toBeCloseTo(1665, 9);
    expect(suction(read, 0)).toBe(2000);
  });

  it('loses a filter in proportion to the flow and to its blinding', () => {
    expect(suction(exampleSpec({ filter }), 0.3)).toBeCloseTo(1500, 9);
    expect(suction(exampleSpec({ filter: { ...filter, blinding: 2.5 } }), 0.3)).toBeCloseTo(
      1050,
      9,
    );
  });

  it('loses a separator with the square of the flow', () => {
    expect(suction(exampleSpec({ separator }), 0.3)).toBeCloseTo(1800 - 540, 9);
    expect(suction(exampleSpec({ separator }), 0.1)).toBeCloseTo(2060 - 60, 9);
  });

  it('does not lose what the points include', () => {
    expect(suction(exampleSpec({ filter }, filterIncluded), 0.3)).toBeCloseTo(1800, 9);
    expect(suction(exampleSpec({ separator }, separatorIncluded), 0.3)).toBe(1800);
  });

  it('loses only the blinding of a filter whose clean part the points include', () => {
    const blinded = { ...filter, blinding: 2.5 };
    expect(suction(exampleSpec({ filter: blinded }, filterIncluded), 0.3)).toBeCloseTo(1350, 9);
  });

  it('still says what the entered points say', () => {
    const curve = collectorCurve(exampleSpec({ filter, separator }), chartAir);
    expect(producedPressure(curve, 0.4)).toBe(1300);
  });
});

describe('a collector at other conditions', () => {
  it('follows speed: flow with s, suction with s²', () => {
    expect(suction(exampleSpec({ speedRatio: 0.5 }), 0.15)).toBeCloseTo(450, 9);
  });

  it('follows the wheel: flow with r³, suction with r²', () => {
    expect(suction(exampleSpec({ wheelRatio: 2 }), 2.4)).toBeCloseTo(7200, 9);
  });

  it('follows the density of the room', () => {
    expect(suction(exampleSpec(), 0.3, { ...chartAir, density: 0.9 })).toBeCloseTo(1350, 9);
  });

  it('scales the velocity pressure at a tap like the curve it belongs to', () => {
    const read = exampleSpec(
      { speedRatio: 0.5 },
      { basis: { kind: 'tap', diameter: separator.diameter } },
    );
    // At full speed 1665 Pa at 0.3 m³/s; half the speed, three quarters of the density.
    expect(suction(read, 0.15, { ...chartAir, density: 0.9 })).toBeCloseTo(1665 * 0.25 * 0.75, 9);
  });

  it('does not speed up a filter: its loss knows only flow and viscosity', () => {
    const bare = suction(exampleSpec({ speedRatio: 0.5 }), 0.2);
    const hot = { ...chartAir, viscosity: 1.5 * chartAir.viscosity };
    expect(suction(exampleSpec({ speedRatio: 0.5, filter }), 0.2)).toBeCloseTo(bare - 200, 9);
    expect(suction(exampleSpec({ speedRatio: 0.5, filter }), 0.2, hot)).toBeCloseTo(bare - 300, 9);
  });

  it('takes the clean filter out of the points before it changes their speed', () => {
    // The same collector, told twice: the fan alone, and with a clean filter of 1000 Pa·s/m³ on.
    const alone = exampleSpec({ speedRatio: 0.8, filter });
    const together = exampleSpec(
      { speedRatio: 0.8, filter },
      {
        ...filterIncluded,
        points: exampleCurve.points.map(({ flow, pressure }) => ({
          flow,
          pressure: pressure - 1000 * flow,
        })),
      },
    );
    for (const { flow } of exampleCurve.points) {
      const running = 0.8 * flow;
      expect(suction(together, running)).toBeCloseTo(suction(alone, running), 9);
    }
  });

  it('puts the separator in the air of the room', () => {
    const thin = { ...chartAir, density: 0.6 };
    expect(suction(exampleSpec({ separator }), 0.3, thin)).toBeCloseTo(900 - 270, 9);
  });
});

describe('the slope of the suction', () => {
  const ratio = fc.double({ min: 0.5, max: 2, noNaN: true });

  it('is that of the suction itself, whatever the conditions', () => {
    const flows = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(ratio, ratio, flows, (speedRatio, wheelRatio, flow) => {
        const spec = exampleSpec({ speedRatio, wheelRatio, filter, separator }, filterIncluded);
        const curve = collectorCurve(spec, chartAir);
        const step = 1e-6 * curve.flowScale;
        const difference =
          (availableSuction(curve, flow + step) - availableSuction(curve, flow - step)) /
          (2 * step);
        // The curvature jumps by up to 1e5·P/F² at a point; half a step of that is 0.05·P/F.
        const allowed = (0.1 * curve.pressureScale) / curve.flowScale;
        expect(Math.abs(availableSlope(curve, flow) - difference)).toBeLessThan(allowed);
      }),
    );
  });

  it('stays the same past the last point, but for the squares', () => {
    const curve = collectorCurve(exampleSpec({ filter }), chartAir);
    expect(availableSlope(curve, 0.7)).toBe(availableSlope(curve, 0.5));
    expect(availableSuction(curve, 0.7)).toBeCloseTo(500 - 0.2 * 9500 - 700, 9);
  });
});

describe('a collector that can not be', () => {
  it.each([
    ['no points', exampleSpec({}, { points: [] }), '0'],
    ['one point', exampleSpec({}, { points: [{ flow: 0, pressure: 1 }] }), '1'],
    [
      'a pressure that is NaN',
      exampleSpec({}, { points: [...exampleCurve.points, { flow: 1, pressure: Number.NaN }] }),
      'NaN',
    ],
    ['no density', exampleSpec({}, { density: 0 }), '0'],
    ['no speed', exampleSpec({ speedRatio: Number.NaN }), 'NaN'],
    ['a negative wheel', exampleSpec({ wheelRatio: -1 }), '-1'],
    ['a tap of no bore', exampleSpec({}, { basis: { kind: 'tap', diameter: 0 } }), '0'],
    ['a negative filter', exampleSpec({ filter: { ...filter, resistance: -5 } }), '-5'],
    ['an unblinding filter', exampleSpec({ filter: { ...filter, blinding: 0 } }), '0'],
    ['a separator that helps', exampleSpec({ separator: { ...separator, coefficient: -2 } }), '-2'],
    [
      'an endless separator',
      exampleSpec({ separator: { ...separator, diameter: Infinity } }),
      'Inf',
    ],
  ])('is refused, with the value: %s', (_, spec, value) => {
    expect(() => collectorCurve(spec, chartAir)).toThrow(RangeError);
    expect(() => collectorCurve(spec, chartAir)).toThrow(value);
  });

  it('is refused in no air', () => {
    const noAir = { ...chartAir, density: Number.NaN };
    expect(() => collectorCurve(exampleSpec(), noAir)).toThrow('NaN');
  });
});
