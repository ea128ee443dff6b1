// What lies between the pressures as entered and what the ducts get, at the operating point: in words.

import type { Curve } from '../../shop/schema/curve-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { basisShort } from './basis-short.ts';

/** The two pressures at one flow. */
export interface GapFacts {
  /** [m³/s] */
  readonly flow: number;
  /** As entered, read off the line [Pa] */
  readonly entered: number;
  /** Left for the ducts [Pa] */
  readonly available: number;
}

/** Less than this is nothing to speak of [Pa]. */
const LEAST = 2;

/**
 * The gap in a sentence.
 *
 * @param facts - the two pressures
 * @param basis - what the entered ones are
 * @param system - the units to speak in
 * @returns one or two sentences
 */
export function gapWords(
  { flow, entered, available }: GapFacts,
  basis: Curve['basis'],
  system: UnitSystem,
): string {
  const show = (pressure: number) => formatQuantity('pressure', system, pressure).text;
  const at = `At the operating point, ${formatQuantity('flow', system, flow).text},`;
  const difference = entered - available;
  if (Math.abs(difference) < LEAST) {
    return `${at} the ducts get what was entered, ${show(available)}.`;
  }
  const side = difference > 0 ? 'less' : 'more';
  const trap =
    basis.kind === 'tap'
      ? ' One velocity pressure in the pipe of the tap is among it; taken as fan static pressure, the same numbers would promise that much too much.'
      : '';
  return `${at} the points say ${show(entered)} of ${basisShort(basis.kind)} and the ducts get ${show(available)}: ${show(Math.abs(difference))} ${side}.${trap}`;
}
