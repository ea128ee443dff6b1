// A blast gate: a straight blade that slides across a round pipe, from shut to drawn right out.
// What is interpolated is the area of the jet, which is bounded; the coefficient itself is not.
//
// 1. Segment of a circle: open area fraction a = (θ − sin θ·cos θ)/π with θ = acos(1 − 2·travel).
// 2. J. Weisbach, Die Experimental-Hydraulik (1855), gate in a round pipe: the contraction C_c of
//    the jet at travels of eighths, in shared/gates.json. His blade was as round as the pipe and
//    left more open at the same travel; here its contraction goes with the area of a straight one.
//    Other published families of gates differ from his by a factor of up to two.
// 3. Borda and Carnot: the jet spreads again and loses K = (1/y − 1)², y = C_c·a.

import gates from '../../shared/gates.json' with { type: 'json' };
import { valueAt } from '../math/hermite.ts';
import { pchip } from '../math/pchip.ts';

/** Effective leak of a shop-made gate, over the pipe's area (common practice, no source) [-] */
export const USUAL_LEAK = 0.005;
/** What the slot of an open gate costs (from memory, unverified) [-] */
export const USUAL_SLOT_LOSS = 0.1;

/** Area of the jet over that of the pipe, shut to open; nearly a straight line. */
const JET = pchip(
  [0, ...gates.rows.map(({ travel }) => travel), 1],
  [0, ...gates.rows.map(({ travel, contraction }) => gateOpenArea(travel) * contraction), 1],
);

/**
 * The part of the pipe's area that a straight blade leaves open.
 *
 * @param travel - how far the blade is drawn, over the pipe's diameter, 0 to 1 [-]
 * @returns open area over the pipe's area, rising from 0 to 1 [-]
 * @throws RangeError if the travel is outside 0 to 1
 * @example
 * gateOpenArea(0.5); // => 0.5
 */
export function gateOpenArea(travel: number): number {
  checkFraction('travel', travel);
  const theta = Math.acos(1 - 2 * travel);
  return (theta - Math.sin(theta) * Math.cos(theta)) / Math.PI;
}

/**
 * Loss coefficient of a blast gate on the pipe's velocity pressure: (1/y − 1)² + slot loss, where y
 * is the area of the jet over that of the pipe, but never less than the leak. Finite for every
 * travel, and never rises as the gate opens.
 *
 * @param travel - 0 shut to 1 fully open, over the pipe's diameter [-]
 * @param leak - effective area that a shut gate leaks through, over the pipe's, above 0 to 1 [-]
 * @param slotLoss - what the slot of an open gate costs, 0 or more; 0.1 is from memory [-]
 * @returns loss coefficient K [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * gateCoefficient(1, 0.005, 0.1); // => 0.1
 * gateCoefficient(0, 0.005, 0); // => 39601
 */
export function gateCoefficient(
  travel: number,
  leak = USUAL_LEAK,
  slotLoss = USUAL_SLOT_LOSS,
): number {
  checkFraction('travel', travel);
  checkFraction('leak', leak);
  if (leak === 0) throw new RangeError('leak must be above 0: no gate is ever quite shut');
  if (!(slotLoss >= 0)) throw new RangeError(`slot loss must be 0 or more, not ${slotLoss}`);
  const jet = Math.max(valueAt(JET, travel), leak);
  return (1 / jet - 1) ** 2 + slotLoss;
}

function checkFraction(name: string, value: number): void {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`${name} must be 0 to 1, not ${value}`);
}
