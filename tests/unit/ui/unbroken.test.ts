import { describe, expect, it } from 'vitest';
import { unbroken } from '../../../src/ui/unbroken.ts';

describe('words in which no quantity is broken', () => {
  it.each([
    ['490\u2009cfm at 5.66\u2009in. w.g.', '490\u202fcfm at 5.66\u202fin.\u00a0w.g.'],
    ['air at 10\' 0" further', 'air at 10\'\u00a00" further'],
    ['the lathes’ hose, 7 in. long', 'the lathes’ hose, 7 in. long'],
  ])('%s', (words, kept) => {
    expect(unbroken(words)).toBe(kept);
  });
});
