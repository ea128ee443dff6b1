import { describe, it } from 'vitest';
import { inHalves } from '../../src/ui/in-halves.ts';
import { expect } from './harness.ts';

const rows = (reading: number, ids = ['saw', 'planer', 'lathe']) =>
  ids.map((id) => ({ id, reading }));

describe('rows that take two turns', () => {
  it('alternate between the two readings', () => {
    expect(inHalves(rows(1), rows(2)).map(({ reading }) => reading)).toEqual([1, 2, 1]);
  });

  it('are of one reading where the other is not there yet', () => {
    expect(inHalves(rows(1), undefined)).toEqual(rows(1));
  });

  it('never stand for another thing than the first reading says', () => {
    const later = rows(2, ['saw', 'lathe']);
    expect(inHalves(rows(1), later)).toEqual(rows(1));
  });
});
