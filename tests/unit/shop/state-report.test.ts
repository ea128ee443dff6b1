import { beforeAll, describe, expect, it } from 'vitest';
import { travelsWhenOpen } from '../../../src/shop/gate-state.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { type StateReport, stateReport } from '../../../src/shop/state-report.ts';
import { smallShop } from './small-shop.ts';

const reportOn = (shop: Shop, open: readonly string[]) =>
  stateReport(modelOf(shop), travelsWhenOpen(shop.drops, open));

const withCurve = (points: Shop['collector']['curve']['points']): Shop => ({
  ...smallShop,
  collector: { ...smallShop.collector, curve: { ...smallShop.collector.curve, points } },
});

describe('a report on two open drops', () => {
  let report: StateReport;
  const at = (id: string) => {
    const section = report.sections.find((each) => each.id === id);
    if (section === undefined) throw new Error(id);
    return section;
  };
  beforeAll(() => {
    report = reportOn(smallShop, ['planer', 'saw']);
  });

  it('closes mass at the wye', () => {
    expect(at('main').flow).toBeCloseTo(at('planer-run').flow + at('saw-run').flow, 12);
    expect(at('planer-run').flow).toBeCloseTo(at('planer-end').flow, 12);
    expect(at('main').flow).toBeCloseTo(report.operatingPoint?.flow ?? 0, 12);
    expect(report.residual).toBeLessThan(1e-9);
  });

  it('adds up in total pressure from the room to the flange', () => {
    expect(at('main').totalPressure).toBeCloseTo(-(report.operatingPoint?.suction ?? 0), 9);
    // At an open end the room's pressure is 0, and everything lost since shows downstream.
    for (const id of ['planer-end', 'saw-run']) {
      expect(at(id).totalPressure + at(id).loss).toBeCloseTo(0, 5);
    }
    const beforeMain = at('main').totalPressure + at('main').loss;
    for (const id of ['planer-run', 'saw-run']) {
      expect(at(id).totalPressure - at(id).joinLoss).toBeCloseTo(beforeMain, 9);
    }
  });

  it('gives the static pressures of two pipes that meet as equal, for momentum needs it so', () => {
    expect(at('saw-run').staticPressure).toBeCloseTo(at('planer-run').staticPressure, 6);
  });

  it('has static pressure below total by the velocity pressure', () => {
    for (const { staticPressure, totalPressure, velocity } of report.sections) {
      expect(totalPressure - staticPressure).toBeCloseTo(0.6 * velocity ** 2, 9);
    }
  });

  it('names the drops, their gates and where their air is slowest', () => {
    expect(report.open).toEqual(['planer', 'saw']);
    expect(report.drops.map(({ id, name, travel }) => [id, name, travel])).toEqual([
      ['planer', 'Planer', 1],
      ['saw', 'Band saw', 1],
    ]);
    const planer = report.drops[0];
    expect(planer?.slowest.section).toBe('planer-run');
    expect(planer?.slowest.velocity).toBe(at('planer-run').velocity);
    expect(planer?.need).toBeNull();
    expect(report.drops[1]?.need).toBe(0.1);
  });
});

describe('a report on other states', () => {
  it('shows the leaks when nothing is open, and says so first', () => {
    const report = reportOn(smallShop, []);
    expect(report.outcome).toBe('nothing open');
    expect(report.open).toEqual([]);
    expect(report.drops.map(({ verdict }) => verdict)).toEqual(['shut', 'shut']);
    // Twice 0.5 % of 0.1 m pipe under 2400 Pa: √(2·2400/1.2)·0.005·0.00785 is 0.0025 m³/s each.
    expect(report.operatingPoint?.flow).toBeGreaterThan(0.004);
    expect(report.operatingPoint?.flow).toBeLessThan(0.0055);
  });

  it('says that a drop is open only while its gate is', () => {
    const report = stateReport(modelOf(smallShop), [0.3, 0]);
    expect(report.open).toEqual(['planer']);
    expect(report.drops[0]?.travel).toBe(0.3);
    expect(report.drops[0]?.flow).toBeGreaterThan(10 * (report.drops[1]?.flow ?? 1));
  });

  it('takes a drop without a gate as open whatever is asked', () => {
    const drops = smallShop.drops.map(({ id, name, into, hood }) => ({ id, name, into, hood }));
    const report = reportOn({ ...smallShop, drops }, []);
    expect(report.open).toEqual(['planer', 'saw']);
    expect(report.drops.map(({ travel }) => travel)).toEqual([1, 1]);
  });

  it('says where the crossing lies beyond the entered points', () => {
    const short = withCurve([
      { flow: 0, pressure: 2400 },
      { flow: 0.1, pressure: 2220 },
    ]);
    const beyond = reportOn(short, ['planer']);
    expect(beyond.outcome).toBe('curve ends before the crossing: above the entered points');
    expect(beyond.operatingPoint?.withinPoints).toBe(false);

    const late = withCurve([
      { flow: 0.3, pressure: 900 },
      { flow: 0.4, pressure: 100 },
    ]);
    const before = reportOn(late, ['planer']);
    expect(before.outcome).toBe('curve ends before the crossing: below the entered points');
  });

  it('says when the collector runs left of the peak of its curve', () => {
    const humped = withCurve([
      { flow: 0, pressure: 1500 },
      { flow: 0.5, pressure: 2500 },
      { flow: 0.8, pressure: 0 },
    ]);
    const report = reportOn(humped, ['planer']);
    expect(report.difficulties).toContain('left of the peak');
  });

  it('gives no operating point, and stillness, where the collector gives no suction', () => {
    const tap = { kind: 'tap', diameter: 0.1 } as const;
    const dead = withCurve([
      { flow: 0, pressure: -10 },
      { flow: 0.2, pressure: 5 },
    ]);
    const curve = { ...dead.collector.curve, basis: tap };
    const report = reportOn({ ...dead, collector: { ...dead.collector, curve } }, ['planer']);
    expect(report).toMatchObject({ outcome: 'no suction', operatingPoint: null, residual: null });
    expect(report.sections.every(({ flow, velocity }) => flow === 0 && velocity === 0)).toBe(true);
    expect(JSON.stringify(report)).not.toContain('NaN');
  });

  it('writes nothing that JSON would turn into null by accident', () => {
    for (const open of [[], ['planer'], ['saw'], ['planer', 'saw']]) {
      const report = reportOn(smallShop, open);
      const numbers = JSON.stringify(report).match(/null/g) ?? [];
      expect(numbers).toHaveLength(1); // the planer's need, which nobody stated
    }
  });
});
