// What the rows, the drawing and the plot are given says the same as the report.
import { describe, expect, it } from 'vitest';
import { asking } from '../../../src/plot/operating-lines.ts';
import { plotExtent } from '../../../src/plot/plot-extent.ts';
import { gateCoefficients } from '../../../src/shop/network-of.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { systemCurve } from '../../../src/solve/system-curve.ts';
import { dropViews } from '../../../src/state/drop-views.ts';
import { travelsOf } from '../../../src/state/gate-positions.ts';
import { systemKnots } from '../../../src/state/plot-view.ts';
import { runView } from '../../../src/state/run-view.ts';
import { demoShop } from './demo-shop.ts';

const shop = demoShop();
const model = modelOf(shop);
const travels = travelsOf(
  shop.drops,
  new Map([
    ['floor-sweep', 1],
    ['planer', 0.35],
  ]),
);
const report = stateReport(model, travels);

describe('the drops as they are shown', () => {
  const views = dropViews(shop, report, report, 'metric');
  const view = (id: string) => views.find((each) => each.id === id)!;

  it('give open drops a speed, and shut ones none', () => {
    expect(view('planer').travel).toBe(0.35);
    expect(view('planer').speed?.velocity).toBe(
      report.drops.find(({ id }) => id === 'planer')?.velocity,
    );
    expect(view('lathe').speed).toBeUndefined();
    expect(view('lathe').slowest).toBeUndefined();
    expect(view('lathe').verdict).toBe('shut');
  });

  it('name the slowest section only where it is not the drop’s own', () => {
    for (const { id, slowest } of views) {
      const drop = shop.drops.find((each) => each.id === id);
      const said = report.drops.find((each) => each.id === id);
      if (slowest) expect(said?.slowest.section).not.toBe(drop?.into);
      if (slowest) expect(slowest.velocity).toBe(said?.slowest.velocity);
    }
    expect(views.some(({ slowest }) => slowest)).toBe(true);
  });

  it('tell a drop without a gate apart', () => {
    const { gate: _, ...open } = shop.drops[0]!;
    const without = { ...shop, drops: [open, ...shop.drops.slice(1)] };
    expect(dropViews(without, report, report, 'us')[0]?.travel).toBeUndefined();
  });
});

describe('the run as it is drawn', () => {
  const run = runView(shop, model, report, 'us');

  it('is still where no open drop’s air passes', () => {
    const flowing = run.filter(({ state }) => state !== 'still').map(({ id }) => id);
    expect(flowing).toContain('main-1');
    expect(flowing).toContain('planer-hose');
    expect(flowing).not.toContain('west-1');
  });

  it('judges every other section by the carrying range', () => {
    run.forEach(({ state }, i) => {
      const { velocity } = report.sections[i]!;
      if (state === 'settles') expect(velocity).toBeLessThan(17.78);
      if (state === 'tight') expect(velocity).toBeGreaterThan(22.86);
      if (state === 'carries') expect(Math.abs(velocity - 20.32)).toBeLessThanOrEqual(2.54);
    });
  });

  it('names the drop at each open end and nowhere else', () => {
    const named = run.filter(({ drop }) => drop !== undefined);
    expect(named).toHaveLength(shop.drops.length);
    expect(named.every(({ id }) => run.every(({ into }) => run[into]?.id !== id))).toBe(true);
  });
});

/** Height of the tallest plot [px]. */
const TALLEST = 600;

describe('the ducts’ curve as it is drawn', () => {
  const extent = plotExtent(model.curve);
  const knots = systemKnots(model, travels, report, extent.flow, extent.pressure);

  it('passes through the operating point', () => {
    const point = report.operatingPoint!;
    const knot = knots.find(({ flow }) => flow === point.flow);
    expect(knot?.pressure).toBeCloseTo(point.suction, 6 - Math.ceil(Math.log10(point.suction)) + 3);
  });

  it('starts at nothing, rises throughout and leaves the plot', () => {
    expect(knots[0]).toMatchObject({ flow: 0, pressure: 0 });
    knots.slice(1).forEach(({ flow, pressure }, i) => {
      expect(flow).toBeGreaterThan(knots[i]!.flow);
      expect(pressure).toBeGreaterThan(knots[i]!.pressure);
    });
    const end = knots.at(-1)!;
    expect(end.flow >= extent.flow || end.pressure >= extent.pressure).toBe(true);
  });

  it.each([
    ['nothing', []],
    ['one drop', ['lathe']],
    ['two drops', ['planer', 'lathe']],
    ['all drops', shop.drops.map(({ id }) => id)],
  ])('is drawn within half a pixel of what the ducts ask, %s open', (_, open) => {
    const at = travelsOf(shop.drops, new Map(open.map((id) => [id, 1])));
    const { flow, pressure } = extent;
    const system = systemKnots(model, at, stateReport(model, at), flow, pressure);
    const drawn = asking({ curve: model.curve, collector: 'fan', system, point: undefined });
    const end = system.at(-1)!.flow;
    const flows = Array.from({ length: 200 }, (_, i) => ((i + 0.5) * end) / 200);
    const asked = systemCurve(model.ducts.network, gateCoefficients(model.ducts, at), flows);
    for (const point of asked) {
      const off = (TALLEST * Math.abs(drawn(point.flow)! - point.suction)) / pressure;
      expect(off, `at ${point.flow} m³/s`).toBeLessThan(0.5);
    }
  });

  it('is none where nothing balances', () => {
    const none = { ...report, operatingPoint: null };
    expect(systemKnots(model, travels, none, extent.flow, extent.pressure)).toEqual([]);
  });
});
