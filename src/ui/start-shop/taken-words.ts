// What a new shop takes for all that is not asked, in words.

import { usualCarryingRange } from '../../shop/carrying-range.ts';
import { USUAL_AIR } from '../../shop/started-shop.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * The defaults in a sentence or two.
 *
 * @param units - the reader's units
 * @returns the words
 */
export function takenWords(units: UnitSystem): string {
  const range = usualCarryingRange();
  const speed = (si: number) => formatQuantity('velocity', units, si);
  const altitude = formatQuantity('altitude', units, USUAL_AIR.altitude).text;
  const temperature = formatQuantity('temperature', units, USUAL_AIR.temperature).text;
  const humidity = formatQuantity('fraction', units, USUAL_AIR.humidity).text;
  return (
    `Air of ${temperature} and ${humidity} humidity, ${altitude} above the sea. Chips carried from ${speed(range.low).number} ` +
    `to ${speed(range.high).text} (common practice). A plain pipe end as hood, with a gate. No bends yet. ` +
    'No filter and no separator beyond what the points of the collector hold.'
  );
}
