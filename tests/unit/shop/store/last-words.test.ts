import { describe, expect, it } from 'vitest';
import { isLater } from '../../../../src/shop/store/last-words.ts';

const record = (revision: number, written: number) => ({ id: 'a', document: 0, revision, written });

describe('isLater', () => {
  it('takes what was made from what is kept', () => {
    expect(isLater(record(4, 10), record(4, 5))).toBe(true);
    expect(isLater(record(0, 10), undefined)).toBe(true);
  });

  it('takes what was made while its forerunner was being written', () => {
    expect(isLater(record(4, 10), record(5, 9))).toBe(true);
    expect(isLater(record(4, 8), record(5, 9))).toBe(false);
  });

  it('leaves what another tab has gone on from', () => {
    expect(isLater(record(4, 10), record(6, 9))).toBe(false);
  });
});
