// The collector in one line, for when its part of the page is folded.

import { basisShort } from './basis-short.ts';
import { blindingOf } from '../../curve/filter-resistance.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * Its name, its points, its filter and its separator.
 *
 * @param collector - the collector of the shop
 * @param system - the units to speak in
 * @returns '5 hp cyclone, 8 points of fan static pressure · filter in the points · separator K 4.00'
 */
export function collectorFigures(collector: Collector, system: UnitSystem): string {
  const { curve, speedRatio = 1, wheelRatio = 1 } = collector;
  const part = (ratio: number) => formatQuantity('fraction', system, ratio).text;
  return [
    `${curve.name}, ${curve.points.length} points of ${basisShort(curve.basis.kind)}`,
    ...(speedRatio === 1 ? [] : [`at ${part(speedRatio)} of its speed`]),
    ...(wheelRatio === 1 ? [] : [`wheel ${part(wheelRatio)} of its size`]),
    filterFigure(collector),
    separatorFigure(collector, system),
  ].join(' · ');
}

function filterFigure({ curve, filter }: Collector): string {
  const state = blindingOf(filter) === 1 ? '' : ` at ${blindingText(blindingOf(filter))}`;
  if (curve.includes.filter) return `filter in the points${state}`;
  return filter.kind === 'none' ? 'no filter' : `filter${state || ', clean'}`;
}

function separatorFigure({ curve, separator }: Collector, system: UnitSystem): string {
  if (curve.includes.separator) return 'separator in the points';
  if (separator.kind === 'none') return 'no separator';
  return `separator K\u00a0${formatQuantity('coefficient', system, separator.coefficient).text}`;
}

/**
 * The state of a filter in words.
 *
 * @param blinding - how many times its clean resistance it has [-]
 * @returns '1.5 times clean'
 */
export function blindingText(blinding: number): string {
  return blinding === 1 ? 'clean' : `${Number(blinding.toFixed(2))} times clean`;
}
