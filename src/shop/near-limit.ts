// A number that missed a limit by less than its last digit would read as if it had not.

import { formatQuantity } from '../units/format.ts';
import type { Quantity, UnitSystem } from '../units/quantity.ts';

/**
 * A number with its unit; 'just under' or 'just over' the limit where rounding makes the two alike.
 *
 * @param quantity - the kind of quantity
 * @param system - the units to speak in
 * @param si - the amount [SI]
 * @param limit - the limit that it missed [SI]
 * @returns such as '3,480 ft/min' or 'just under 3,500 ft/min'
 */
export function besideLimit(
  quantity: Quantity,
  system: UnitSystem,
  si: number,
  limit: number,
): string {
  const { text } = formatQuantity(quantity, system, si);
  if (text !== formatQuantity(quantity, system, limit).text) return text;
  return si < limit ? `just under ${text}` : `just over ${text}`;
}
