import { describe, expect, it } from 'vitest';
import { sameData } from '../../../src/state/same-data.ts';

describe('two pieces of data', () => {
  it('are the same if they hold the same', () => {
    expect(sameData({ a: 1, b: { c: [1, 'x'] } }, { a: 1, b: { c: [1, 'x'] } })).toBe(true);
    expect(sameData(undefined, undefined)).toBe(true);
    expect(sameData(Number.NaN, Number.NaN)).toBe(true);
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
    expect(sameData(a, b)).toBe(false);
    expect(sameData(b, a)).toBe(false);
  });

  const except = new Set(['note']);

  it.each([
    [{ a: 1, note: 'x' }, { a: 1 }, true],
    [{ a: { note: 'x', b: 2 } }, { a: { note: 'y', b: 2 } }, true],
    [{ a: 1, note: 'x' }, { note: 'x' }, false],
    [{ a: 1, note: 'x' }, { a: 2, note: 'x' }, false],
    [[{ note: 'x' }, { a: 1 }], [{ a: 1 }], false],
  ])('apart from some keys: %j and %j', (a, b, isSame) => {
    expect(sameData(a, b, except)).toBe(isSame);
    expect(sameData(b, a, except)).toBe(isSame);
  });
});
