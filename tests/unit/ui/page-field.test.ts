import { describe, expect, it } from 'vitest';
import { readPage } from '../../../src/ui/chart-trace/page-field.ts';

describe('the number of a page', () => {
  it.each([
    ['1', 1],
    [' 12 ', 12],
  ])('reads %o', (words, page) => {
    expect(readPage(words, 12)).toBe(page);
  });

  it.each(['0', '13', '2.5', '-1', 'two', ''])('asks for another one instead of %o', (words) => {
    expect(readPage(words, 12)).toBe(`There is no page “${words}”: type a number from 1 to 12.`);
  });
});
