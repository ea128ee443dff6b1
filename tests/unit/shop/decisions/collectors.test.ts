import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../../src/curve/collector-curve.ts';
import { editOf } from '../../../../src/shop/decisions/choice.ts';
import { footingNotes } from '../../../../src/shop/decisions/collector-footing.ts';
import { candidateOf, collectorStudy } from '../../../../src/shop/decisions/collectors.ts';
import {
  type CollectorOverDucts,
  collectorsOverDucts,
} from '../../../../src/shop/decisions/collectors-over-ducts.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { travelsWhenOpen } from '../../../../src/shop/gate-state.ts';
import type { Collector } from '../../../../src/shop/schema/collector-schema.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../../src/shop/shop-model.ts';
import { stateReport } from '../../../../src/shop/state-report.ts';
import type { DoubtRanges } from '../../../../src/study/doubt-factors.ts';
import { finish } from '../../../../src/study/progress.ts';
import { smallShop } from '../small-shop.ts';
import { solvedByCommandLine } from './command-line.ts';
import { demoShop } from './demo.ts';

const NOTHING: DoubtRanges = { hoods: 0, fittings: 0, wyes: 0, gates: 0, walls: 0, curve: 0 };

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
    const travels = travelsWhenOpen(demo.drops, ['planer']);
    const { system, collectors } = finish(collectorsOverDucts(demo, candidates, travels));
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

  it('lie in bands that end where a separate solve with other pressures says', () => {
    const travels = travelsWhenOpen(demo.drops, ['planer']);
    const options = { ranges: { ...NOTHING, curve: 0.05 } };
    const over = finish(collectorsOverDucts(demo, candidates, travels, options));
    // Of a factor that is spread evenly from 0.95 to 1.05, 1 in 20 is below 0.955 and 1 above 1.045.
    const flowWith = (collector: Collector, factor: number) => {
      const { curve } = collector;
      const points = curve.points.map((at) => ({ ...at, pressure: factor * at.pressure }));
      const shop = { ...demo, collector: { ...collector, curve: { ...curve, points } } };
      return stateReport(modelOf(shop), travels).operatingPoint!.flow;
    };
    for (const [i, { pointDoubt }] of over.collectors.entries()) {
      const { flow } = pointDoubt!;
      // 256 even cases place each end within 1 in 256 of the spread; what it moves is less by half.
      expect(flow.low / flowWith(candidates[i]!, 0.955)).toBeCloseTo(1, 3);
      expect(flow.high / flowWith(candidates[i]!, 1.045)).toBeCloseTo(1, 3);
    }
  });

  it('lie within their own bands, and so do the ducts', () => {
    const travels = travelsWhenOpen(demo.drops, ['planer']);
    const over = finish(collectorsOverDucts(demo, candidates, travels));
    for (const { curve, point, pointDoubt, curveDoubt } of over.collectors) {
      expect(pointDoubt!.flow.low).toBeLessThan(point!.flow);
      expect(pointDoubt!.flow.high).toBeGreaterThan(point!.flow);
      expect(pointDoubt!.suction.low).toBeLessThan(pointDoubt!.suction.high);
      for (const { flow, suction } of curveDoubt) {
        expect(availableSuction(curve, flow)).toBeGreaterThanOrEqual(suction.low);
        expect(availableSuction(curve, flow)).toBeLessThanOrEqual(suction.high);
      }
    }
    for (const [k, { flow, suction }] of over.system.entries()) {
      const band = over.systemDoubt[k]!;
      expect(band.flow).toBe(flow);
      expect(band.suction.low).toBeLessThanOrEqual(suction);
      expect(band.suction.high).toBeGreaterThanOrEqual(suction);
    }
  });

  it('have bands of no width where nothing is off, and wider ones where more is', () => {
    const travels = travelsWhenOpen(demo.drops, ['planer']);
    const one = [demo.collector];
    const widthWith = (ranges: Partial<DoubtRanges>) => {
      const options = { ranges: { ...NOTHING, ...ranges } };
      const over = finish(collectorsOverDucts(demo, one, travels, options));
      const [{ curveDoubt, pointDoubt }] = over.collectors as [CollectorOverDucts];
      const wide = ({ low, high }: { low: number; high: number }) => high - low;
      return {
        ducts: wide(over.systemDoubt.at(-1)!.suction),
        curve: wide(curveDoubt[0]!.suction),
        point: wide(pointDoubt!.flow),
      };
    };
    expect(widthWith({})).toEqual({ ducts: 0, curve: 0, point: 0 });
    const fittings = widthWith({ fittings: 0.2 });
    expect(fittings.ducts).toBeGreaterThan(0);
    expect(fittings.curve).toBe(0);
    expect(widthWith({ fittings: 0.4 }).point).toBeGreaterThan(1.5 * fittings.point);
    const walls = widthWith({ walls: 1 });
    expect(walls.ducts).toBeGreaterThan(0);
    const curve = widthWith({ curve: 0.05 });
    expect(curve).toMatchObject({ ducts: 0 });
    expect(curve.curve).toBeGreaterThan(0);
    expect(curve.point).toBeGreaterThan(0);
  });

  it('follow a gate that stands half open', () => {
    const shut = travelsWhenOpen(demo.drops, ['planer']);
    const half = shut.map((travel) => travel / 2);
    const pointAt = (travels: readonly number[]) =>
      finish(collectorsOverDucts(demo, [demo.collector], travels)).collectors[0]!.point!;
    const report = stateReport(modelOf(demo), half);
    expect(pointAt(half).flow).toBeCloseTo(report.operatingPoint!.flow, 9);
    expect(pointAt(half).flow).toBeLessThan(pointAt(shut).flow);
  });
});
