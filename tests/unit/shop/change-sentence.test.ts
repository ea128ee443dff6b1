// The last change in words, on reports made up so that every figure is known.
import { describe, expect, it } from 'vitest';
import { changeSentence } from '../../../src/shop/change-sentence.ts';
import type { DropReport } from '../../../src/shop/state-report.ts';
import { smallShop } from './small-shop.ts';

const drop = (id: string, travel: number, velocity: number, more: Partial<DropReport> = {}) =>
  ({
    id,
    name: id,
    travel,
    velocity,
    verdict: travel > 0 ? 'carries' : 'shut',
    slowest: { section: 'main', velocity },
    ...more,
  }) as DropReport;
const state = (drops: readonly DropReport[], shop = smallShop) => ({
  shop,
  report: { drops, operatingPoint: null },
});
const words = (
  before: readonly DropReport[],
  after: readonly DropReport[],
  shop = smallShop,
  system: 'us' | 'metric' = 'us',
) => changeSentence(state(before), state(after, shop), system);

describe('the last change in words', () => {
  it('names the gate that was opened and the drop that felt it', () => {
    expect(
      words(
        [drop('planer', 1, 22.0472), drop('saw', 0, 0)],
        [drop('planer', 1, 14.5796), drop('saw', 1, 18)],
      ),
    ).toBe('Opening Band saw slows Planer from 4,340 to 2,870\u2009ft/min.');
  });

  it('names a gate that was shut, or set somewhere between', () => {
    expect(
      words(
        [drop('planer', 1, 15), drop('saw', 1, 18)],
        [drop('planer', 1, 20), drop('saw', 0, 0)],
        smallShop,
        'metric',
      ),
    ).toBe('Shutting Band saw speeds up Planer from 15.0 to 20.0\u2009m/s.');
    expect(words([drop('planer', 1, 20)], [drop('planer', 0.4, 15)], smallShop, 'metric')).toBe(
      'Setting the gate of Planer to 40\u2009% slows Planer from 20.0 to 15.0\u2009m/s.',
    );
  });

  it('gives the speeds of what was opened where nothing stayed open', () => {
    expect(
      words(
        [drop('planer', 1, 20), drop('saw', 0, 0)],
        [drop('planer', 0, 0), drop('saw', 1, 18)],
        smallShop,
        'metric',
      ),
    ).toBe('Opening Band saw and shutting Planer gives Band saw 18.0\u2009m/s.');
    expect(words([drop('planer', 1, 20)], [drop('planer', 0, 0)])).toBe(
      'Shutting Planer leaves nothing open.',
    );
  });

  it('speaks of the edit where no gate moved', () => {
    const edited = { ...smallShop, name: 'Longer' };
    expect(words([drop('planer', 1, 20)], [drop('planer', 1, 18)], edited, 'metric')).toBe(
      'The last edit slows Planer from 20.0 to 18.0\u2009m/s.',
    );
    expect(words([drop('planer', 1, 20)], [drop('planer', 1, 20.01)], edited)).toBe(
      'The last edit changes no speed to speak of.',
    );
  });

  it('says where chips now settle, and where they no longer do', () => {
    const settles = { verdict: 'settles' } as const;
    expect(
      words(
        [drop('planer', 1, 20), drop('saw', 1, 10, settles)],
        [drop('planer', 1, 12, settles), drop('saw', 1, 19)],
      ),
    ).toContain(
      'Chips now settle on the way of Planer. Chips no longer settle on the way of Band saw.',
    );
  });

  it('knows a drop by its id only, under its present name', () => {
    const renamed = {
      ...smallShop,
      drops: smallShop.drops.map((each) => ({ ...each, name: `New ${each.name}` })),
    };
    expect(words([drop('planer', 1, 20)], [drop('planer', 1, 15)], renamed)).toContain(
      'New Planer',
    );
  });
});
