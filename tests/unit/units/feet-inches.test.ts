import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feetAndInches } from '../../../src/units/feet-inches.ts';

const inch = 0.0254;

describe('feetAndInches', () => {
  it.each([
    [0, '0"'],
    [inch / 16, '1/16"'],
    [inch / 33, '0"'],
    [6 * inch, '6"'],
    [6.5 * inch, '6 1/2"'],
    [12 * inch, `1' 0"`],
    [12.5 * inch, `1' 0 1/2"`],
    [11.99 * inch, `1' 0"`],
    [150.625 * inch, `12' 6 5/8"`],
    [-6.5 * inch, '\u22126 1/2"'],
    [-inch / 40, '0"'],
  ])('%d m is %s', (length, text) => {
    expect(feetAndInches(length)).toBe(text);
  });

  it('never shows 12 inches, nor a fraction that could be reduced', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (length) => {
        const text = feetAndInches(length);
        expect(text).not.toMatch(/(^|' )1[2-9]( \d|")/);
        expect(text).not.toMatch(/\d*[02468]\/\d+/);
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});
