import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unitCount } from '../../../src/curve/arrangement.ts';
import {
  availableSlope,
  availableSuction,
  collectorCurve,
} from '../../../src/curve/collector-curve.ts';
import type { Arrangement, CollectorSpec } from '../../../src/curve/collector-spec.ts';
import { enteredRange } from '../../../src/curve/entered-range.ts';
import { freeFlow } from '../../../src/curve/free-flow.ts';
import { peakFlow } from '../../../src/curve/peak-flow.ts';
import { shaftPower } from '../../../src/curve/shaft-power.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

const dressed: Partial<CollectorSpec> = {
  filter: { kind: 'resistance', resistance: 900, blinding: 2 },
  separator: { kind: 'coefficient', coefficient: 3, diameter: 0.15 },
  speedRatio: 0.9,
};
const tap = { basis: { kind: 'tap', diameter: 0.15 } } as const;
const power = {
  power: [
    { flow: 0, power: 500 },
    { flow: 0.5, power: 1500 },
  ],
  nameplate: 1500,
};
const one = collectorCurve(exampleSpec(dressed, tap), chartAir);
const several = (arrangement: Arrangement) =>
  collectorCurve(exampleSpec({ ...dressed, arrangement }, tap), chartAir);

describe('collectors alike, each with its own tap correction, separator and filter', () => {
  const flows = fc.double({ min: 0, max: 2, noNaN: true });
  const counts = fc.integer({ min: 1, max: 8 });

  it('add their flows side by side', () => {
    fc.assert(
      fc.property(flows, counts, (flow, count) => {
        const all = several({ kind: 'parallel', count });
        // 2400 Pa and its like; what is allowed is rounding in the last of some twelve digits.
        expect(availableSuction(all, count * flow)).toBeCloseTo(availableSuction(one, flow), 7);
      }),
    );
  });

  it('add their suctions one behind the other', () => {
    fc.assert(
      fc.property(flows, counts, (flow, count) => {
        const all = several({ kind: 'series', count });
        expect(availableSuction(all, flow) / count).toBeCloseTo(availableSuction(one, flow), 7);
        expect(availableSlope(all, flow) / count).toBeCloseTo(availableSlope(one, flow), 6);
      }),
    );
  });

  it('take their peak, their entered range and their free flow along', () => {
    const pair = several({ kind: 'parallel', count: 2 });
    const row = several({ kind: 'series', count: 3 });
    expect(peakFlow(pair)).toBeCloseTo(2 * peakFlow(one), 12);
    expect(enteredRange(pair).high).toBeCloseTo(2 * enteredRange(one).high, 12);
    expect(freeFlow(pair)).toBeCloseTo(2 * freeFlow(one), 9);
    expect(freeFlow(row)).toBeCloseTo(freeFlow(one), 9);
  });
});

describe('the power of collectors alike', () => {
  const motor = (flow: number, arrangement?: Arrangement) =>
    shaftPower(exampleSpec(arrangement ? { arrangement } : {}, power), chartAir, flow);

  it('is that of all of them; the load is that of each motor', () => {
    // One motor at 0.25 m³/s draws halfway from 500 to 1500 W.
    expect(motor(0.25)).toMatchObject({ power: 1000, load: 2 / 3 });
    expect(motor(0.5, { kind: 'parallel', count: 2 })).toMatchObject({ power: 2000, load: 2 / 3 });
    expect(motor(0.25, { kind: 'series', count: 3 })).toMatchObject({ power: 3000, load: 2 / 3 });
  });

  it('is within the points as far as each unit is', () => {
    expect(motor(0.9, { kind: 'parallel', count: 2 })).toMatchObject({ withinPoints: true });
    expect(motor(0.9, { kind: 'series', count: 2 })).toMatchObject({ withinPoints: false });
  });
});

it.each([0, 1.5, -2, Number.NaN])('%s collectors are refused, with the value', (count) => {
  expect(() => unitCount({ kind: 'parallel', count })).toThrow(RangeError);
  expect(() => unitCount({ kind: 'parallel', count })).toThrow(`${count}`);
});
