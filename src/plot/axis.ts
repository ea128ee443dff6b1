// An axis in the units that the reader has chosen: where it ends, and a few round ticks on it.
// The end is chosen once from the largest value to be shown, so it stays put while a gate moves.

import { scaleLinear } from 'd3-scale';
import { inUnit } from '../units/format.ts';
import type { Quantity, UnitSystem } from '../units/quantity.ts';
import { fromDisplay, shownUnit, toDisplay } from '../units/quantity.ts';

/** A tick: its value in SI and what is written beside it, without the unit. */
export interface Tick {
  readonly value: number;
  readonly label: string;
}

/** An axis that starts at 0. */
export interface Axis {
  /** Value at the far end, in SI. */
  readonly end: number;
  readonly ticks: readonly Tick[];
  readonly unit: string;
}

/** The axes ruled last: while something is dragged the same are asked for again and again. */
const ruled = new Map<string, Axis>();
const MOST_KEPT = 32;

/**
 * Rules an axis from 0 to its end.
 *
 * @param quantity - what is on the axis
 * @param system - the units to be round in
 * @param end - the value at the far end, above 0, in SI [-]
 * @param wanted - about how many ticks to have, 0 not counted [-]
 * @returns end and ticks; every tick is a round number in the chosen units and lies on the axis
 * @throws RangeError if `end` is not above 0
 */
export function axis(quantity: Quantity, system: UnitSystem, end: number, wanted: number): Axis {
  if (!(end > 0)) throw new RangeError(`an axis must reach above 0, not ${end}`);
  const key = [quantity, system, end, wanted].join();
  const kept = ruled.get(key);
  if (kept) return kept;
  if (ruled.size >= MOST_KEPT) ruled.clear();
  const anew = newAxis(quantity, system, end, wanted);
  ruled.set(key, anew);
  return anew;
}

function newAxis(quantity: Quantity, system: UnitSystem, end: number, wanted: number): Axis {
  const unit = shownUnit(quantity, system);
  const scale = scaleLinear([0, toDisplay(quantity, system, end)], [0, 1]);
  const write = scale.tickFormat(wanted, 'f');
  const ticks = scale.ticks(wanted).map((shown) => ({
    value: fromDisplay(quantity, system, shown),
    label: inUnit(write(shown), unit, system).number,
  }));
  return { end, ticks, unit: unit.label };
}
