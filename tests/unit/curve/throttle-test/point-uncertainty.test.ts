import { describe, expect, it } from 'vitest';
import type { PointUncertainty } from '../../../../src/curve/throttle-test/point-uncertainty.ts';
import { reduceSetting } from '../../../../src/curve/throttle-test/reduce-setting.ts';
import type {
  Accuracy,
  AirReading,
  ThrottleTest,
} from '../../../../src/curve/throttle-test/throttle-test.ts';
import { seededRandom } from '../../../setup/random-tree.ts';

const test: ThrottleTest = {
  diameter: 0.15,
  diameterTolerance: 0.001,
  air: { kind: 'density', density: 1.1 },
  densityTolerance: 0.02,
  centre: { factor: 0.86, tolerance: 0.04 },
  instruments: {
    static: { fraction: 0.01, absolute: 8 },
    velocity: { fraction: 0.03, absolute: 0.2 },
    velocityPressure: { fraction: 0.02, absolute: 3 },
  },
  rows: [],
};

function reduced(from: ThrottleTest, suction: number, air: AirReading) {
  const result = reduceSetting(from, { id: 'a', static: suction, air });
  if (result.kind !== 'point') throw new Error(result.kind);
  return result;
}
const uncertaintyOf = (from: ThrottleTest, air: AirReading): PointUncertainty =>
  reduced(from, 1500, air).uncertainty;

const airs: readonly (readonly [string, AirReading, Partial<ThrottleTest>])[] = [
  ['a speed at the centre', { kind: 'velocity', reading: 17 }, {}],
  [
    'a speed shown for a fixed density',
    { kind: 'velocity', reading: 17 },
    { instruments: { ...test.instruments, velocityDensity: 1.2 } },
  ],
  ['a velocity pressure at the centre', { kind: 'velocity-pressure', reading: 150 }, {}],
  ['a traverse of speeds', { kind: 'velocity-traverse', readings: [11, 14, 15, 16, 14, 12] }, {}],
  [
    'a traverse of velocity pressures',
    { kind: 'velocity-pressure-traverse', readings: [80, 120, 150, 155, 118, 85] },
    {},
  ],
  ['a closed pipe', { kind: 'closed' }, {}],
];

/** Draws every input anew between its limits, evenly, and reduces; standard deviations come back. */
function drawn(from: ThrottleTest, air: AirReading, count: number) {
  const random = seededRandom(20_261_126);
  const between = (limit: number) => (2 * random() - 1) * limit;
  const limit = ({ fraction = 0, absolute = 0 }: Accuracy = {}, reading: number) =>
    fraction * reading + absolute;
  const flows: number[] = [];
  const suctions: number[] = [];
  for (let i = 0; i < count; i++) {
    // One instrument is off the same way at every place.
    const off = between(1);
    const speed = (value: number) => value + off * limit(from.instruments.velocity, value);
    const pressure = (value: number) =>
      value + off * limit(from.instruments.velocityPressure, value);
    const { steps } = reduced(
      {
        ...from,
        diameter: from.diameter! + between(from.diameterTolerance!),
        air: { kind: 'density', density: 1.1 * (1 + between(from.densityTolerance!)) },
        centre: { factor: from.centre.factor + between(from.centre.tolerance!) },
      },
      1500 + between(limit(from.instruments.static, 1500)),
      moved(air, speed, pressure),
    );
    flows.push(steps.flow);
    suctions.push(steps.suction);
  }
  return { flow: deviation(flows), suction: deviation(suctions) };
}

function moved(
  air: AirReading,
  speed: (v: number) => number,
  pressure: (v: number) => number,
): AirReading {
  switch (air.kind) {
    case 'velocity':
      return { kind: 'velocity', reading: speed(air.reading!) };
    case 'velocity-pressure':
      return { kind: 'velocity-pressure', reading: pressure(air.reading!) };
    case 'velocity-traverse':
      return { kind: air.kind, readings: air.readings.map((value) => speed(value!)) };
    case 'velocity-pressure-traverse':
      return { kind: air.kind, readings: air.readings.map((value) => pressure(value!)) };
    case 'closed':
      return air;
    default:
      return air satisfies never;
  }
}

function deviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(
    values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1),
  );
}

describe.each(airs)('the uncertainty of a point by %s', (_, air, rest) => {
  it('is twice the scatter of 40,000 tests with every input drawn between its limits', () => {
    const from = { ...test, ...rest };
    const { flow, suction } = uncertaintyOf(from, air);
    const scatter = drawn(from, air, 40_000);
    // A standard deviation of 40,000 draws is good to 0.35 %; three times that, and as much again for
    // the curvature that first order leaves out.
    expect(Math.abs(flow - 2 * scatter.flow)).toBeLessThanOrEqual(0.02 * flow);
    expect(Math.abs(suction - 2 * scatter.suction)).toBeLessThanOrEqual(0.02 * suction);
  });
});

describe('what makes the uncertainty up', () => {
  const centre = { kind: 'velocity', reading: 17 } as const;

  it('is zero for exact instruments, and they are named', () => {
    const exact = {
      ...test,
      diameterTolerance: 0,
      densityTolerance: 0,
      centre: { factor: 0.86 },
      instruments: {},
    };
    const { flow, suction, unstated } = uncertaintyOf(exact, centre);
    expect([flow, suction]).toEqual([0, 0]);
    expect(unstated).toEqual(['static', 'velocity']);
    expect(uncertaintyOf(exact, { kind: 'closed' }).unstated).toEqual(['static']);
  });

  it('does not shrink with the number of places, since one instrument reads them all', () => {
    const few = uncertaintyOf(test, { kind: 'velocity-traverse', readings: [14, 14] });
    const many = uncertaintyOf(test, {
      kind: 'velocity-traverse',
      readings: Array<number>(20).fill(14),
    });
    expect(many.flow).toBeCloseTo(few.flow, 12);
  });

  it('leaves the suction alone where density reaches it by the velocity pressure itself', () => {
    const part = uncertaintyOf(test, {
      kind: 'velocity-pressure',
      reading: 150,
    }).contributions.find(({ input }) => input === 'density');
    expect(part!.suction).toBeCloseTo(0, 9);
    expect(part!.flow).toBeGreaterThan(0);
  });

  it('has an end for a velocity pressure of zero', () => {
    // 3 Pa may be there unseen: √(2·3/1.1) = 2.3355 m/s, of which the centre's factor leaves 0.86.
    const { flow } = uncertaintyOf(test, { kind: 'velocity-pressure', reading: 0 });
    const area = (Math.PI / 4) * 0.15 ** 2;
    expect(flow).toBeCloseTo((2 * area * 0.86 * Math.sqrt(6 / 1.1)) / Math.sqrt(3), 9);
  });

  it('refuses an accuracy below zero', () => {
    const bad = { ...test, instruments: { velocity: { fraction: -0.1 } } };
    expect(() => uncertaintyOf(bad, centre)).toThrow('-0.1');
  });
});
