import { describe, expect, it } from 'vitest';
import { reduceSetting } from '../../../../src/curve/throttle-test/reduce-setting.ts';
import { testDensity } from '../../../../src/curve/throttle-test/test-density.ts';
import { reduceTest } from '../../../../src/curve/throttle-test/test-points.ts';
import type {
  AirReading,
  ThrottleSetting,
  ThrottleTest,
} from '../../../../src/curve/throttle-test/throttle-test.ts';

/** A bore of 0.02 m², so that 10 m/s are 0.2 m³/s and, in this air, 60 Pa. */
const test: ThrottleTest = {
  diameter: 0.15957691216057307,
  air: { kind: 'density', density: 1.2 },
  centre: { factor: 0.8 },
  instruments: {},
  rows: [],
};
const setting = (air: AirReading, rest: Partial<ThrottleSetting> = {}): ThrottleSetting => ({
  id: 'a',
  static: 1000,
  air,
  ...rest,
});
const velocity = (reading: number) => ({ kind: 'velocity', reading }) as const;

describe('reduceSetting', () => {
  it('takes eight tenths of a centre reading, and the velocity pressure off the suction', () => {
    expect(reduceSetting(test, setting(velocity(12.5)))).toMatchObject({
      kind: 'point',
      steps: {
        density: 1.2,
        velocity: { velocities: [12.5], factor: 0.8, mean: 10 },
        static: 1000,
      },
    });
    const { steps } = reduceSetting(test, setting(velocity(12.5))) as {
      steps: { flow: number; suction: number };
    };
    expect(steps.flow).toBeCloseTo(0.2, 12);
    expect(steps.suction).toBeCloseTo(940, 9);
  });

  it('averages the speeds behind velocity pressures, not the pressures', () => {
    // 15 and 135 Pa are 5 and 15 m/s: 10 m/s on the mean, where 75 Pa would be 11.2.
    const air = { kind: 'velocity-pressure-traverse', readings: [15, 135] } as const;
    const reduced = reduceSetting(test, setting(air));
    expect(reduced).toMatchObject({ kind: 'point', steps: { velocity: { factor: 1 } } });
    expect(reduced.kind === 'point' ? reduced.steps.velocity?.mean : 0).toBeCloseTo(10, 12);
  });

  it('finds no flow in a closed pipe, and all of the suction', () => {
    expect(reduceSetting(test, setting({ kind: 'closed' }))).toMatchObject({
      kind: 'point',
      steps: { flow: 0, suction: 1000, velocity: null },
    });
  });

  it.each([
    ['the speed', { ...velocity(12.5), overRange: true } as const, {}, 'at least', 'at most'],
    ['the tap', velocity(12.5), { staticOverRange: true } as const, 'exact', 'at least'],
    [
      'both',
      { ...velocity(12.5), overRange: true } as const,
      { staticOverRange: true } as const,
      'at least',
      'unknown',
    ],
  ])('makes a bound and no point of a reading over range: %s', (_, air, rest, flow, suction) => {
    const reduced = reduceSetting(test, setting(air, rest));
    expect(reduced).toMatchObject({ kind: 'bound', flow, suction });
    expect(reduceTest({ ...test, rows: [setting(air, rest)] }).points).toEqual([]);
  });

  it('says what is still to be read, and how much of it', () => {
    const half = setting({ kind: 'velocity-traverse', readings: [3, null, null] });
    expect(reduceSetting(test, half)).toMatchObject({ missing: [{ what: 'air', count: 2 }] });
    const { diameter: _, ...noBore } = test;
    const { static: __, ...noTap } = setting({ kind: 'velocity-pressure' });
    expect(reduceSetting(noBore, noTap)).toMatchObject({
      kind: 'incomplete',
      missing: [{ what: 'diameter' }, { what: 'static' }, { what: 'air', count: 1 }],
    });
  });

  it('finds it impossible that the air carries more pressure than the suction that moves it', () => {
    // 60 Pa of velocity pressure and 59 Pa of suction.
    expect(reduceSetting(test, setting(velocity(12.5), { static: 59 })).kind).toBe('impossible');
    expect(reduceSetting(test, setting(velocity(12.5), { static: 61 })).kind).toBe('point');
  });

  it.each([
    ['a speed below zero', test, setting({ kind: 'velocity-pressure', reading: -5 }), '-5'],
    ['a suction below zero', test, setting(velocity(5), { static: -7 }), '-7'],
    ['no bore', { ...test, diameter: 0 }, setting(velocity(5)), '0'],
  ])('refuses %s, with the value', (_, bad, row, says) => {
    expect(() => reduceSetting(bad, row)).toThrow(RangeError);
    expect(() => reduceSetting(bad, row)).toThrow(says);
  });
});

describe('reduceTest', () => {
  it('gives the points by rising flow, whatever the order of the test', () => {
    const rows = [20, 5, 12].map((speed, i) => ({ ...setting(velocity(speed)), id: `${i}` }));
    const { settings, points } = reduceTest({
      ...test,
      rows: [...rows, setting({ kind: 'closed' })],
    });
    expect(settings.map(({ id }) => id)).toEqual(['0', '1', '2', 'a']);
    const flows = points.map(({ flow }) => flow);
    expect(flows).toEqual(flows.toSorted((a, b) => a - b));
    expect(flows).toHaveLength(4);
  });
});

it('a barometer that shows the pressure of the height gives the air of the height', () => {
  // 1500 m, 20 °C, half damp: 0.99961 kg/m³ (PsychroLib, shared/checks-air.json); 84556 Pa there.
  const room = { kind: 'room', altitude: 1500, temperature: 20, humidity: 0.5 } as const;
  const read = { kind: 'barometer', pressure: 84556, temperature: 20, humidity: 0.5 } as const;
  expect(testDensity(room)).toBeCloseTo(0.99961, 5);
  expect(testDensity(read)).toBeCloseTo(0.99961, 4);
});
