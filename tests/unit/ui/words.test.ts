// Small words of the elements; the elements themselves are tested in a browser.
import { describe, expect, it } from 'vitest';
import { gateWords } from '../../../src/ui/gate/gate-words.ts';
import { textSize } from '../../../src/ui/operating-plot/text-size.ts';
import { verdictWord } from '../../../src/ui/verdict/verdict-word.ts';

describe('a gate in words', () => {
  it.each([
    [0, 'shut'],
    [0.001, '1 % open'],
    [0.25, 'a quarter open'],
    [0.5, 'half open'],
    [0.754, 'three quarters open'],
    [0.624, '62 % open'],
    [0.9999, '99 % open'],
    [1, 'fully open'],
  ])('at %d is %s', (travel, words) => {
    expect(gateWords(travel)).toBe(words);
  });
});

describe('a verdict in words', () => {
  it('is itself, but for short', () => {
    expect(verdictWord('short')).toBe('short of air');
    expect(verdictWord('tight')).toBe('tight');
  });
});

describe('the room a text takes', () => {
  it('grows with its length and its size', () => {
    expect(textSize('1,200', 20).width).toBe(2 * textSize('1,200', 10).width);
    expect(textSize('12', 10).width).toBeLessThan(textSize('123', 10).width);
  });
});
