// Another way to say how a filter resists, without changing how much.

import { cleanResistance, TEST_VISCOSITY } from '../../curve/filter-resistance.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';

/** A filter as the document states it. */
export type Filter = Collector['filter'];
/** The ways in which a filter can be stated. */
export type FilterKind = Filter['kind'];

/** The ways with their words, in the order in which they are offered. */
export const FILTER_KINDS: readonly { readonly value: FilterKind; readonly words: string }[] = [
  { value: 'none', words: 'none, or not known' },
  { value: 'media', words: 'by its media and their area' },
  { value: 'measured', words: 'by one reading across it while clean' },
  { value: 'resistance', words: 'by its resistance while clean' },
];

/** Felt bags of a small unit (invented): 60 ft² that pass 30 ft/min at 0.5 in. w.g. */
const FELT = { area: 5.57418, testPressure: 124.544, testVelocity: 0.1524 } as const;
/** Flow for which a resistance is stated as a reading: 1,000 cfm [m³/s]. */
const READING_FLOW = 0.4719474432;
/** Least and greatest area of media that the document takes [m²]. */
const AREAS = [0.001, 10_000] as const;

/**
 * A filter stated in another way. It resists as before; one that did not resist becomes a small set of
 * felt bags, to be put right.
 *
 * @param filter - as it is stated now
 * @param kind - how it is to be stated
 * @returns the filter; its blinding stays
 */
export function filterAs(filter: Filter, kind: FilterKind): Filter {
  if (kind === filter.kind) return filter;
  if (kind === 'none') return { kind };
  const known = cleanResistance(filter, TEST_VISCOSITY);
  const resistance = known > 0 ? known : FELT.testPressure / FELT.testVelocity / FELT.area;
  const state =
    filter.kind === 'none' || filter.blinding === undefined ? {} : { blinding: filter.blinding };
  switch (kind) {
    case 'media': {
      const area = FELT.testPressure / FELT.testVelocity / resistance;
      return { kind, ...FELT, area: Math.min(Math.max(area, AREAS[0]), AREAS[1]), ...state };
    }
    case 'measured':
      return { kind, flow: READING_FLOW, pressure: resistance * READING_FLOW, ...state };
    case 'resistance':
      return { kind, resistance, ...state };
    default:
      return kind satisfies never;
  }
}

/**
 * A filter at another state of blinding. Nothing happens where there is no filter.
 *
 * @param filter - as it is stated now
 * @param blinding - how many times its clean resistance it has, 1 or more [-]
 * @returns the filter; a clean one without the key
 */
export function filterBlinded(filter: Filter, blinding: number): Filter {
  if (filter.kind === 'none' || (filter.blinding ?? 1) === blinding) return filter;
  if (blinding !== 1) return { ...filter, blinding };
  const { blinding: _, ...clean } = filter;
  return clean;
}
