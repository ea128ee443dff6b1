import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { collectorCurve } from '../../../src/curve/collector-curve.ts';
import { openCurve, openCurveDocument } from '../../../src/shop/open-curve.ts';
import type { CurvePoint } from '../../../src/curve/curve-data.ts';
import type { Curve } from '../../../src/shop/schema/curve-schema.ts';
import type { TestSheet, TestSheetRow } from '../../../src/shop/schema/test-schema.ts';
import { smallShop } from './small-shop.ts';

const folder = join(import.meta.dirname, '../../../curves');
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const { curve } = smallShop.collector;

/** A test half done: the last setting has no suction yet, and one place of its traverse is to come. */
const test: TestSheet = {
  diameter: 0.1524,
  diameterTolerance: 0.0005,
  air: { kind: 'barometer', pressure: 89_000, temperature: 18, humidity: 0.5 },
  densityTolerance: 0.01,
  centre: { factor: 0.86, tolerance: 0.04 },
  traverse: { rule: 'log-tchebycheff', perDiameter: 6, diameters: 2 },
  instruments: {
    static: { fraction: 0.005, absolute: 5 },
    velocity: { fraction: 0.03, absolute: 0.1 },
    velocityDensity: 1.2,
    note: 'borrowed',
  },
  rows: [
    { id: 'closed', static: 2300, air: { kind: 'closed' } },
    { id: 'a', note: 'half shut', air: { kind: 'velocity-traverse', readings: [10, 11.5, null] } },
    { id: 'b', static: 2000, staticOverRange: true, air: { kind: 'velocity', reading: 12 } },
    { id: 'c', static: 900, air: { kind: 'velocity-pressure', reading: 250, overRange: true } },
  ],
};

describe('openCurve', () => {
  it.each(files)('opens the example %s, and the core takes it as it is', (name) => {
    const opened = openCurve(readFileSync(join(folder, name), 'utf8'));
    if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.problems));
    const collector = { ...smallShop.collector, curve: opened.curve };
    const air = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
    expect(collectorCurve(collector, air).spline.x).toHaveLength(opened.curve.points.length);
  });

  it('refuses with the place, as a document of its own', () => {
    const problemsOf = (value: unknown) => {
      const opened = openCurveDocument(value);
      return opened.kind === 'opened' ? [] : opened.problems.map(({ place }) => place);
    };
    expect(problemsOf(curve)).toEqual([]);
    expect(problemsOf(smallShop)).toEqual(['format']);
    expect(problemsOf({ ...curve, version: 3 })).toEqual(['version']);
    expect(problemsOf({ ...curve, points: [curve.points[0]] })).toEqual(['points']);
    expect(problemsOf({ ...curve, points: curve.points.toReversed() })).toEqual([
      'points[1].flow',
      'points[2].flow',
      'points[3].flow',
    ]);
    expect(problemsOf({ ...curve, price: { amount: 1, currency: 'pounds' } })).toEqual([
      'price.currency',
    ]);
    expect(openCurve('{')).toMatchObject({ kind: 'refused' });
  });

  it('holds points set aside to nothing, and scattered readings to two different flows', () => {
    const problemsOf = (points: Curve['points'], fit?: Curve['fit']) => {
      const opened = openCurveDocument({ ...curve, points, ...(fit && { fit }) });
      return opened.kind === 'opened' ? [] : opened.problems.map(({ place }) => place);
    };
    const [first, second, third] = curve.points as [CurvePoint, CurvePoint, CurvePoint];
    const stray = { flow: 0.05, pressure: 9000, aside: true } as const;
    expect(problemsOf([first, second, stray, third])).toEqual([]);
    expect(problemsOf([first, second, { flow: 0.05, pressure: 9000 }, third])).not.toEqual([]);
    expect(problemsOf([first, stray, stray])).toEqual(['points']);
    // The stray point between two that don't rise: the complaint names the point that stands there.
    expect(problemsOf([second, stray, first, third])).toEqual(['points[2].flow']);
    const scattered = [third, first, third, second, second];
    expect(problemsOf(scattered, { kind: 'through' })).toEqual([
      'points[1].flow',
      'points[3].flow',
      'points[4].flow',
    ]);
    expect(problemsOf(scattered, { kind: 'smooth', pieces: 3 })).toEqual([]);
    expect(problemsOf([third, third, { ...first, aside: true }], { kind: 'smooth' })).toEqual([
      'points',
    ]);
  });

  it('keeps every reading of a test as it was written, also of one half done', () => {
    const opened = openCurveDocument({ ...curve, test });
    expect(opened).toEqual({ kind: 'opened', curve: { ...curve, test } });
  });

  it('says where a test is wrong', () => {
    const problemsOf = (part: Partial<TestSheet>) => {
      const opened = openCurveDocument({ ...curve, test: { ...test, ...part } });
      return opened.kind === 'opened' ? [] : opened.problems;
    };
    const [closed, traverse] = test.rows as [TestSheetRow, TestSheetRow];
    expect(problemsOf({ rows: [closed, { ...traverse, id: closed.id }] })).toEqual([
      {
        place: 'test.rows[1].id',
        message: 'is "closed", the id of rows[0] already; each setting has its own',
      },
    ]);
    expect(problemsOf({ rows: [{ ...closed, static: -700 }] })).toMatchObject([
      { place: 'test.rows[0].static', message: expect.stringContaining('0 to 100000') },
    ]);
    expect(problemsOf({ diameter: 150 })).toMatchObject([{ place: 'test.diameter' }]);
  });
});
