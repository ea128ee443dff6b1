import { describe, expect, it } from 'vitest';
import { textOf, typedQuantity } from '../../../src/ui/quantity-field/typed-quantity.ts';

const asked = {
  quantity: 'flow',
  units: 'us',
  unit: 'litrePerSecond',
  value: undefined,
  optional: true,
  low: undefined,
  high: undefined,
} as const;

describe('a field with a unit of its own', () => {
  it('takes plain numbers in that unit, and says them back in the page’s', () => {
    const typed = typedQuantity(asked, '500');
    expect(typed).toMatchObject({ kind: 'other', value: 0.5 });
    expect(typed.kind === 'other' && typed.echo).toMatch(/^500\u2009L\/s \(1,059\u2009cfm\)$/);
    expect(typedQuantity(asked, ' 2e3 ')).toMatchObject({ value: 2 });
  });

  it('takes a unit that was typed with the number before its own', () => {
    expect(typedQuantity(asked, '0.5 m³/s')).toMatchObject({ value: 0.5 });
    expect(typedQuantity({ ...asked, unit: 'cubicMetrePerSecond' }, '500 L/s')).toMatchObject({
      value: 0.5,
    });
  });

  it('shows its amount in that unit, and takes the same text for the same', () => {
    const held = { ...asked, value: 0.1234567 };
    expect(textOf(held)).toBe('123.457');
    expect(typedQuantity(held, '123.457')).toEqual({ kind: 'same' });
  });

  it.each([
    ['millimetreOfWater', '200', 200 * (249.08891 / 25.4)],
    ['inchOfWater', '1 1/2', 1.5 * 249.08891],
    ['hectopascal', '12,5', 1250],
    ['kilopascal', '.8', 800],
  ] as const)('reads %s: %s', (unit, text, pascal) => {
    const typed = typedQuantity({ ...asked, quantity: 'pressure', unit }, text);
    expect(typed.kind === 'other' && typed.value).toBeCloseTo(pascal, 9);
  });

  it('refuses what is no number by what was typed', () => {
    expect(typedQuantity(asked, 'five')).toMatchObject({ kind: 'refused' });
  });
});
