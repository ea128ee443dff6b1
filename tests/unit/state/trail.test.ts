import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../src/shop/shop-model.ts';
import type { Verdict } from '../../../src/shop/verdict.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { addTried, isSamePlace, markedStates, triedState } from '../../../src/state/trail.ts';
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

  it('remembers all that was open, and the slowest pipe', () => {
    const state = tried('lathe', 'planer')!;
    const { drops } = stateReport(
      model,
      travelsOf(
        shop.drops,
        new Map([
          ['lathe', 1],
          ['planer', 1],
        ]),
      ),
    );
    const open = drops.filter(({ travel }) => travel > 0);
    expect(state.gates.map(({ name }) => name).toSorted()).toEqual(['Lathe', 'Thickness planer']);
    // Another beginning of the same balance: alike to its closing of 1e-9.
    expect(state.slowest.velocity).toBeCloseTo(
      Math.min(...open.map(({ slowest }) => slowest.velocity)),
      7,
    );
  });

  it('keeps the gravest verdict of the open drops', () => {
    const report = stateReport(
      model,
      travelsOf(
        shop.drops,
        new Map([
          ['lathe', 1],
          ['planer', 1],
        ]),
      ),
    );
    const judged = (...verdicts: Verdict[]) => {
      let next = 0;
      const drops = report.drops.map((drop) =>
        drop.travel > 0 ? { ...drop, verdict: verdicts[next++]! } : drop,
      );
      return triedState(shop, model, { ...report, drops })?.verdict;
    };
    expect(judged('carries', 'settles')).toBe('settles');
    expect(judged('short', 'settles')).toBe('settles');
    expect(judged('tight', 'short')).toBe('short');
    expect(judged('carries', 'tight')).toBe('tight');
    expect(judged('carries', 'carries')).toBe('carries');
  });

  it('holds forty states at most, the latest last', () => {
    const one = tried('lathe')!;
    const many = Array.from({ length: 44 }, (_, i) => ({
      ...one,
      gates: [{ name: 'Lathe', travel: (i + 1) / 44 }],
      flow: i,
    }));
    const trail = many.reduce<ReturnType<typeof addTried>>(addTried, []);
    expect(trail).toHaveLength(40);
    expect([trail[0]!.flow, trail.at(-1)!.flow]).toEqual([4, 43]);
  });

  it('takes the same gates for the same state', () => {
    const [first, second] = [tried('lathe')!, { ...tried('lathe')!, name: 'again' }];
    expect(addTried([first], second)).toEqual([second]);
    expect(addTried([first], tried('jointer')!)).toHaveLength(2);
  });

  it('forgets what was tried on other ducts or another collector', () => {
    const other = { ...tried('jointer')!, model: modelOf(shop) };
    expect(addTried([tried('lathe')!], other)).toEqual([other]);
  });

  it('marks each place of the page once, and none under the point', () => {
    expect(isSamePlace({ flow: 0.5 }, { flow: 0.501 })).toBe(true);
    expect(isSamePlace({ flow: 0.5 }, { flow: 0.51 })).toBe(false);
    const one = tried('lathe')!;
    const trail = [0.3, 0.4, 0.4001, 0.5, 0.6].map((flow) => ({ ...one, flow }));
    const marked = (point: number, most: number) =>
      markedStates(trail, { flow: point }, most).map(({ flow }) => flow);
    expect(marked(0.6, 8)).toEqual([0.3, 0.4001, 0.5]);
    expect(marked(0.7, 2)).toEqual([0.5, 0.6]);
  });
});
