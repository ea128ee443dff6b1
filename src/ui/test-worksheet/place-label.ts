// How a place of a traverse is named: its number, and how far it is from the near wall.

import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { placesOf } from '../../state/throttle-test/guidance.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * The name of a place.
 *
 * @param test - the sheet
 * @param index - of the reading, from 0
 * @param units - the units to speak in
 * @returns such as '3 · 1.93 in.', 'A3 · 1.93 in.' where several diameters are traversed
 */
export function placeLabel(test: TestSheet, index: number, units: UnitSystem): string {
  const { perDiameter, diameters } = test.traverse;
  const across = Math.floor(index / perDiameter);
  if (across >= diameters) return `${index + 1} · beyond the traverse`;
  const letter = diameters > 1 ? 'ABC'.charAt(across) : '';
  const name = `${letter}${(index % perDiameter) + 1}`;
  const part = placesOf(test.traverse).positions[index % perDiameter] ?? 0;
  const { diameter } = test;
  const distance =
    diameter === undefined
      ? formatQuantity('fraction', units, part)
      : formatQuantity('diameter', units, part * diameter);
  return `${name} · ${distance.text}`;
}
