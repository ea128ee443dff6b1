import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi, UNITS } from '../../../src/units/unit.ts';
import type { UnitName } from '../../../src/units/unit.ts';

const names = Object.keys(UNITS) as UnitName[];

describe('the table of units', () => {
  // NIST Special Publication 811 (2008), appendix B.8, to the digits printed there.
  it.each<[UnitName, number, number]>([
    ['cfm', 1, 4.719474e-4],
    ['footPerMinute', 1, 5.08e-3],
    ['milePerHour', 1, 4.4704e-1],
    ['kilometrePerHour', 1, 2.777778e-1],
    ['inchOfWater', 1, 2.490889e2],
    ['millimetreOfWater', 1, 9.80665],
    ['foot', 1, 3.048e-1],
    ['inch', 1, 2.54e-2],
    ['squareFoot', 1, 9.290304e-2],
    ['horsepower', 1, 7.456999e2],
    ['poundPerCubicFoot', 1, 1.601846e1],
    ['fahrenheit', 77, 25],
    ['kelvin', 300, 26.85],
  ])('%s: %d is %d in SI', (name, shown, si) => {
    // Seven digits are printed.
    expect(Math.abs(toSi(UNITS[name], shown) / si - 1)).toBeLessThan(5e-7);
  });

  it('keeps the constants that fan practice fixes to more digits', () => {
    expect(toSi(UNITS.inchOfWater, 1)).toBe(249.08891);
    expect(toSi(UNITS.cfm, 1)).toBeCloseTo(4.719474432e-4, 15);
    expect(toSi(UNITS.footPerMinute, 1)).toBeCloseTo(0.00508, 15);
  });

  it.each(names)('%s goes there and back to rounding', (name) => {
    const unit = UNITS[name];
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (shown) => {
        // One rounding each for product, sum, quotient and difference, of the larger term.
        // Numbers under 1e-300 may become subnormal in SI, with fewer digits.
        const allowed = 4 * Number.EPSILON * (Math.abs(shown) + Math.abs(unit.offset)) + 1e-300;
        expect(Math.abs(fromSi(unit, toSi(unit, shown)) - shown)).toBeLessThanOrEqual(allowed);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('has no two units with one label in a dimension', () => {
    const labels = names.map((name) => `${UNITS[name].dimension} ${UNITS[name].label}`);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
