import { describe, it } from 'vitest';
import { inTurns } from '../../src/ui/in-turns.ts';
import { expect } from './harness.ts';

const rows = (reading: number, ids = ['saw', 'planer', 'lathe', 'router']) =>
  ids.map((id) => ({ id, reading }));

describe('rows that take turns', () => {
  it('are of each reading in turn', () => {
    const readings = (...all: ReturnType<typeof rows>[]) =>
      inTurns(rows(1), ...all).map(({ reading }) => reading);
    expect(readings(rows(2))).toEqual([1, 2, 1, 2]);
    expect(readings(rows(2), rows(3))).toEqual([1, 2, 3, 1]);
  });

  it('are of the first reading where another is not there yet', () => {
    expect(inTurns(rows(1), undefined, undefined)).toEqual(rows(1));
  });

  it('never stand for another thing than the first reading says', () => {
    const later = rows(2, ['saw', 'lathe']);
    expect(inTurns(rows(1), later)).toEqual(rows(1));
  });
});
