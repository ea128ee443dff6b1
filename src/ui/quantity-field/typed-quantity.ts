// What comes of a text that was typed into a quantity field.

import { fieldText, formatQuantity } from '../../units/format.ts';
import { parseQuantity, type Reading } from '../../units/parse-quantity.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { fromSi, type UnitName, UNITS } from '../../units/unit.ts';

/** What a field knows of the amount that it asks for. */
export interface Asked {
  readonly quantity: Quantity;
  readonly units: UnitSystem;
  /** The unit that it is written in, where it is not the one that the system shows. */
  readonly unit?: UnitName | undefined;
  /** The amount it holds, in SI; undefined where it is empty. */
  readonly value: number | undefined;
  /** Whether it may be empty. */
  readonly optional: boolean;
  /** Least and greatest amount in SI, both allowed; undefined for no bound. */
  readonly low: number | undefined;
  readonly high: number | undefined;
}

/** What comes of it. */
export type Typed =
  | { readonly kind: 'same' }
  | { readonly kind: 'other'; readonly value: number | undefined; readonly echo: string }
  | { readonly kind: 'question'; readonly readings: readonly Reading[] }
  | { readonly kind: 'refused'; readonly message: string };

/**
 * The text that a field shows for the amount it holds.
 *
 * @param asked - quantity, units and amount
 * @returns the text to edit, empty without an amount
 */
export function textOf({ quantity, units, unit, value }: Asked): string {
  if (value === undefined) return '';
  return unit
    ? String(Number(fromSi(UNITS[unit], value).toPrecision(6)))
    : fieldText(quantity, units, value);
}

/**
 * Takes a text for the amount of a field. A text that shows the present amount changes nothing, so
 * that no digit is lost by leaving a field.
 *
 * @param asked - what the field asks for
 * @param text - what was typed
 * @returns the same, another amount, a question, or a refusal in words
 */
export function typedQuantity(asked: Asked, text: string): Typed {
  if (text.trim() === textOf(asked)) return { kind: 'same' };
  if (text.trim() === '' && asked.optional) return { kind: 'other', value: undefined, echo: '' };
  const parsed = parseQuantity(asked.quantity, asked.units, withUnit(asked, text));
  switch (parsed.kind) {
    case 'refused':
      return parsed;
    case 'ambiguous': {
      const fitting = parsed.readings.filter(
        ({ value }) => outOfBounds(asked, value) === undefined,
      );
      if (fitting.length > 1) return { kind: 'question', readings: fitting };
      return takeReading(asked, fitting[0] ?? parsed.readings[0]!);
    }
    case 'understood':
      return takeReading(asked, parsed);
    default:
      return parsed satisfies never;
  }
}

/**
 * Takes one meaning of what was typed.
 *
 * @param asked - what the field asks for
 * @param reading - the meaning
 * @returns the same, another amount, or a refusal in words
 */
export function takeReading(asked: Asked, { value, echo }: Reading): Typed {
  const message = outOfBounds(asked, value);
  if (message !== undefined) return { kind: 'refused', message };
  if (value === asked.value) return { kind: 'same' };
  // Only what was typed in another unit is said back; it then has the shown one in brackets.
  return { kind: 'other', value, echo: echo.endsWith(')') ? echo : '' };
}

/** A plain number with the unit of the field behind it; a text that names a unit stays as it is. */
function withUnit({ unit }: Asked, text: string): string {
  const namesUnit = /[\p{L}°%"]/u.test(text.replaceAll(/\de[+-]?\d/gi, ''));
  return unit && !namesUnit ? `${text.trim()} ${UNITS[unit].label}` : text;
}

function outOfBounds({ quantity, units, low, high }: Asked, value: number): string | undefined {
  const show = (si: number) => formatQuantity(quantity, units, si).text;
  const shown = show(value);
  if (low !== undefined && value < low)
    return `${shown} is too little; ${show(low)} or more will do.`;
  if (high !== undefined && value > high) {
    return `${shown} is too much; ${show(high)} or less will do.`;
  }
  return undefined;
}
