import { describe, expect, it } from 'vitest';
import { lastDigit, roundedDigits } from '../../../src/units/rounding.ts';

describe('rounding', () => {
  it('knows what the last digit is worth', () => {
    expect(lastDigit('flow', 'us')).toBeCloseTo(4.719474432e-4, 15);
    expect(lastDigit('velocity', 'us')).toBeCloseTo(0.0508, 15); // 10 ft/min
    expect(lastDigit('length', 'us')).toBeCloseTo(0.0015875, 15); // a sixteenth
    expect(lastDigit('length', 'metric')).toBe(0.001);
    expect(lastDigit('pressure', 'us')).toBeCloseTo(2.4908891, 12);
    expect(lastDigit('temperature', 'us')).toBeCloseTo(0.1 / 1.8, 15);
  });

  it('drops zeros only as far as the quantity allows', () => {
    expect(roundedDigits('length', 'metric', 2)).toBe('2.00');
    expect(roundedDigits('length', 'metric', 2.125)).toBe('2.125');
    expect(roundedDigits('diameter', 'metric', 0.1)).toBe('100');
    expect(roundedDigits('flow', 'metric', 1000 / 3600)).toBe('1000');
  });

  it('never shows a minus before nought', () => {
    expect(roundedDigits('pressure', 'us', -0.1)).toBe('0.00');
    expect(roundedDigits('velocity', 'us', -0.01)).toBe('0');
  });
});
