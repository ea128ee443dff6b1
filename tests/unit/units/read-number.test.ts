import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../src/units/read-number.ts';

describe('readNumber', () => {
  it.each<[string, number[]]>([
    ['12', [12]],
    ['12.5', [12.5]],
    ['.5', [0.5]],
    ['5.', [5]],
    ['3,8', [3.8]],
    [',5', [0.5]],
    ['0,150', [0.15]],
    ['1234,567', [1234.567]],
    ['1,200', [1200, 1.2]],
    ['12,345', [12345, 12.345]],
    ['1.200', [1.2]],
    ['1,200,000', [1200000]],
    ['1.200.000', [1200000]],
    ['1,200.5', [1200.5]],
    ['1.200,5', [1200.5]],
    ['1 200', [1200]],
    ['1 200,5', [1200.5]],
    ['1 200,500', [1200.5]],
    ['6 1/2', [6.5]],
    ['6-1/2', [6.5]],
    ['1/2', [0.5]],
    ['3 / 8', [0.375]],
    ['1.2e-4', [1.2e-4]],
  ])('%s has the values %j', (text, values) => {
    expect(readNumber(text, 0)).toEqual({ values, end: text.length });
  });

  it.each(['1.2.3', '1,2,3', '1,20,000', '0,200,000', '1.200,5,5', '1/0', '6,', '1e999'])(
    '%s is malformed as a whole',
    (text) => {
      expect(readNumber(text, 0)).toEqual({ values: [], end: text.length });
    },
  );

  it('begins where it is told and leaves the rest', () => {
    expect(readNumber(`12' 6 1/2"`, 4)).toEqual({ values: [6.5], end: 9 });
    expect(readNumber('12 3456', 0)).toEqual({ values: [12], end: 2 });
  });

  it.each(['', 'abc', '.', '-5', ' 5', '/2'])('finds none in %j', (text) => {
    expect(readNumber(text, 0)).toBeUndefined();
  });
});
