import { describe, expect, it } from 'vitest';
import { tidyText } from '../../../src/units/tidy-text.ts';
import { unitOfSpelling } from '../../../src/units/unit-spellings.ts';
import { UNITS } from '../../../src/units/unit.ts';

describe('unitOfSpelling', () => {
  it('knows every unit by its own label', () => {
    for (const unit of Object.values(UNITS)) {
      if (unit.label !== '') {
        expect(unitOfSpelling(tidyText(unit.label), unit.dimension), unit.label).toBe(unit);
      }
    }
  });

  it.each([
    ['CFM', 'flow', UNITS.cfm],
    ['m3 / h', 'flow', UNITS.cubicMetrePerHour],
    ['fpm', 'velocity', UNITS.footPerMinute],
    ['ft per min.', 'velocity', UNITS.footPerMinute],
    ['"wc', 'pressure', UNITS.inchOfWater],
    ['inches of water', 'pressure', UNITS.inchOfWater],
    ['mbar', 'pressure', UNITS.hectopascal],
    ['DEG C', 'temperature', UNITS.celsius],
  ] as const)('reads %s as a %s', (spelling, dimension, unit) => {
    expect(unitOfSpelling(spelling, dimension)).toBe(unit);
  });

  it('lets the quantity decide what an inch mark means', () => {
    expect(unitOfSpelling('"', 'length')).toBe(UNITS.inch);
    expect(unitOfSpelling('"', 'pressure')).toBe(UNITS.inchOfWater);
  });

  it('says what a unit of another kind is', () => {
    expect(unitOfSpelling('°C', 'flow')).toBe(UNITS.celsius);
  });

  it.each(['furlongs', 'constructor', '__proto__', '.', '°'])('does not know %s', (spelling) => {
    expect(unitOfSpelling(spelling, 'length')).toBeUndefined();
  });
});
