// Readings of a test reduced to points, against the same worked in the trade's units, and the places of
// a traverse against textbook profiles. Figures and sources: shared/checks-test-reduction.json and
// shared/test-guidance.json.

import { describe, expect, it } from 'vitest';
import table from '../../shared/checks-test-reduction.json' with { type: 'json' };
import guidance from '../../shared/test-guidance.json' with { type: 'json' };
import { reduceSetting } from '../../src/curve/throttle-test/reduce-setting.ts';
import type { AirReading, ThrottleTest } from '../../src/curve/throttle-test/throttle-test.ts';

interface ReductionCheck {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly diameter: number;
  readonly density: number;
  readonly factor: number;
  readonly velocityDensity?: number;
  readonly kind: Exclude<AirReading['kind'], 'closed'>;
  readonly readings: readonly number[];
  readonly static: number;
  readonly expectedVelocity: number;
  readonly expectedFlow: number;
  readonly expectedVelocityPressure: number;
  readonly expectedSuction: number;
  readonly tolerance: number;
}

function airOf({ kind, readings }: ReductionCheck): AirReading {
  return kind === 'velocity' || kind === 'velocity-pressure'
    ? { kind, reading: readings[0]! }
    : { kind, readings };
}

describe.each(table.rows as readonly ReductionCheck[])('$name ($source)', (row) => {
  const { velocityDensity } = row;
  const test: ThrottleTest = {
    diameter: row.diameter,
    air: { kind: 'density', density: row.density },
    centre: { factor: row.factor },
    instruments: velocityDensity === undefined ? {} : { velocityDensity },
    rows: [{ id: row.id, static: row.static, air: airOf(row) }],
  };

  it('comes to the same speed, flow and suction', () => {
    const reduced = reduceSetting(test, test.rows[0]!);
    if (reduced.kind !== 'point') throw new Error(reduced.kind);
    const { steps } = reduced;
    const found = [steps.velocity!.mean, steps.flow, steps.velocityPressure, steps.suction];
    const expected = [
      row.expectedVelocity,
      row.expectedFlow,
      row.expectedVelocityPressure,
      row.expectedSuction,
    ];
    found.forEach((value, i) => {
      expect(Math.abs(value / expected[i]! - 1)).toBeLessThanOrEqual(row.tolerance);
    });
  });
});

interface Places {
  readonly id: string;
  readonly rule: string;
  readonly perDiameter: number;
  readonly positions: readonly number[];
}
const places = guidance.rows.filter(
  ({ kind }) => kind === 'places',
) as unknown as readonly Places[];

describe.each(places)('the places $id', ({ rule, perDiameter, positions }) => {
  // Mean over centre by the textbook: power law 2n²/((n + 1)(2n + 1)); u = 1 + k·ln(y/R) has 1 − 3k/2.
  // The log-Tchebycheff places are made for such profiles. Equal areas miss the fast fall at the wall.
  const allowed = rule === 'log-tchebycheff' ? 0.003 : 0.022;
  const profiles = [
    ...[7, 10].map((n) => ({
      speed: (y: number) => y ** (1 / n),
      mean: (2 * n * n) / ((n + 1) * (2 * n + 1)),
    })),
    { speed: (y: number) => 1 + 0.12 * Math.log(y), mean: 1 - 1.5 * 0.12 },
  ];

  it('are as many as they say, mirrored about the centre', () => {
    expect(positions).toHaveLength(perDiameter);
    positions.forEach((place, i) => {
      expect(place + positions[perDiameter - 1 - i]!).toBeCloseTo(1, 9);
      expect(place).toBeGreaterThan(positions[i - 1] ?? 0);
    });
  });

  it('find the mean of turbulent profiles', () => {
    for (const { speed, mean } of profiles) {
      const read = positions.map((place) => speed(2 * Math.min(place, 1 - place)));
      const average = read.reduce((sum, each) => sum + each, 0) / perDiameter;
      expect(Math.abs(average / mean - 1)).toBeLessThan(allowed);
    }
  });
});

const equalAreas = places.filter(({ rule }) => rule === 'equal-area');

describe.each(equalAreas)('the places $id', ({ perDiameter, positions }) => {
  it('halve rings of equal area', () => {
    positions.slice(0, perDiameter / 2).forEach((place, i) => {
      // Area outside the place, as a part of the whole: (i + ½) rings of n. Four digits of the place.
      const outside = 1 - (1 - 2 * place) ** 2;
      expect(Math.abs(outside - (i + 0.5) / (perDiameter / 2))).toBeLessThan(1e-3);
    });
  });
});
