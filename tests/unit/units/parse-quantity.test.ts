import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldText, formatQuantity } from '../../../src/units/format.ts';
import { parseQuantity } from '../../../src/units/parse-quantity.ts';
import type { Quantity, UnitSystem } from '../../../src/units/quantity.ts';
import { fromDisplay, QUANTITY_NAMES } from '../../../src/units/quantity.ts';
import { lastDigit } from '../../../src/units/rounding.ts';

const systems = ['us', 'metric'] as const;
const spaces = /[\u2009\u202f]/g;

/** What was understood, with plain spaces; or a failure of the test. */
function understood(quantity: Quantity, system: UnitSystem, text: string) {
  const parsed = parseQuantity(quantity, system, text);
  if (parsed.kind !== 'understood') throw new Error(`${text}: ${JSON.stringify(parsed)}`);
  return { value: parsed.value, echo: parsed.echo.replace(spaces, ' ') };
}

function message(quantity: Quantity, system: UnitSystem, text: string): string {
  const parsed = parseQuantity(quantity, system, text);
  return parsed.kind === 'refused' ? parsed.message.replace(spaces, ' ') : JSON.stringify(parsed);
}

describe('parseQuantity, lengths', () => {
  it.each([
    [`12' 6"`, 3.81, `12' 6"`],
    [`12'-6 1/2"`, 3.8227, `12' 6 1/2"`],
    [`12'-6-1/2"`, 3.8227, `12' 6 1/2"`],
    [`12'6`, 3.81, `12' 6"`],
    ['12 ft 6 in', 3.81, `12' 6"`],
    ['12ft. and 6in.', 3.81, `12' 6"`],
    ['12 ft, 6 in', 3.81, `12' 6"`],
    [`12' .5"`, 3.6703, `12' 0 1/2"`],
    ['6 1/2 in', 0.1651, '6 1/2"'],
    ['12½', 3.81, `12' 6"`],
    [`4'-3"`, 1.2954, `4' 3"`],
    ['4’ 3½”', 1.3081, `4' 3 1/2"`],
    ['4′ 3″', 1.2954, `4' 3"`],
    ["6''", 0.1524, '6"'],
    ['2.4 m', 2.4, `2.4 m (7' 10 1/2")`],
    ['2 m 40 cm', 2.4, `2 m 40 cm (7' 10 1/2")`],
    ['150 mm', 0.15, '150 mm (5 7/8")'],
    ['12.5 ft', 3.81, `12' 6"`],
    ['3,8 m', 3.8, `3.8 m (12' 5 5/8")`],
    ['12\u00a0ft\u202f6\u2009in', 3.81, `12' 6"`],
    ['6 17/32 in', 0.16589375, '6.53125 in. (6 9/16")'],
    ['\u22123 ft', -0.9144, '\u22123\' 0"'],
    ['12', 3.6576, `12' 0"`],
  ])('%s is %d m', (text, value, echo) => {
    expect(understood('length', 'us', text)).toEqual({ value, echo });
  });

  it('takes a plain number in the unit of the system in use', () => {
    expect(understood('length', 'metric', '2,4')).toEqual({ value: 2.4, echo: '2.4 m' });
    expect(understood('diameter', 'us', '6')).toEqual({ value: 0.1524, echo: '6 in.' });
    expect(understood('diameter', 'metric', '150')).toEqual({ value: 0.15, echo: '150 mm' });
  });

  it.each(['2 m 40', '12 6', '12-6', `12.5' 6"`, `6" 12'`, `12' 6'`])(
    'does not guess at %s',
    (text) => {
      expect(message('length', 'us', text)).toContain(`In “${text}”, each number needs its unit`);
    },
  );
});

describe('parseQuantity, other quantities', () => {
  it.each<[Quantity, UnitSystem, string, number, string]>([
    ['flow', 'us', '1,200 cfm', 0.56633693184, '1,200 cfm'],
    ['flow', 'metric', '1200 m3/h', 1 / 3, '1 200 m³/h'],
    ['flow', 'metric', '1 200 m³/h', 1 / 3, '1 200 m³/h'],
    ['flow', 'us', '0.2 m³/s', 0.2, '0.2 m³/s (424 cfm)'],
    ['flow', 'metric', '1.200,5 m3/h', 1200.5 / 3600, '1 200.5 m³/h'],
    ['velocity', 'metric', '4,000 fpm', 20.32, '4 000 ft/min (20.3 m/s)'],
    ['pressure', 'us', '8 in. w.g.', 1992.71128, '8 in. w.g.'],
    ['pressure', 'us', '8" wg', 1992.71128, '8 in. w.g.'],
    ['pressure', 'us', '8"', 1992.71128, '8 in. w.g.'],
    ['pressure', 'metric', '2 kPa', 2000, '2 kPa (2 000 Pa)'],
    ['temperature', 'us', '20 °C', 20, '20 °C (68 °F)'],
    ['temperature', 'metric', '68 F', 20, '68 °F (20 °C)'],
    ['temperature', 'metric', '20°', 20, '20 °C'],
    ['temperature', 'us', '-40', -40, '−40 °F'],
    ['altitude', 'metric', '3,600 ft', 1097.28, '3 600 ft (1 097 m)'],
    ['power', 'metric', '3 hp', 2237.09961474681, '3 hp (2.24 kW)'],
    ['fraction', 'us', '45', 0.45, '45 %'],
    ['coefficient', 'us', '0,28', 0.28, '0.28'],
    ['roughness', 'metric', '9e-2 mm', 9e-5, '0.09 mm'],
    ['rotation', 'us', '3450 1/min', 3450, '3,450 rev/min'],
  ])('%s, %s: %s', (quantity, system, text, value, echo) => {
    const found = understood(quantity, system, text);
    // What is stored keeps 15 digits.
    expect(Math.abs(found.value - value)).toBeLessThanOrEqual(1e-14 * Math.abs(value));
    expect(found.echo).toBe(echo);
  });
});

describe('parseQuantity, an open comma', () => {
  const readings = (quantity: Quantity, system: UnitSystem, text: string) => {
    const parsed = parseQuantity(quantity, system, text);
    return parsed.kind === 'ambiguous'
      ? parsed.readings.map((reading) => reading.echo.replace(spaces, ' '))
      : parsed.kind;
  };

  it('asks, the custom of the unit system first', () => {
    expect(readings('flow', 'us', '1,200')).toEqual(['1,200 cfm', '1.2 cfm']);
    expect(readings('flow', 'metric', '1,200')).toEqual(['1.2 m³/h', '1 200 m³/h']);
    expect(readings('length', 'metric', '1,200 m')).toEqual(['1.2 m', '1 200 m']);
    expect(readings('diameter', 'us', '4,125 in')).toEqual(['4125 in.', '4.125 in.']);
  });

  it('gives each reading its value', () => {
    expect(parseQuantity('pressure', 'metric', '1,200 Pa')).toMatchObject({
      readings: [{ value: 1.2 }, { value: 1200 }],
    });
  });

  it.each(['1,20', '0,120', '1,200,000', '1,200.0', '1 200', '1.200'])(
    'does not ask at %s',
    (text) => {
      expect(parseQuantity('flow', 'us', text).kind).toBe('understood');
    },
  );
});

describe('parseQuantity, refusals', () => {
  it.each<[Quantity, UnitSystem, string, string]>([
    ['flow', 'us', '  ', 'Type a flow, such as 848 cfm or 1 440 m³/h.'],
    ['flow', 'us', 'lots', '“lots” does not begin with a number.'],
    ['flow', 'us', '20 °C', '“20 °C” is a temperature, not a flow.'],
    ['length', 'us', '12 furlongs', 'In “12 furlongs”, “furlongs” is not a unit known here.'],
    ['length', 'us', '10³ m', 'In “10³ m”, “^” is not a unit known here.'],
    ['length', 'us', '1/0 in', 'In “1/0 in”, “1/0” is not a number that can be read.'],
    ['pressure', 'metric', '8 ft', 'Type a pressure, such as 2 000 Pa or 8.03 in. w.g.'],
    ['pressure', 'metric', '1e307 kPa', 'too large'],
    ['flow', 'us', '1 constructor', '“constructor” is not a unit'],
  ])('%s, %s: %j', (quantity, system, text, part) => {
    expect(message(quantity, system, text)).toContain(part);
  });

  it('always says what would be right, and ends as a sentence', () => {
    for (const quantity of QUANTITY_NAMES) {
      for (const system of systems) {
        const said = message(quantity, system, '?');
        expect(said).toContain(' Type ');
        expect(said).toMatch(/[^.]\.$/);
      }
    }
  });

  it('quotes no more than the start of a long text', () => {
    const said = message('flow', 'us', '🪵'.repeat(5000));
    expect(said).toContain('too long');
    expect(said.length).toBeLessThan(200);
  });
});

describe('parseQuantity, properties', () => {
  const quantities = fc.constantFrom(...QUANTITY_NAMES);
  const eitherSystem = fc.constantFrom(...systems);
  const shown = fc.oneof(
    fc.double({ min: -100, max: 100, noNaN: true }),
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  );

  it('reads back what is shown, within half of the last digit', () => {
    fc.assert(
      fc.property(quantities, eitherSystem, shown, (quantity, system, number) => {
        const si = fromDisplay(quantity, system, number);
        const { text } = formatQuantity(quantity, system, si);
        const half = lastDigit(quantity, system) / 2;
        // The 1e-12 is floating-point rounding, of numbers up to a million times the last digit.
        const allowed = half * (1 + 1e-9) + 1e-12 * Math.abs(si);
        expect(Math.abs(understood(quantity, system, text).value - si)).toBeLessThanOrEqual(
          allowed,
        );
      }),
      { seed: 1, numRuns: 5000 },
    );
  });

  it('reads it in the other unit system just as well', () => {
    fc.assert(
      fc.property(
        quantities,
        eitherSystem,
        eitherSystem,
        shown,
        (quantity, system, other, number) => {
          const { text } = formatQuantity(quantity, system, fromDisplay(quantity, system, number));
          const here = parseQuantity(quantity, system, text);
          const there = parseQuantity(quantity, other, text);
          if (quantity !== 'coefficient') expect(there).toMatchObject({ kind: here.kind });
          if (here.kind === 'understood') expect(there).toMatchObject({ value: here.value });
        },
      ),
      { seed: 1, numRuns: 2000 },
    );
  });

  it('reads back what a field holds, without asking', () => {
    fc.assert(
      fc.property(quantities, eitherSystem, shown, (quantity, system, number) => {
        const si = fromDisplay(quantity, system, number);
        const field = understood(quantity, system, fieldText(quantity, system, si));
        const text = understood(quantity, system, formatQuantity(quantity, system, si).text);
        expect(field.value).toBe(text.value);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });

  it('is not shaken by any text, and is never left without a finite value or words', () => {
    const scraps = fc.constantFrom(
      ...`0 1 9 12 1,200 1.5 ½ / - − + ' " ’ ″ ft in in. mm m cm w.g. cfm °C F % e e9 . , ( ) Infinity NaN \u00a0 ⁄ ³ _ 🪵`.split(
        ' ',
      ),
      ' ',
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: 'grapheme', maxLength: 200 }),
      fc.array(scraps, { maxLength: 12 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(quantities, eitherSystem, texts, (quantity, system, text) => {
        const parsed = parseQuantity(quantity, system, text);
        const read =
          parsed.kind === 'ambiguous'
            ? parsed.readings
            : parsed.kind === 'understood'
              ? [parsed]
              : [];
        expect(parsed.kind === 'refused' ? parsed.message : '-').not.toBe('');
        for (const { value, echo } of read) {
          expect(Number.isFinite(value)).toBe(true);
          expect(echo).not.toMatch(/NaN|Infinity|undefined/);
        }
        expect(parsed.kind === 'ambiguous' ? read.length : 2).toBeGreaterThan(1);
      }),
      { seed: 1, numRuns: 5000 },
    );
  });
});
