// What a pipe is called in the words of an answer, and which sizes of a family a reader asks for.

import { PIPE_FAMILIES, type PipeSize } from '../../duct/catalogue.ts';
import { pipeWord } from '../../shop/pipe-of.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * A pipe in a sentence.
 *
 * @param pipe - as the document states it
 * @param system - the units to speak in
 * @returns such as '5 in. pipe' or '100 mm hose'
 */
export function pipeInWords(pipe: Pipe, system: UnitSystem): string {
  const size =
    pipe.kind === 'custom'
      ? formatQuantity('diameter', system, pipe.diameter).text
      : sizeName(pipe.family, pipe.size);
  return `${size} ${pipeWord(pipe)}`;
}

/**
 * The name of a size.
 *
 * @param family - id of a family of the catalogue
 * @param size - id of a size of it
 * @returns such as '5 in.'
 */
export function sizeName(family: string, size: string): string {
  return sizesOf(family).find(({ id }) => id === size)?.name ?? size;
}

/**
 * The sizes that a reader asks for in a shop: inches or millimetres, as far as the family has such.
 *
 * @param family - id of a family of the catalogue
 * @param system - the units in use
 * @returns ids of sizes, by rising diameter
 */
export function usualSizes(family: string, system: UnitSystem): readonly string[] {
  const sizes = sizesOf(family).toSorted((a, b) => a.diameter - b.diameter);
  const usual = sizes.filter(({ name }) => name.endsWith('in.') === (system === 'us'));
  return (usual.length > 0 ? usual : sizes).map(({ id }) => id);
}

/**
 * The sizes that a main may be made up of: the row, inches or millimetres, that most of what hangs is
 * of, and where nothing of that family hangs the row that the reader asks for.
 *
 * @param shop - the shop
 * @param sections - ids of the sections that count as the main
 * @param family - id of a family of the catalogue
 * @param system - the units in use
 * @returns ids of sizes of one row, by rising diameter
 */
export function rowOfSizes(
  shop: Pick<Shop, 'sections'>,
  sections: readonly string[],
  family: string,
  system: UnitSystem,
): readonly string[] {
  const inches = usualSizes(family, 'us');
  const hung = { us: 0, metric: 0 };
  for (const { id, pipe, length } of shop.sections) {
    if (!sections.includes(id) || pipe.kind !== 'catalogue' || pipe.family !== family) continue;
    hung[inches.includes(pipe.size) ? 'us' : 'metric'] += length;
  }
  if (hung.us === hung.metric) return usualSizes(family, system);
  return usualSizes(family, hung.us > hung.metric ? 'us' : 'metric');
}

function sizesOf(family: string): readonly PipeSize[] {
  return PIPE_FAMILIES.find(({ id }) => id === family)?.sizes ?? [];
}

/** Lengths that were worked out are shown to the inch, or to the centimetre [m]. */
const LENGTH_STEP = { us: 0.0254, metric: 0.01 } as const;

/**
 * A length that was worked out, as far as it is worth reading.
 *
 * @param length - the length [m]
 * @param system - the units to speak in
 * @returns the text, rounded down to the inch or the centimetre
 */
export function workedOutLength(length: number, system: UnitSystem): string {
  const step = LENGTH_STEP[system];
  return formatQuantity('length', system, step * Math.floor(length / step + 1e-6)).text;
}
