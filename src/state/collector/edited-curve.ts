// What becomes of an example's curve when somebody changes it: it is the example no longer, and its
// name says so.

import type { Curve } from '../../shop/schema/curve-schema.ts';

const CHANGED = ', changed';
const LONGEST_NAME = 200;

/**
 * A curve after an edit. One that bears the id of an example loses it, and is renamed unless the edit
 * did that.
 *
 * @param before - the curve
 * @param after - the same with another name, other points or another meaning
 * @returns the curve to be kept
 */
export function editedCurve(before: Curve, after: Curve): Curve {
  if (before.id === undefined) return after;
  const { id: _, ...own } = after;
  if (after.name !== before.name) return own;
  return { ...own, name: `${after.name.slice(0, LONGEST_NAME - CHANGED.length)}${CHANGED}` };
}
