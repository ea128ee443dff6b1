import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { collectorCurve } from '../../../src/curve/collector-curve.ts';
import { openCurve, openCurveDocument } from '../../../src/shop/open-curve.ts';
import { smallShop } from './small-shop.ts';

const folder = join(import.meta.dirname, '../../../curves');
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const { curve } = smallShop.collector;

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
});
