// The parts on a way add up: to what the report says of each section, and to the suction that the
// collector gives at the flange. Neither is computed from the parts.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathLosses } from '../../../src/shop/path-losses.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { demoShop } from '../state/demo-shop.ts';
import { smallShop } from './small-shop.ts';

// A balance closes within 1e-9 of the suction, of some thousand pascals.
const CLOSES = 1e-5;

describe('the losses on a drop’s way', () => {
  const shop = demoShop();
  const model = modelOf(shop);

  it('add up to each section and to the suction, however the gates stand', () => {
    const travels = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
      minLength: shop.drops.length,
      maxLength: shop.drops.length,
    });
    fc.assert(
      fc.property(travels, (at) => {
        const report = stateReport(model, at);
        const suction = report.operatingPoint!.suction;
        for (const { id } of shop.drops) {
          const steps = pathLosses(shop, model, report, id);
          const lost = steps.reduce((sum, { loss }) => sum + loss, 0);
          expect(Math.abs(lost - suction)).toBeLessThan(CLOSES);
          expect(steps.at(-1)!.totalPressure).toBeCloseTo(-suction, 4);
          for (const section of new Set(steps.map((step) => step.section))) {
            const said = report.sections.find((each) => each.id === section)!;
            const own = steps.filter((step) => step.section === section);
            const isJoin = ({ part }: (typeof own)[number]) =>
              part.kind === 'wye' || part.kind === 'change';
            const run = own.filter((step) => !isJoin(step));
            const joins = own.filter(isJoin);
            const sum = (of: typeof own) => of.reduce((all, { loss }) => all + loss, 0);
            expect(Math.abs(sum(run) - said.loss)).toBeLessThan(CLOSES);
            expect(Math.abs(sum(joins) - said.joinLoss)).toBeLessThan(CLOSES);
            expect(Math.abs(run.at(-1)!.staticPressure - said.staticPressure)).toBeLessThan(CLOSES);
          }
        }
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it('come in the order in which air passes', () => {
    const report = stateReport(
      model,
      shop.drops.map(({ id }) => (id === 'planer' ? 1 : 0)),
    );
    const steps = pathLosses(shop, model, report, 'planer');
    expect(steps.slice(0, 5).map(({ part }) => part.kind)).toEqual([
      'hood',
      'port',
      'gate',
      'hose',
      'change',
    ]);
    expect(steps[0]!.section).toBe('planer-hose');
    expect(steps.at(-1)!.section).toBe('main-1');
  });

  it('show the speed in the port between total and static pressure behind the hood', () => {
    const narrow = {
      ...smallShop,
      drops: smallShop.drops.map((drop) => (drop.id === 'saw' ? { ...drop, port: 0.05 } : drop)),
    };
    const report = stateReport(modelOf(narrow), [0, 1]);
    const [hood, port] = pathLosses(narrow, modelOf(narrow), report, 'saw');
    const { flow } = report.drops[1]!;
    const speed = flow / 0.0019634954;
    expect(hood!.totalPressure - hood!.staticPressure).toBeCloseTo(0.6 * speed ** 2, 3);
    expect(port!.part).toEqual({ kind: 'port', from: 0.05, to: 0.1 });
    // Sixteen times the area squared: a sixteenth of the velocity pressure.
    expect(port!.totalPressure - port!.staticPressure).toBeCloseTo((0.6 * speed ** 2) / 16, 3);
  });

  it('are none where nothing moves, and refuse a drop that is not there', () => {
    const report = stateReport(
      model,
      shop.drops.map(() => 1),
    );
    expect(pathLosses(shop, model, { ...report, operatingPoint: null }, 'planer')).toEqual([]);
    expect(() => pathLosses(shop, model, report, 'kiln')).toThrow(RangeError);
  });
});
