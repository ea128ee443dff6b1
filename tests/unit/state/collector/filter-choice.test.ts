import { describe, expect, it } from 'vitest';
import {
  blindingOf,
  cleanResistance,
  TEST_VISCOSITY,
} from '../../../../src/curve/filter-resistance.ts';
import {
  FILTER_KINDS,
  type Filter,
  filterAs,
  filterBlinded,
} from '../../../../src/state/collector/filter-choice.ts';

const filters: readonly Filter[] = [
  { kind: 'resistance', resistance: 350, blinding: 2 },
  { kind: 'resistance', resistance: 350, viscosity: 1.7e-5 },
  { kind: 'media', area: 26, testPressure: 124.5, testVelocity: 0.06, blinding: 1.5 },
  { kind: 'measured', flow: 0.4, pressure: 180 },
];
const kinds = FILTER_KINDS.map(({ value }) => value).filter((kind) => kind !== 'none');

describe('a filter stated in another way', () => {
  it.each(filters)('resists as before: $kind', (filter) => {
    for (const kind of kinds) {
      const other = filterAs(filter, kind);
      expect(other.kind).toBe(kind);
      expect(blindingOf(other)).toBe(blindingOf(filter));
      // Rounding only: a few products and quotients.
      expect(cleanResistance(other, TEST_VISCOSITY)).toBeCloseTo(
        cleanResistance(filter, TEST_VISCOSITY),
        9,
      );
    }
  });

  it('begins with some felt where none was, and goes to none', () => {
    for (const kind of kinds) {
      expect(cleanResistance(filterAs({ kind: 'none' }, kind), TEST_VISCOSITY)).toBeGreaterThan(10);
    }
    expect(filterAs(filters[0]!, 'none')).toEqual({ kind: 'none' });
  });
});

describe('a filter that blinds', () => {
  it('is written with its state, and without it when it is clean', () => {
    expect(filterBlinded(filters[3]!, 3)).toEqual({ ...filters[3], blinding: 3 });
    expect(filterBlinded(filters[0]!, 1)).toEqual({ kind: 'resistance', resistance: 350 });
    expect(filterBlinded(filters[0]!, 2)).toBe(filters[0]);
    expect(filterBlinded({ kind: 'none' }, 2)).toEqual({ kind: 'none' });
  });
});
