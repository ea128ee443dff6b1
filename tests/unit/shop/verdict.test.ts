import { describe, expect, it } from 'vitest';
import { verdictOn } from '../../../src/shop/verdict.ts';

const range = { low: 18, high: 23 };
const fine = { open: true, flow: 0.2, need: 0.2, velocity: 20, slowest: 18 };

describe('verdictOn', () => {
  it('finds nothing wrong at the very ends of the range', () => {
    expect(verdictOn(fine, range)).toBe('carries');
    expect(verdictOn({ ...fine, velocity: 23 }, range)).toBe('carries');
    expect(verdictOn({ ...fine, need: undefined, flow: 0.001 }, range)).toBe('carries');
  });

  it('names what hurts most', () => {
    const all = { ...fine, flow: 0.1, velocity: 30, slowest: 10 };
    expect(verdictOn({ ...all, open: false }, range)).toBe('shut');
    expect(verdictOn(all, range)).toBe('settles');
    expect(verdictOn({ ...all, slowest: 18 }, range)).toBe('short');
    expect(verdictOn({ ...all, slowest: 18, flow: 0.2 }, range)).toBe('tight');
  });

  it('takes air that flows the wrong way as settling', () => {
    expect(verdictOn({ ...fine, slowest: -20, velocity: -20 }, range)).toBe('settles');
  });
});
