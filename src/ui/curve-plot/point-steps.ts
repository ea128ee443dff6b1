// How far a key moves a point of the curve.

import { fromDisplay, toDisplay, type UnitSystem } from '../../units/quantity.ts';

/** A step to the right [m³/s] and a step up [Pa]. */
export interface PointSteps {
  readonly flow: number;
  readonly pressure: number;
}

/** Fine steps that cross an axis, about [-]. */
const ACROSS = 200;
/** How many fine steps a coarse one is. */
export const COARSE = 10;

/** Directions of the keys: right and up are above zero. */
export const KEY_STEPS: Readonly<Record<string, readonly [right: number, up: number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, COARSE],
  PageDown: [0, -COARSE],
};

/**
 * Round steps in the shown units.
 *
 * @param units - the shown units
 * @param ends - of both axes, flow [m³/s] and pressure [Pa]
 * @returns the fine step along either
 */
export function pointSteps(units: UnitSystem, ends: PointSteps): PointSteps {
  const step = (quantity: 'flow' | 'pressure') =>
    fromDisplay(quantity, units, roundStep(toDisplay(quantity, units, ends[quantity]) / ACROSS));
  return { flow: step('flow'), pressure: step('pressure') };
}

/** The next of 1, 2, 5, 10 … and their tenths. */
function roundStep(about: number): number {
  const ten = 10 ** Math.floor(Math.log10(about));
  return ([1, 2, 5, 10].find((times) => times * ten >= about) ?? 10) * ten;
}
