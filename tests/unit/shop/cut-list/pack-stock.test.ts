import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packStock, stockCount } from '../../../../src/shop/cut-list/pack-stock.ts';

const pieces = (...lengths: number[]) =>
  lengths.map((length, i) => ({ section: `piece-${i + 1}`, length }));
const lengthsOf = (uses: ReturnType<typeof packStock>) =>
  uses.map(({ cuts }) => cuts.map(({ length }) => length));
const lengths = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { maxLength: 40 });
const stocks = fc.double({ min: 0.3, max: 12, noNaN: true });

describe('cutting pieces from stock', () => {
  it('takes the longest first, each from the first length that still holds it', () => {
    const uses = packStock(pieces(1, 2, 0.5, 2.5, 1.5), 3);
    expect(lengthsOf(uses)).toEqual([[2.5, 0.5], [2, 1], [1.5]]);
    expect(uses.map(({ left }) => left)).toEqual([0, 0, 1.5]);
  });

  it('cuts a piece that is longer than the stock from whole lengths and a rest', () => {
    const uses = packStock(pieces(7), 3);
    expect(uses).toEqual([
      { cuts: [{ section: 'piece-1', length: 3 }], left: 0, times: 2 },
      { cuts: [{ section: 'piece-1', length: 1 }], left: 2, times: 1 },
    ]);
    expect(stockCount(uses)).toBe(3);
  });

  it('needs one length for ten tenths of it, though ten tenths add up to a little more', () => {
    expect(stockCount(packStock(pieces(...Array.from({ length: 30 }, () => 0.1)), 3))).toBe(1);
    expect(stockCount(packStock(pieces(0.1 + 0.2), 0.3))).toBe(1);
  });

  it('needs nothing for no piece and for one without length', () => {
    expect(packStock([], 3)).toEqual([]);
    expect(packStock(pieces(0), 3)).toEqual([]);
  });

  it('refuses stock without length', () => {
    expect(() => packStock(pieces(1), 0)).toThrow(RangeError);
  });

  it('cuts all that is wanted, nothing else, and no more from a length than it has', () => {
    fc.assert(
      fc.property(lengths, stocks, (wanted, stock) => {
        const uses = packStock(pieces(...wanted), stock);
        const cut = new Map<string, number>();
        for (const { cuts, left, times } of uses) {
          const used = cuts.reduce((sum, { length }) => sum + length, 0);
          expect(used).toBeLessThanOrEqual(stock + 1e-5);
          expect(Math.abs(used + left - stock)).toBeLessThan(1e-5);
          for (const { section, length } of cuts) {
            cut.set(section, (cut.get(section) ?? 0) + times * length);
          }
        }
        wanted.forEach((length, i) => {
          expect(Math.abs((cut.get(`piece-${i + 1}`) ?? 0) - length)).toBeLessThan(1e-5);
        });
      }),
    );
  });

  it('needs at least the total over the stock, and no two lengths that one could hold', () => {
    fc.assert(
      fc.property(lengths, stocks, (wanted, stock) => {
        const uses = packStock(pieces(...wanted), stock);
        const total = wanted.reduce((sum, length) => sum + length, 0);
        expect(stockCount(uses) * stock).toBeGreaterThan(total - 1e-4);
        const halfEmpty = uses.filter(({ left }) => left > stock / 2 + 1e-5);
        expect(halfEmpty.length).toBeLessThanOrEqual(1);
      }),
    );
  });
});
