import { describe, expect, it } from 'vitest';
import { didYouMean, nearestWords } from '../../../../src/shop/opening/nearest.ts';

const known = ['planer', 'jointer', 'band-saw', 'band-saw-lower', 'sander'];

describe('nearestWords', () => {
  it('finds what was meant through a slip of typing', () => {
    expect(nearestWords('plaenr', known)).toEqual(['planer']);
    expect(nearestWords('Jointer', known)[0]).toBe('jointer');
    expect(nearestWords('bandsaw', known)[0]).toBe('band-saw');
  });

  it('finds nothing for a word unlike any', () => {
    expect(nearestWords('lathe', ['router-table', 'main'])).toEqual([]);
    expect(didYouMean('lathe', ['router-table', 'main'])).toBe('');
  });

  it('gives the nearest first and no more than asked', () => {
    expect(nearestWords('sandr', ['sender', 'sander', 'sand', 'sanders'], 2)).toEqual([
      'sander',
      'sand',
    ]);
    expect(didYouMean('sandr', ['sander'])).toBe('; did you mean "sander"?');
  });
});
