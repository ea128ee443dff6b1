import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { surplusVersions } from '../../../../src/shop/store/versions-kept.ts';

const HOUR = 3_600_000;
const edits = (...times: readonly number[]) =>
  times.map((aside) => ({ aside, cause: 'edit' }) as const);
const kept = <T extends { aside: number; cause: 'edit' | 'migration' }>(all: readonly T[]) => {
  const surplus = surplusVersions(all);
  return all.filter((each) => !surplus.includes(each));
};

describe('surplusVersions', () => {
  it('keeps the last twenty, whatever there is', () => {
    const all = edits(...Array.from({ length: 20 }, (_, i) => i));
    expect(surplusVersions(all)).toEqual([]);
    fc.assert(
      fc.property(fc.array(fc.nat(1e12), { maxLength: 80 }), (times) => {
        const latest = times.toSorted((a, b) => b - a).slice(0, 20);
        const left = kept(edits(...times)).map(({ aside }) => aside);
        for (const time of latest) expect(left).toContain(time);
        expect(left.length).toBeLessThanOrEqual(30);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it('keeps the last one of yesterday through an evening of edits', () => {
    const yesterday = edits(8 * HOUR, 9 * HOUR);
    const evening = edits(...Array.from({ length: 60 }, (_, i) => 40 * HOUR + i));
    const left = kept([...yesterday, ...evening]);
    expect(left).not.toContain(yesterday[0]);
    expect(left).toContain(yesterday[1]);
  });

  it('keeps what an older version of the program had written', () => {
    const before = { aside: 5, cause: 'migration' } as const;
    const later = edits(...Array.from({ length: 40 }, (_, i) => 30 * HOUR + i));
    expect(kept([before, ...edits(6, 7), ...later])).toContain(before);
  });
});
