import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coefficientOfEntry,
  findHood,
  HOODS,
  hoodOfEntryCoefficient,
  hoodStaticPressure,
  measuredHood,
} from '../../../src/duct/hood.ts';

describe('hoods of the table', () => {
  it('are found by id and say where they are from', () => {
    expect(new Set(HOODS.map(({ id }) => id)).size).toBe(HOODS.length);
    expect(findHood('bell-mouth')?.source.citation).toContain('ACGIH');
    expect(findHood('cabinet')?.source.status).toBe('from memory, unverified');
    expect(findHood('floor-sweep')?.source.status).toBe('common practice, no source');
    expect(findHood('chimney')).toBeUndefined();
  });
});

describe('measured hood', () => {
  it('gives back the suction that it was measured from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (velocity, entryLoss) => {
          const pressure = 0.6 * velocity ** 2;
          const suction = hoodStaticPressure(entryLoss, pressure) + 1e-9;
          const hood = measuredHood(suction, velocity, 1.2);
          const found = hood.kind === 'found' ? hood.coefficient.fixed : Number.NaN;
          expect(found).toBeCloseTo(entryLoss, 8);
        },
      ),
    );
  });

  it('says so when the suction is less than the air’s own velocity pressure', () => {
    expect(measuredHood(200, 20, 1.2)).toEqual({
      kind: 'below velocity pressure',
      velocityPressure: 240,
    });
  });

  it('refuses readings that are none', () => {
    expect(() => measuredHood(-1, 20, 1.2)).toThrow('not -1');
    expect(() => measuredHood(1, 0, 1.2)).toThrow('not 0');
    expect(() => measuredHood(1, 20, Number.NaN)).toThrow('not NaN');
  });
});

describe('coefficient of entry', () => {
  it('is 0.72 for a plain end and 0.98 for a bell mouth (ACGIH, Industrial Ventilation)', () => {
    expect(coefficientOfEntry(0.93)).toBeCloseTo(0.72, 2);
    expect(coefficientOfEntry(0.49)).toBeCloseTo(0.82, 2);
    expect(coefficientOfEntry(0.04)).toBeCloseTo(0.98, 2);
  });

  it('goes back to the entry loss', () => {
    expect(hoodOfEntryCoefficient(coefficientOfEntry(0.65)).fixed).toBeCloseTo(0.65, 12);
    expect(hoodOfEntryCoefficient(1).fixed).toBe(0);
  });

  it('refuses what can not be', () => {
    expect(() => coefficientOfEntry(-1)).toThrow('not -1');
    expect(() => hoodOfEntryCoefficient(0)).toThrow('not 0');
    expect(() => hoodOfEntryCoefficient(1.01)).toThrow('not 1.01');
  });
});
