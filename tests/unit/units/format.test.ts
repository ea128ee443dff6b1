import { describe, expect, it } from 'vitest';
import { fieldText, formatQuantity } from '../../../src/units/format.ts';
import type { Quantity, UnitSystem } from '../../../src/units/quantity.ts';

const thin = '\u2009';
const narrow = '\u202f';
const minus = '\u2212';

describe('formatQuantity', () => {
  it.each<[Quantity, UnitSystem, number, string]>([
    ['flow', 'us', 0.35, `742${thin}cfm`],
    ['flow', 'us', 0.566337, `1,200${thin}cfm`],
    ['flow', 'metric', 0.35, `1${narrow}260${thin}m³/h`],
    ['velocity', 'us', 20.56, `4,050${thin}ft/min`],
    ['velocity', 'metric', 20.56, `20.6${thin}m/s`],
    ['pressure', 'us', 1715.665, `6.89${thin}in. w.g.`],
    ['pressure', 'metric', 1715.665, `1${narrow}716${thin}Pa`],
    ['pressure', 'metric', -249.6, `${minus}250${thin}Pa`],
    ['length', 'us', 3.8227, `12' 6 1/2"`],
    ['length', 'metric', 2.4, `2.40${thin}m`],
    ['length', 'metric', 0.153, `0.153${thin}m`],
    ['diameter', 'us', 0.1524, `6${thin}in.`],
    ['diameter', 'us', 0.15405, `6.06${thin}in.`],
    ['diameter', 'metric', 0.1541, `154.1${thin}mm`],
    ['diameter', 'metric', 0.15, `150${thin}mm`],
    ['temperature', 'us', 18, `64.4${thin}°F`],
    ['temperature', 'metric', -0.01, `0${thin}°C`],
    ['altitude', 'us', 1100, `3,609${thin}ft`],
    ['power', 'us', 2237.1, `3${thin}hp`],
    ['density', 'us', 1.201385, `0.0750${thin}lb/ft³`],
    ['roughness', 'metric', 1.5e-6, `0.0015${thin}mm`],
    ['coefficient', 'us', 0.28, '0.28'],
    ['fraction', 'metric', 0.45, `45${thin}%`],
  ])('%s, %s, %d: %s', (quantity, system, si, text) => {
    expect(formatQuantity(quantity, system, si).text).toBe(text);
  });

  it('gives the unit apart, and none for feet and inches, whose marks are in the number', () => {
    expect(formatQuantity('flow', 'us', 0.35)).toMatchObject({ number: '742', unit: 'cfm' });
    expect(formatQuantity('length', 'us', 0.1524)).toMatchObject({ number: '6"', unit: '' });
  });

  it('puts no comma where it could be a decimal one', () => {
    expect(formatQuantity('diameter', 'us', 104.775).number).toBe('4125');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d and names it', (value) => {
    expect(() => formatQuantity('flow', 'us', value)).toThrow(`flow ${value}`);
    expect(() => fieldText('length', 'us', value)).toThrow(RangeError);
  });
});

describe('fieldText', () => {
  it('rounds alike but leaves out thousands marks and the true minus', () => {
    expect(fieldText('velocity', 'us', 20.56)).toBe('4050');
    expect(fieldText('flow', 'metric', 0.35)).toBe('1260');
    expect(fieldText('temperature', 'metric', -5)).toBe('-5');
    expect(fieldText('length', 'us', -0.1651)).toBe('-6 1/2"');
  });
});
