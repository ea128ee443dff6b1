// Filter, speed, arrangement and tap of a collector against worked and published figures. The figures, their
// sources and tolerances stand in shared/checks-collector.json.

import { describe, expect, it } from 'vitest';
import table from '../../shared/checks-collector.json' with { type: 'json' };
import { availableSuction, collectorCurve } from '../../src/curve/collector-curve.ts';
import type { CollectorSpec } from '../../src/curve/collector-spec.ts';
import type { CurveData } from '../../src/curve/curve-data.ts';
import { cleanResistance, TEST_VISCOSITY } from '../../src/curve/filter-resistance.ts';
import { findRoot } from '../../src/math/bracket-root.ts';

interface Check {
  readonly name: string;
  readonly source: string;
  readonly tolerance: number;
}
interface FilterCheck extends Check {
  readonly area: number;
  readonly testPressure: number;
  readonly testVelocity: number;
  readonly flow: number;
  readonly expectedLoss: number;
}
interface SpeedCheck extends Check {
  readonly speedRatio: number;
  readonly shutOff: number;
  readonly fall: number;
  readonly ducts: number;
  readonly filterResistance: number;
  readonly expectedFlow: number;
}
interface ArrangementCheck extends Check {
  readonly arrangement: 'parallel' | 'series';
  readonly count: number;
  readonly shutOff: number;
  readonly fall: number;
  readonly ducts: number;
  readonly expectedFlow: number;
  readonly expectedPressure: number;
  readonly pressureTolerance: number;
}
interface TapCheck extends Check {
  readonly density: number;
  readonly velocity: number;
  readonly expectedTrap: number;
}

const rowsOf = (kind: string) => table.rows.filter((row) => row.kind === kind);
const air = { density: 1.2, viscosity: TEST_VISCOSITY, pressure: 101325 };
const bare = { filter: false, separator: false };

/** Points so close that the spline between them is off the parabola by less than 1e-3 Pa. */
function parabola(shutOff: number, fall: number): CurveData {
  const points = Array.from({ length: 401 }, (_, i) => {
    const flow = (0.35 * i) / 400;
    return { flow, pressure: shutOff - fall * flow ** 2 };
  });
  return { basis: { kind: 'total' }, includes: bare, density: 1.2, points };
}

describe.each(rowsOf('filter') as FilterCheck[])('$name ($source)', (row) => {
  it('loses what Darcy says', () => {
    const { area, testPressure, testVelocity } = row;
    const filter = { kind: 'media', area, testPressure, testVelocity } as const;
    const loss = cleanResistance(filter, TEST_VISCOSITY) * row.flow;
    expect(Math.abs(loss - row.expectedLoss)).toBeLessThanOrEqual(row.tolerance);
  });
});

describe.each(rowsOf('speed') as SpeedCheck[])('$name ($source)', (row) => {
  const spec: CollectorSpec = {
    curve: parabola(row.shutOff, row.fall),
    speedRatio: row.speedRatio,
    filter: { kind: 'resistance', resistance: row.filterResistance },
    separator: { kind: 'none' },
  };

  it('meets the ducts at the worked flow', () => {
    const curve = collectorCurve(spec, air);
    const spare = (flow: number) => availableSuction(curve, flow) - row.ducts * flow ** 2;
    const search = findRoot(spare, 0, 0.3, 0);
    expect(search.kind).toBe('found');
    const flow = search.kind === 'found' ? search.root : Number.NaN;
    expect(Math.abs(flow - row.expectedFlow)).toBeLessThanOrEqual(row.tolerance);
  });
});

describe.each(rowsOf('arrangement') as ArrangementCheck[])('$name ($source)', (row) => {
  const alike = { kind: row.arrangement, count: row.count };
  // A parabola is a quadratic, so one smoothed piece is exact where 400 points are not.
  const unit = { ...parabola(row.shutOff, row.fall), fit: { kind: 'smooth', pieces: 1 } } as const;
  const curve = collectorCurve(
    { curve: unit, filter: { kind: 'none' }, separator: { kind: 'none' }, arrangement: alike },
    air,
  );

  it('meets the ducts at the worked flow and pressure', () => {
    const spare = (flow: number) => availableSuction(curve, flow) - row.ducts * flow ** 2;
    const search = findRoot(spare, 0, 0.6, 0);
    const flow = search.kind === 'found' ? search.root : Number.NaN;
    expect(Math.abs(flow - row.expectedFlow)).toBeLessThanOrEqual(row.tolerance);
    const pressure = availableSuction(curve, flow);
    expect(Math.abs(pressure - row.expectedPressure)).toBeLessThanOrEqual(row.pressureTolerance);
  });
});

describe.each(rowsOf('tap') as TapCheck[])('$name ($source)', (row) => {
  const diameter = 0.1524;
  const flow = row.velocity * (Math.PI / 4) * diameter ** 2;
  const points = [
    { flow: 0, pressure: 2000 },
    { flow: 1, pressure: 1000 },
  ];
  const suctionOn = (basis: CurveData['basis']) =>
    availableSuction(
      collectorCurve(
        {
          curve: { basis, includes: bare, density: row.density, points },
          filter: { kind: 'none' },
          separator: { kind: 'none' },
        },
        { ...air, density: row.density },
      ),
      flow,
    );

  it('is the difference between the same points as total suction and as tap readings', () => {
    const trap = suctionOn({ kind: 'total' }) - suctionOn({ kind: 'tap', diameter });
    expect(Math.abs(trap - row.expectedTrap)).toBeLessThanOrEqual(row.tolerance);
  });

  it('does not exist for a fan static pressure with an open outlet', () => {
    expect(suctionOn({ kind: 'fan-static' })).toBe(suctionOn({ kind: 'total' }));
  });
});
