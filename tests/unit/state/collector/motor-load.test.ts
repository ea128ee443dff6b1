import { describe, expect, it } from 'vitest';
import { motorAs, motorKind } from '../../../../src/state/collector/motor-choice.ts';
import { motorLoad, motorWords } from '../../../../src/state/collector/motor-load.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { positionsWhenOpen } from '../../../../src/state/gate-positions.ts';
import { Session } from '../../../../src/state/session.ts';
import { replaceCurve } from '../../../../src/shop/edits/edit-shop.ts';
import { demoShop } from '../demo-shop.ts';

const demo = demoShop();
const loadOf = (open: readonly string[], change?: Parameters<Session['edit']>[0]) => {
  const session = new Session(demo, open, 'us');
  if (change) expect(session.edit(change)).toEqual([]);
  const shop = session.shop.value;
  return motorLoad(shop, session.model.value, positionsWhenOpen(shop.drops, open));
};

describe('the motor’s load', () => {
  it('is worst where most air is moved: with every gate open', () => {
    const { now, worst } = loadOf(['planer']);
    expect(worst!.name).toBe('every gate open');
    expect(worst!.power.power).toBeGreaterThan(now!.power);
    const all = demo.drops.map(({ id }) => id);
    expect(loadOf(all).now!.power).toBeCloseTo(worst!.power.power, 3);
  });

  it('is told against the nameplate, and warned of above it, with the state named', () => {
    const { curve } = demo.collector;
    const small = replaceCurve({ ...curve, nameplate: 1000 });
    const load = loadOf(['planer'], small);
    expect(load.worst!.power.load).toBeCloseTo(load.worst!.power.power / 1000, 9);
    const { text, isOver } = motorWords(load, 1000, 'metric');
    expect(isOver).toBe(true);
    expect(text).toMatch(/It takes most with every gate open: .* of the nameplate\./);
    expect(text).toMatch(/more than the 1\.0.kW of the nameplate/);
    const large = loadOf(['planer'], replaceCurve({ ...curve, nameplate: 20_000 }));
    expect(motorWords(large, 20_000, 'us').isOver).toBe(false);
  });

  it('is not told where nothing says it', () => {
    const { power: _, efficiency: __, ...bare } = demo.collector.curve;
    const load = loadOf(['planer'], replaceCurve(bare));
    expect(load.now).toBeUndefined();
    expect(motorWords(load, undefined, 'us').text).toMatch(/^Say an efficiency/);
  });
});

describe('the way in which power is known', () => {
  it('goes from one to the other, and back to nothing', () => {
    const [curve] = exampleCurves();
    const bare = motorAs(curve!, 'unknown');
    expect(motorKind(bare)).toBe('unknown');
    const byEfficiency = motorAs(bare, 'efficiency');
    expect(byEfficiency.efficiency).toBe(0.45);
    const byPoints = motorAs({ ...byEfficiency, basis: { kind: 'total' } }, 'points');
    expect(motorKind(byPoints)).toBe('points');
    const last = byPoints.points.at(-1)!;
    // Air power over efficiency, by hand.
    expect(byPoints.power!.at(-1)!.power).toBeCloseTo((last.flow * last.pressure) / 0.45, 0);
    expect(motorAs(byPoints, 'efficiency').power).toBeUndefined();
  });
});
