import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { addTried, isSamePlace, triedState } from '../../../src/state/trail.ts';
import { travelsOf } from '../../../src/state/gate-positions.ts';
import { demoShop } from './demo-shop.ts';

const shop = demoShop();
const model = modelOf(shop);
const tried = (...open: string[]) =>
  triedState(
    shop,
    model,
    stateReport(model, travelsOf(shop.drops, new Map(open.map((id) => [id, 1])))),
  );

describe('the trail', () => {
  it('names up to two open drops and counts more', () => {
    expect(tried('lathe')?.name).toBe('Lathe');
    expect(tried('table-saw', 'lathe')?.name).toBe('Table saw + Lathe');
    expect(tried('table-saw', 'lathe', 'jointer')?.name).toBe('3 open');
    expect(tried()).toBeUndefined();
  });

  it('holds eight states at most, the latest last', () => {
    const many = Array.from({ length: 12 }, (_, i) => ({
      name: `${i}`,
      flow: 0.1 * 1.1 ** i,
      suction: 1000,
      model,
    }));
    const trail = many.reduce<ReturnType<typeof addTried>>(addTried, []);
    expect(trail.map(({ name }) => name)).toEqual(['4', '5', '6', '7', '8', '9', '10', '11']);
  });

  it('takes two states at one place of the page for one', () => {
    expect(isSamePlace({ flow: 0.5 }, { flow: 0.501 })).toBe(true);
    expect(isSamePlace({ flow: 0.5 }, { flow: 0.51 })).toBe(false);
    const [first, second] = [tried('lathe')!, { ...tried('lathe')!, name: 'again' }];
    expect(addTried([first], second)).toEqual([second]);
  });
});
