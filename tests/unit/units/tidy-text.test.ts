import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tidyText } from '../../../src/units/tidy-text.ts';

describe('tidyText', () => {
  it.each([
    ['12½', '12 1/2'],
    ['½ in', '1/2 in'],
    ['12⁶⁄₁₆', '12 6/16'],
    ['4’-3”', `4'-3"`],
    ['4′ 3″', `4' 3"`],
    ["4'3''", `4'3"`],
    ['−5', '-5'],
    ['12\u00a0ft\u202f6\u2009in', '12 ft 6 in'],
    ['  3,8\tm\n', '3,8 m'],
    ['１２\u3000ｍｍ', '12 mm'],
    ['m³/h', 'm^3/h'],
    ['20 ºC', '20 °C'],
    ['20\u200b mm\u200e', '20 mm'],
  ])('%j becomes %j', (text, tidied) => {
    expect(tidyText(text)).toBe(tidied);
  });

  it('leaves nothing more to tidy', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const once = tidyText(text);
        expect(tidyText(once)).toBe(once);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
