// What the pressures of a curve are, as short as a line of figures needs it.

import type { Curve } from '../../shop/schema/curve-schema.ts';

const WORDS = {
  'fan-static': 'fan static pressure',
  tap: 'suction at a tap',
  total: 'total suction',
} as const;

/**
 * The short words for the pressures of a curve.
 *
 * @param kind - what the pressures are
 * @returns 'fan static pressure'
 */
export function basisShort(kind: Curve['basis']['kind']): string {
  return WORDS[kind];
}
