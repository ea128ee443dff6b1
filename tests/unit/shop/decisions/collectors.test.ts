import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../../src/curve/collector-curve.ts';
import { editOf } from '../../../../src/shop/decisions/choice.ts';
import { footingNotes } from '../../../../src/shop/decisions/collector-footing.ts';
import { candidateOf, collectorStudy } from '../../../../src/shop/decisions/collectors.ts';
import { collectorsOverDucts } from '../../../../src/shop/decisions/collectors-over-ducts.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import type { Collector } from '../../../../src/shop/schema/collector-schema.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { finish } from '../../../../src/study/progress.ts';
import { smallShop } from '../small-shop.ts';
import { solvedByCommandLine } from './command-line.ts';
import { demoShop } from './demo.ts';

const demo = demoShop();
const candidates = [demo.collector, ...exampleCurves().map((curve) => candidateOf(demo, curve))];
const rows = finish(collectorStudy(demo, candidates));

describe('collectors side by side', () => {
  it('have the figures of a separate solve of the edited file, drop by drop', () => {
    expect(rows).toHaveLength(8);
    for (const row of rows) {
      const reports = solvedByCommandLine(editOf(row.choice)(demo));
      row.states.forEach(({ drops, point, outcome, difficulties }, i) => {
        const report = reports[i]!;
        expect(drops.map((drop) => drop.report)).toEqual(
          report.drops.filter(({ travel }) => travel > 0),
        );
        expect({ point, outcome, difficulties }).toEqual({
          point: report.operatingPoint,
          outcome: report.outcome,
          difficulties: report.difficulties,
        });
      });
    }
  });

  it('are counted by the drops that they serve alone, and each failure has its reason', () => {
    for (const row of rows) {
      const alone = row.states.slice(0, demo.drops.length).map(({ drops, state }) => {
        return drops.find(({ report }) => report.id === state.open[0])!.report;
      });
      const fine = alone.filter(({ flow, need, slowest }) => {
        return slowest.velocity >= demo.carryingRange.low && flow >= (need ?? 0);
      });
      expect(row.served).toBe(fine.length);
      expect(row.failures).toEqual(alone.filter((report) => !fine.includes(report)));
      expect(['settles', 'short']).toEqual(
        expect.arrayContaining(row.failures.map(({ verdict }) => verdict)),
      );
    }
    const served = rows.map((row) => row.served);
    expect(Math.max(...served)).toBeGreaterThan(Math.min(...served));
  });

  it('have a price for each drop served where there is a price and a drop', () => {
    const today = rows.find(({ isToday }) => isToday)!;
    expect(today.pricePerDrop!.amount * today.served).toBeCloseTo(3200, 6);
    const weak = rows.find(({ served }) => served === 0)!;
    expect(weak.pricePerDrop).toBeUndefined();
  });

  it('have the load of their motor at each operating point, from the entered power', () => {
    const today = rows.find(({ isToday }) => isToday)!;
    const [first] = today.states;
    const power = first!.power!;
    if (power.kind !== 'known') throw new Error('the demo has power points');
    // Between the two entered points about it, in thinner air than that of the points.
    const ratio = 1.0504 / 1.201385;
    expect(power.power).toBeGreaterThan(1826 * ratio * 0.98);
    expect(power.power).toBeLessThan(3953 * ratio * 1.02);
    expect(power.load).toBeCloseTo(power.power / 3728.5, 9);
  });
});

describe('the footing of a comparison', () => {
  const air = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
  const points = [
    { flow: 0, pressure: 2000 },
    { flow: 0.4, pressure: 1000 },
  ];
  const curve = { ...smallShop.collector.curve, points };
  const bare: Collector = { ...smallShop.collector, curve };

  it('takes the velocity pressure off a reading at a tap, and says so', () => {
    const tapped: Collector = {
      ...bare,
      curve: { ...curve, basis: { kind: 'tap', diameter: 0.2 } },
    };
    const shop: Shop = { ...smallShop, collector: tapped };
    const [row] = finish(collectorStudy(shop, [tapped]));
    expect(row!.notes).toContainEqual({ kind: 'tap', diameter: 0.2 });
    const { point, footing } = row!.states[0]!;
    // ½·1.2·V² in 200 mm is 607.93 Pa/(m³/s)² (by hand); the points are a straight line.
    const tap = 607.93 * point!.flow ** 2;
    expect(footing!.terms.find(({ kind }) => kind === 'tap')!.change).toBeCloseTo(-tap, 1);
    expect(point!.suction).toBeCloseTo(2000 - 2500 * point!.flow - tap, 1);
  });

  it('says what the points hold, what was taken off and what is not counted', () => {
    const kinds = (collector: Collector) => footingNotes(collector, air).map(({ kind }) => kind);
    expect(kinds(bare)).toEqual(['unknown filter in the points', 'separator in the points']);
    const without = { ...curve, includes: { filter: false, separator: false }, density: 1.1 };
    expect(kinds({ ...bare, curve: without, speedRatio: 0.9, wheelRatio: 1.1 })).toEqual([
      'density',
      'speed',
      'wheel',
      'no filter counted',
      'no separator counted',
    ]);
    const filter = { kind: 'resistance', resistance: 500, blinding: 2 } as const;
    const separator = { kind: 'coefficient', coefficient: 4, diameter: 0.2 } as const;
    expect(kinds({ curve: without, filter, separator })).toEqual([
      'density',
      'filter taken off',
      'separator taken off',
    ]);
    expect(footingNotes({ ...bare, filter }, air)[0]).toEqual({
      kind: 'filter in the points',
      blinding: 2,
    });
    expect(kinds({ ...bare, arrangement: { kind: 'parallel', count: 2 } })[0]).toBe('parallel');
  });

  it('is told for every collector in every state that has an operating point', () => {
    for (const { states } of rows) {
      for (const { footing, point } of states) {
        expect(footing!.available).toBeCloseTo(point!.suction, 6);
      }
    }
  });
});

describe('collectors over the ducts', () => {
  it('meet the one system curve where the solver says', () => {
    const { system, collectors } = collectorsOverDucts(demo, candidates, ['planer']);
    expect(system[0]).toMatchObject({ flow: 0, suction: 0 });
    for (const [i, { curve, point }] of collectors.entries()) {
      const state = rows[i]!.states.find(({ state: { open } }) => open.join() === 'planer')!;
      expect(point!.flow).toBeCloseTo(state.point!.flow, 9);
      expect(availableSuction(curve, point!.flow)).toBeCloseTo(point!.suction, 6);
      const above = system.findIndex(({ flow }) => flow > point!.flow);
      expect(point!.suction).toBeGreaterThan(system[above - 1]!.suction);
      expect(point!.suction).toBeLessThan(system[above]!.suction);
    }
  });
});
