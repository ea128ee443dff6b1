import { describe, expect, it } from 'vitest';
import { travelsWhenOpen } from '../../../src/shop/gate-state.ts';
import { motorLoad, motorSentence, worstMotorLoad } from '../../../src/shop/motor-load.ts';
import type { Curve } from '../../../src/shop/schema/curve-schema.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { smallShop } from './small-shop.ts';

/** A motor whose power is 1000 W and 4000 W a m³/s more, so the flow can be read off it. */
const power = [
  { flow: 0, power: 1000 },
  { flow: 1, power: 5000 },
];
const withMotor = (motor: Partial<Curve>, shop: Shop = smallShop): Shop => ({
  ...shop,
  collector: { ...shop.collector, curve: { ...shop.collector.curve, ...motor } },
});

function stateOf(shop: Shop, open: readonly string[]) {
  const model = modelOf(shop);
  const report = stateReport(model, travelsWhenOpen(shop.drops, open));
  return { model, report, motor: motorLoad(shop, model, report) };
}

describe('the motor in one state', () => {
  it('delivers what the power points say at the operating point', () => {
    const { report, motor } = stateOf(withMotor({ power, nameplate: 1500 }), ['saw']);
    const flow = report.operatingPoint!.flow;
    expect(motor).toMatchObject({ kind: 'known', motors: 1, nameplate: 1500 });
    expect(motor.kind === 'known' ? motor.power : 0).toBeCloseTo(1000 + 4000 * flow, 6);
    expect(motor.kind === 'known' ? motor.load : 0).toBeCloseTo((1000 + 4000 * flow) / 1500, 9);
  });

  it('is one of several where there are several, each with its share of the flow', () => {
    const shop = withMotor({ power, nameplate: 1500 });
    const pair = {
      ...shop,
      collector: { ...shop.collector, arrangement: { kind: 'parallel', count: 2 } },
    } as const;
    const { report, motor } = stateOf(pair, ['saw']);
    const share = report.operatingPoint!.flow / 2;
    expect(motor).toMatchObject({ motors: 2 });
    expect(motor.kind === 'known' ? motor.power : 0).toBeCloseTo(1000 + 4000 * share, 6);
  });

  it('is not known without power points or an efficiency', () => {
    expect(stateOf(smallShop, ['saw']).motor).toEqual({ kind: 'unknown', reason: 'not entered' });
  });
});

describe('the worst state', () => {
  it('is the one of all drops alone and all saved sets that moves the most air here', () => {
    const shop = withMotor({ power });
    const worst = worstMotorLoad(shop, modelOf(shop))!;
    const states = [...shop.drops.map(({ id }) => [id]), ...shop.gateSets.map(({ open }) => open)];
    const powers = states.map((open) => {
      const { motor } = stateOf(shop, open);
      return motor.kind === 'known' ? motor.power : 0;
    });
    expect(worst.motor.power).toBeCloseTo(Math.max(...powers), 6);
    expect(worst.state).toMatchObject({ kind: 'gate set', open: ['planer', 'saw'] });
  });

  it('is not known where no power is', () => {
    expect(worstMotorLoad(smallShop, modelOf(smallShop))).toBeUndefined();
  });
});

describe('the motor in words', () => {
  const words = (motor: Partial<Curve>, open: readonly string[], shop = smallShop) => {
    const subject = withMotor(motor, shop);
    const { model, motor: now } = stateOf(subject, open);
    return motorSentence(now, worstMotorLoad(subject, model), 'metric');
  };

  it('says load and nameplate, and names the state that loads it most', () => {
    expect(words({ power, nameplate: 3000 }, ['saw'])).toMatch(
      /^The motor delivers [\d.]+\u2009kW, 66\.3\u2009% of its 3\.0\u2009kW\. Most of all with “Both” open: [\d.]+\u2009kW, 75\.2\u2009% of its 3\.0\u2009kW\.$/,
    );
  });

  it('warns above the nameplate, once in the worst state', () => {
    const text = words({ power, nameplate: 1000 }, ['planer', 'saw']);
    expect(text).toMatch(/: it is overloaded and may trip or burn out\.$/);
    expect(text).not.toContain('Most of all');
  });

  it('warns of the worst state where the present one is fine', () => {
    const shop = withMotor({ power });
    const [now, worst] = [['saw'], ['planer', 'saw']].map((open) => {
      const { motor } = stateOf(shop, open);
      return motor.kind === 'known' ? motor.power : 0;
    });
    const nameplate = (now! + worst!) / 2;
    const text = words({ power, nameplate }, ['saw']);
    const [first, second] = text.split('Most of all');
    expect(first).not.toContain('overloaded');
    expect(second).toContain('overloaded');
  });

  it('says so where it is a guess, and what to enter where nothing is known', () => {
    const short = [
      { flow: 0, power: 1000 },
      { flow: 0.01, power: 1040 },
    ];
    expect(words({ power: short }, ['saw'])).toContain('a guess beyond the entered points');
    expect(words({}, ['saw'])).toBe(
      'The motor’s load is not known: enter power points or an efficiency.',
    );
  });
});
