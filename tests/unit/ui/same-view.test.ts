import { describe, expect, it } from 'vitest';
import { sameView } from '../../../src/ui/same-view.ts';

describe('two views', () => {
  it('are the same if they hold the same', () => {
    expect(sameView({ a: 1, b: { c: [1, 'x'] } }, { a: 1, b: { c: [1, 'x'] } })).toBe(true);
    expect(sameView(undefined, undefined)).toBe(true);
    expect(sameView(Number.NaN, Number.NaN)).toBe(true);
  });

  it.each([
    [{ a: 1 }, { a: 2 }],
    [{ a: 1 }, { b: 1 }],
    [{ a: undefined }, {}],
    [{ a: { b: 1 } }, { a: { b: 1, c: 2 } }],
    [{ a: null }, { a: {} }],
    [
      [1, 2],
      [2, 1],
    ],
  ])('differ: %j and %j', (a, b) => {
    expect(sameView(a, b)).toBe(false);
    expect(sameView(b, a)).toBe(false);
  });
});
