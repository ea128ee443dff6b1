import { describe, expect, it } from 'vitest';
import { openCurveDocument } from '../../../../src/shop/open-curve.ts';
import { curveFromTest } from '../../../../src/shop/edits/curve-from-test.ts';
import type { TestSheet, TestSheetRow } from '../../../../src/shop/schema/test-schema.ts';
import {
  startedTest,
  testAirOf,
  withNewSetting,
  withoutSetting,
  withReadingKind,
  withSetting,
  withTraverse,
} from '../../../../src/state/throttle-test/edit-test.ts';
import {
  centreRange,
  placesOf,
  straightPipe,
} from '../../../../src/state/throttle-test/guidance.ts';
import { smallShop } from '../../shop/small-shop.ts';

const { curve } = smallShop.collector;
const air = { kind: 'density', density: 1.1 } as const;
const begun = startedTest(air);
const traverse: TestSheetRow = {
  id: 'a',
  air: { kind: 'velocity-traverse', readings: [10, 11, null, 12] },
};

describe('a sheet that was just begun', () => {
  it('is a document in order, in the air that was given, with nothing read', () => {
    expect(openCurveDocument({ ...curve, test: begun })).toMatchObject({ kind: 'opened' });
    expect(begun.air).toEqual(air);
    expect(begun.rows.every(({ static: suction }) => suction === undefined)).toBe(true);
  });

  it('can begin with the air of the shop, however that is stated', () => {
    const room = { kind: 'room', altitude: 1100, temperature: 18, humidity: 0.5 } as const;
    expect(testAirOf(room)).toEqual(room);
    expect(testAirOf({ kind: 'plain', density: 1.1, viscosity: 1.8e-5 })).toEqual(air);
  });

  it('takes the mean speed as the middle of its range, give or take the range', () => {
    const { low, usual, high } = centreRange();
    expect(begun.centre.factor - begun.centre.tolerance!).toBeCloseTo(low, 9);
    expect(begun.centre.factor + begun.centre.tolerance!).toBeCloseTo(high, 9);
    expect(begun.centre.factor).toBe(usual);
  });
});

describe('settings', () => {
  it('get ids of their own, whatever was taken out before', () => {
    const shorter = withoutSetting(begun, 'setting-2');
    const again = withNewSetting(withNewSetting(shorter));
    expect(new Set(again.rows.map(({ id }) => id)).size).toBe(again.rows.length);
    expect(again.rows.length).toBe(begun.rows.length + 1);
  });

  it('are put in the place of the one of their id', () => {
    const row: TestSheetRow = { id: 'setting-3', static: 500, air: { kind: 'closed' } };
    const { rows } = withSetting(begun, row);
    expect(rows[2]).toBe(row);
    expect(rows.toSpliced(2, 1)).toEqual(begun.rows.toSpliced(2, 1));
  });
});

describe('another way of reading the air', () => {
  const centre: TestSheetRow = { id: 'a', air: { kind: 'velocity', reading: 12, overRange: true } };

  it('carries a reading of the same quantity along, there and back', () => {
    const across = withReadingKind(begun, centre, 'velocity-traverse');
    expect(across.air).toMatchObject({ readings: [12, ...Array(11).fill(null)], overRange: true });
    expect(withReadingKind(begun, across, 'velocity')).toEqual(centre);
  });

  it('carries nothing to another quantity', () => {
    expect(withReadingKind(begun, centre, 'velocity-pressure').air).toEqual({
      kind: 'velocity-pressure',
    });
    expect(withReadingKind(begun, centre, 'closed').air).toEqual({ kind: 'closed' });
  });
});

describe('another traverse', () => {
  const sheet: TestSheet = { ...begun, rows: [traverse, { id: 'b', air: { kind: 'closed' } }] };
  const readings = (test: TestSheet) => {
    const [row] = test.rows;
    return row !== undefined && 'readings' in row.air ? row.air.readings : [];
  };

  it('makes room for more places', () => {
    const wider = withTraverse(sheet, { rule: 'equal-area', perDiameter: 8, diameters: 1 });
    expect(readings(wider)).toEqual([10, 11, null, 12, null, null, null, null]);
    expect(wider.rows[1]).toBe(sheet.rows[1]);
  });

  it('drops empty places and no reading', () => {
    const more: TestSheet = {
      ...sheet,
      rows: [{ id: 'a', air: { kind: 'velocity-traverse', readings: [1, 2, 3, 4, 5, null] } }],
    };
    const fewer = withTraverse(more, { rule: 'log-tchebycheff', perDiameter: 4, diameters: 1 });
    expect(readings(fewer)).toEqual([1, 2, 3, 4, 5]);
  });
});

describe('the guidance', () => {
  it('has places for every traverse that a sheet can ask for', () => {
    for (const rule of ['log-tchebycheff', 'equal-area'] as const) {
      for (const perDiameter of [4, 6, 8, 10] as const) {
        expect(placesOf({ rule, perDiameter }).positions).toHaveLength(perDiameter);
      }
    }
  });

  it('wants less straight pipe at the least than at best, and names its sources', () => {
    const [good, least] = [straightPipe('preferred'), straightPipe('least')];
    expect(least.before).toBeLessThan(good.before);
    expect(least.after).toBeLessThan(good.after);
    expect(good.source.citation).toContain('Method 1');
    expect(good.source.status).toBe('from memory, unverified');
  });
});

describe('a curve from a test', () => {
  const bore = { ...begun, diameter: 0.15957691216057307, centre: { factor: 0.8 } };
  const closed: TestSheetRow = { id: 'c', static: 2000, air: { kind: 'closed' } };
  const read: TestSheetRow = { id: 'd', static: 1000, air: { kind: 'velocity', reading: 12.5 } };

  it('is one of total suction in the air of the test, with the sheet kept', () => {
    const test = { ...bore, rows: [read, closed] };
    const made = curveFromTest({ ...curve, basis: { kind: 'fan-static' } }, test)!;
    expect(made).toMatchObject({ basis: { kind: 'total' }, density: 1.1, test, name: curve.name });
    // 10 m/s through 0.02 m² and 55 Pa of velocity pressure.
    expect(made.points).toEqual([
      { flow: 0, pressure: 2000 },
      { flow: expect.closeTo(0.2, 12), pressure: expect.closeTo(945, 9) },
    ]);
    expect(made.fit).toBeUndefined();
    expect(openCurveDocument(made)).toMatchObject({ kind: 'opened' });
  });

  it('is smoothed where a flow was met twice, and still a document in order', () => {
    const again = { ...closed, id: 'e', static: 1980 };
    const made = curveFromTest(curve, { ...bore, rows: [read, closed, again] })!;
    expect(made.fit).toEqual({ kind: 'smooth' });
    expect(openCurveDocument(made)).toMatchObject({ kind: 'opened' });
  });

  it('needs two different flows', () => {
    expect(
      curveFromTest(curve, { ...bore, rows: [closed, { ...closed, id: 'e' }] }),
    ).toBeUndefined();
  });
});
