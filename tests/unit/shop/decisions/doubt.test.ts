import { describe, expect, it } from 'vitest';
import { collectorCurve } from '../../../../src/curve/collector-curve.ts';
import { candidateOf } from '../../../../src/shop/decisions/collectors.ts';
import { collectorDoubtStudy } from '../../../../src/shop/decisions/collector-doubt.ts';
import { doubtCases, doubtStudy } from '../../../../src/shop/decisions/doubt.ts';
import { doubtfulLayout, roughnessRange } from '../../../../src/shop/decisions/doubtful-shop.ts';
import { doubtedMains } from '../../../../src/shop/decisions/doubted-mains.ts';
import { mainDoubtStudy } from '../../../../src/shop/decisions/main-doubt.ts';
import { mainFamily, suggestedMain } from '../../../../src/shop/decisions/main-sections.ts';
import { mainSizeStudy } from '../../../../src/shop/decisions/main-sizes.ts';
import { reachStudy } from '../../../../src/shop/decisions/reach.ts';
import { reachDoubtStudy } from '../../../../src/shop/decisions/reach-doubt.ts';
import { dropIn } from '../../../../src/shop/decisions/solved-states.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { usualStates } from '../../../../src/shop/gate-state.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../../src/shop/shop-model.ts';
import { gateCoefficient } from '../../../../src/duct/blast-gate.ts';
import {
  type DoubtFactors,
  type DoubtRanges,
  USUAL_DOUBT,
} from '../../../../src/study/doubt-factors.ts';
import { finish } from '../../../../src/study/progress.ts';
import { randomShop } from '../../../setup/random-shop.ts';
import { seededRandom } from '../../../setup/random-tree.ts';
import { smallShop } from '../small-shop.ts';
import { solvedByCommandLine } from './command-line.ts';
import { demoShop } from './demo.ts';

const demo = demoShop();
const NOTHING: DoubtRanges = { hoods: 0, fittings: 0, wyes: 0, gates: 0, walls: 0, curve: 0 };
const LEAK = 0.005;

/** A shop all of whose losses stand in the document as plain numbers, with these factors on them. */
function plainShop(factors: DoubtFactors | undefined): Shop {
  const { hoods = 1, fittings = 1, wyes = 1, gates = 1, curve = 1 } = factors ?? {};
  const wall = (usual: number) => {
    if (factors === undefined) return usual;
    return 0.5 * usual + factors.pipeWall * 1.5 * usual;
  };
  const pipe = (diameter: number, usual: number) =>
    ({ kind: 'custom', diameter, roughness: wall(usual) }) as const;
  const plain = (coefficient: number) =>
    [{ kind: 'plain', coefficient: fittings * coefficient }] as const;
  const join = (coefficient: number) =>
    ({ kind: 'fixed', coefficient: wyes * coefficient, of: 'own' }) as const;
  // Shut, a gate loses (1/leak − 1)² and its slot; a leak that makes it lose so many times as much.
  const slotLoss = gates * 0.1;
  const shut = gates * gateCoefficient(0, LEAK, 0.1);
  const gate = { travel: 1, slotLoss, leak: 1 / (1 + Math.sqrt(shut - slotLoss)) };
  const hood = (coefficient: number) =>
    ({ kind: 'coefficient', coefficient: hoods * coefficient }) as const;
  return {
    ...smallShop,
    collector: {
      ...smallShop.collector,
      curve: {
        ...smallShop.collector.curve,
        points: smallShop.collector.curve.points.map(({ flow, pressure }) => ({
          flow,
          pressure: curve * pressure,
        })),
      },
    },
    sections: [
      { id: 'main', into: 'collector', pipe: pipe(0.15, 9e-5), length: 6, fittings: plain(0.4) },
      {
        id: 'run',
        into: 'main',
        pipe: pipe(0.125, 9e-5),
        length: 3,
        fittings: [],
        join: join(0.1),
      },
      {
        id: 'end',
        into: 'run',
        pipe: pipe(0.1, 1e-3),
        length: 1,
        fittings: plain(0.2),
        transition: { kind: 'plain', coefficient: fittings * 0.15 },
      },
      { id: 'side', into: 'main', pipe: pipe(0.1, 9e-5), length: 2, fittings: [], join: join(0.3) },
    ],
    drops: [
      { id: 'planer', name: 'Planer', into: 'end', hood: hood(0.65), gate },
      { id: 'saw', name: 'Saw', into: 'side', hood: hood(0.93), gate, need: 0.13 },
    ],
    gateSets: [{ id: 'both', name: 'Both', open: ['planer', 'saw'] }],
  };
}

const shop = plainShop(undefined);
const states = usualStates(shop);
const curveOf = (each: Shop) => collectorCurve(each.collector, modelOf(each).air);
const doubted = finish(doubtStudy([shop], [curveOf(shop)], states))[0]![0]!;

describe('what losses consist of', () => {
  it('adds up to what the network has', () => {
    const model = modelOf(demo);
    const { network, parts } = doubtfulLayout(demo, model);
    const gap = (sum: Float64Array, whole: Float64Array) =>
      Math.max(...sum.map((value, i) => Math.abs(value - whole[i]!)));
    expect(
      gap(
        parts.hood.map((h, i) => h + parts.fitting[i]!),
        network.fixed,
      ),
    ).toBeLessThan(1e-12);
    const frictional = parts.wall.map((wall, i) => wall + parts.fittingFrictional[i]!);
    expect(gap(frictional, network.frictional)).toBeLessThan(1e-12);
    expect(Math.max(...parts.hood)).toBeGreaterThan(0.3);
    expect(Math.max(...parts.fittingFrictional)).toBeGreaterThan(1);
    expect(parts.isHose).toContain(1);
  });

  it('has walls as rough as the catalogue says, or half to double an entered roughness', () => {
    const steel = { kind: 'catalogue', family: 'galvanised-spiral', size: '6in' } as const;
    expect(roughnessRange(steel, 9e-5)).toEqual([5e-5, 1.5e-4]);
    expect(roughnessRange({ ...steel, roughness: 1e-4 }, 1e-4)).toEqual([5e-5, 2e-4]);
  });
});

describe('a doubted state', () => {
  it('has in each case the figures of a document with these very losses, by the command line', () => {
    const cases = doubtCases({});
    for (const round of [1, 2, 37, 100, 256]) {
      const reports = solvedByCommandLine(plainShop(cases[round - 1]));
      doubted.forEach(({ drops }, state) => {
        for (const { id, cases: each } of drops) {
          const report = dropIn(reports[state]!, id);
          expect(each.figures.flow[round]! / report.flow).toBeCloseTo(1, 6);
          expect(each.figures.velocity[round]! / report.velocity).toBeCloseTo(1, 6);
          expect(each.figures.slowest[round]! / report.slowest.velocity).toBeCloseTo(1, 6);
          expect(each.verdicts[round]).toBe(report.verdict);
        }
      });
    }
  });

  it('tells how often its verdict holds, and between which values its figures lie', () => {
    for (const { drops } of doubted) {
      for (const { verdict, holds, counts, flow, cases } of drops) {
        const others = cases.verdicts.slice(1);
        expect(Object.values(counts).reduce((a, b) => a + b)).toBe(256);
        const isServed = (each: string) => each === 'carries' || each === 'tight';
        const same = others.filter((each) => isServed(each) === isServed(verdict));
        expect(holds).toBe(same.length / 256);
        const within = cases.figures.flow.slice(1).filter((q) => q >= flow.low && q <= flow.high);
        // 90 % of 256, both ends within a case.
        expect(Math.abs(within.length - 0.9 * 256)).toBeLessThanOrEqual(1.5);
        expect(flow.low).toBeLessThan(cases.figures.flow[0]!);
        expect(flow.high).toBeGreaterThan(cases.figures.flow[0]!);
      }
    }
    const all = doubted.flatMap(({ drops }) => drops.map(({ holds }) => holds));
    expect(Math.min(...all)).toBeLessThan(1);
    expect(Math.max(...all)).toBe(1);
  });

  it('is sure of everything where nothing is off, and less sure the more is', () => {
    const widthWith = (ranges: DoubtRanges) => {
      const [[found = []] = []] = finish(doubtStudy([shop], [curveOf(shop)], states, { ranges }));
      return found.flatMap(({ drops }) => drops.map(({ flow }) => flow.high - flow.low));
    };
    for (const width of widthWith(NOTHING)) expect(width).toBeLessThan(1e-8);
    const usual = widthWith(USUAL_DOUBT);
    const more = widthWith({ ...USUAL_DOUBT, hoods: 0.4, fittings: 0.4, curve: 0.1 });
    usual.forEach((width, i) => expect(more[i]!).toBeGreaterThan(width));
  });

  it('has the same cases for the same seed, and refuses to be told from few', () => {
    expect(doubtCases({ seed: 3 })).toEqual(doubtCases({ seed: 3 }));
    expect(doubtCases({ seed: 3 })).not.toEqual(doubtCases({ seed: 4 }));
    expect(() => doubtCases({ cases: 100 })).toThrow('256 cases at least, not 100');
    expect(() => doubtCases({ ranges: { ...USUAL_DOUBT, gates: 1.5 } })).toThrow('gates is 1.5');
  });

  it('can be left off at any step, and says how far it is', () => {
    const study = doubtStudy([shop], [curveOf(shop)], states);
    const seen: number[] = [];
    for (const { done, total } of { [Symbol.iterator]: () => study }) {
      expect(total).toBe(257);
      seen.push(done);
      if (done === 10) break;
    }
    expect(seen.filter((done) => done > 0)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(study.next().done).toBe(true);
  });
});

describe('the doubt of a main', () => {
  it('needs no more of the answer than what goes to a worker', () => {
    const main = suggestedMain(demo);
    const sizes = finish(mainSizeStudy(demo, main, mainFamily(demo, main)));
    const sent = doubtedMains(sizes);
    expect(finish(mainDoubtStudy(demo, sent))).toEqual(finish(mainDoubtStudy(demo, sizes)));
    expect(sent.rows.some(({ drops }) => drops.some(({ bleeds }) => bleeds.length > 0))).toBe(true);
    expect(JSON.stringify(sent).length).toBeLessThan(JSON.stringify(sizes).length / 4);
  });

  it('is sure of its effects where nothing is off, and unsure of some where things are', () => {
    const few = randomShop(seededRandom(9), { drops: 3, wyes: 'momentum', curve: 'falling' });
    const trunk = suggestedMain(few);
    const table = finish(mainSizeStudy(few, trunk, 'galvanised-snap-lock'));
    const sure = finish(mainDoubtStudy(few, table, { ranges: NOTHING }));
    expect(sure.rows.flatMap(({ effects }) => effects.map(({ holds }) => holds))).toEqual(
      table.rows.flatMap(({ drops }) => drops.map(() => 1)),
    );
    const main = suggestedMain(demo);
    const sizes = finish(mainSizeStudy(demo, main, mainFamily(demo, main)));
    const { rows, today } = finish(mainDoubtStudy(demo, sizes));
    expect(today.map(({ state }) => state.open)).toEqual(usualStates(demo).map(({ open }) => open));
    const holds = rows.flatMap(({ effects }) => effects.map((effect) => effect.holds));
    expect(Math.min(...holds)).toBeLessThan(0.7);
    expect(Math.max(...holds)).toBe(1);
    rows.forEach((row, k) => {
      row.states.forEach(({ drops }, state) => {
        const figures = sizes.rows[k]!.states[state]!;
        drops.forEach((drop, i) => {
          expect(drop.verdict).toBe(figures.drops[i]!.verdict);
          expect(drop.cases.figures.flow[0]! / figures.drops[i]!.flow).toBeCloseTo(1, 9);
        });
      });
    });
  });
});

describe('the doubt of collectors', () => {
  it('tells between which numbers of drops each serves, and how often it is the best', () => {
    const candidates = [
      demo.collector,
      ...exampleCurves().map((curve) => candidateOf(demo, curve)),
    ];
    const doubts = finish(collectorDoubtStudy(demo, candidates));
    expect(doubts).toHaveLength(candidates.length);
    const best = doubts.map((each) => each.best);
    expect(best.reduce((a, b) => a + b)).toBeGreaterThanOrEqual(1);
    for (const { served, states: each } of doubts) {
      expect(served.low).toBeGreaterThanOrEqual(0);
      expect(served.high).toBeLessThanOrEqual(demo.drops.length);
      expect(each).toHaveLength(usualStates(demo).length);
    }
    // The weakest serves fewer than the best in nearly every case.
    expect(Math.min(...best)).toBeLessThan(0.05);
  });
});

describe('the doubt of a reach', () => {
  const random = randomShop(seededRandom(5), { drops: 3, wyes: 'momentum', curve: 'falling' });
  const pipe = { kind: 'catalogue', family: 'galvanised-spiral', size: '125mm' } as const;
  const target = { kind: 'existing', drop: 'drop-1' } as const;
  const run = { target, pipe, fittings: [] };
  const range = { low: 12, high: 25 };
  const slow: Shop = { ...random, carryingRange: range };

  it('is none where nothing is off, and else a band about the reach', () => {
    const reach = finish(reachStudy(slow, run, { longest: 60 }));
    expect(reach.end.kind).toBe('limit');
    const sure = finish(reachDoubtStudy(slow, run, { longest: 60, ranges: NOTHING }));
    expect(sure.length.low).toBeCloseTo(reach.length, 5);
    expect(sure.length.high).toBeCloseTo(reach.length, 5);
    expect(sure.holds).toBe(1);
    const doubt = finish(reachDoubtStudy(slow, run, { longest: 60 }));
    expect(doubt.length.low).toBeLessThan(reach.length);
    expect(doubt.length.high).toBeGreaterThan(reach.length);
    expect(Object.values(doubt.causes).reduce((a, b) => a + b)).toBe(256);
    const served = doubt.points.map((point) => point.served);
    expect(served[0]).toBeGreaterThan(served.at(-1)!);
    const usual = reach.points[10]!.figures!;
    expect(doubt.points[10]!.flow.low).toBeLessThan(usual.flow);
    expect(doubt.points[10]!.flow.high).toBeGreaterThan(usual.flow);
  });
});
