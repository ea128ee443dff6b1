// What has to be bought to come from one shop to another, in words: pipe by kind and size, and the
// collector.

import { pipeBought } from '../../shop/decisions/pipe-bought.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { pipeInWords } from './pipe-words.ts';

/**
 * What has to be bought, in words.
 *
 * @param from - the shop as it is
 * @param to - the shop as it would be
 * @param system - the units to speak in
 * @returns such as "12' of 7 in. pipe; 5 hp cyclone", or 'nothing'
 */
export function boughtWords(from: Shop, to: Shop, system: UnitSystem): string {
  const pipes = pipeBought(from, to).map(
    ({ pipe, length }) =>
      `${formatQuantity('length', system, length).text} of ${pipeInWords(pipe, system)}`,
  );
  const { name } = to.collector.curve;
  const collector = name === from.collector.curve.name ? [] : [`collector: ${name}`];
  return [...pipes, ...collector].join('; ') || 'nothing';
}
