// Curves are entered in different ways: with or without the filter, at a tap, in other air. What is
// compared is what counts for the ducts, the total suction left at the flange. Here it is told what was
// done to each curve for that, or had to be left, so that it is known how alike they are; by how much
// each step changes the pressure at a flow is told by curve/pressure-terms.ts.

import type { Air } from '../../air/air.ts';
import type { Collector } from '../schema/collector-schema.ts';

/** What was done, or had to be left, to bring a curve to the common footing. */
export type FootingNote =
  /** Velocity pressure in the pipe of the tap was taken off; inside diameter [m] */
  | { readonly kind: 'tap'; readonly diameter: number }
  /** The points were carried to the air of the shop; densities [kg/m³] */
  | { readonly kind: 'density'; readonly from: number; readonly to: number }
  /** The points were carried to another speed or wheel; ratio to that of the points [-] */
  | { readonly kind: 'speed'; readonly ratio: number }
  | { readonly kind: 'wheel'; readonly ratio: number }
  /** Several alike, side by side or in a row; how many [-] */
  | { readonly kind: 'parallel' | 'series'; readonly count: number }
  /** The points hold the clean filter; how many times its clean resistance it has now [-] */
  | { readonly kind: 'filter in the points'; readonly blinding: number }
  /** The points hold a filter of which nothing is known: it stays as clean as it was. */
  | { readonly kind: 'unknown filter in the points' }
  | { readonly kind: 'filter taken off' }
  /** The points hold no filter and none was entered: the collector gives less with one. */
  | { readonly kind: 'no filter counted' }
  | { readonly kind: 'separator in the points' }
  | { readonly kind: 'separator taken off' }
  | { readonly kind: 'no separator counted' };

/** Densities closer than this, as a part, are the same air [-]. */
const SAME_DENSITY = 1e-3;

/**
 * What brings a collector's points to the common footing.
 *
 * @param collector - the collector
 * @param air - the air in the shop
 * @returns notes, in the order in which the points are carried
 */
export function footingNotes(collector: Collector, air: Air): readonly FootingNote[] {
  const { curve, filter, separator, speedRatio = 1, wheelRatio = 1 } = collector;
  const notes: FootingNote[] = [];
  const { basis, includes, density } = curve;
  if (basis.kind === 'tap') notes.push({ kind: 'tap', diameter: basis.diameter });
  if (Math.abs(air.density / density - 1) > SAME_DENSITY) {
    notes.push({ kind: 'density', from: density, to: air.density });
  }
  if (speedRatio !== 1) notes.push({ kind: 'speed', ratio: speedRatio });
  if (wheelRatio !== 1) notes.push({ kind: 'wheel', ratio: wheelRatio });
  const { arrangement } = collector;
  if (arrangement !== undefined && arrangement.count > 1) notes.push(arrangement);
  if (filter.kind === 'none') {
    notes.push({
      kind: includes.filter ? 'unknown filter in the points' : 'no filter counted',
    });
  } else if (includes.filter) {
    notes.push({ kind: 'filter in the points', blinding: filter.blinding ?? 1 });
  } else notes.push({ kind: 'filter taken off' });
  if (includes.separator) notes.push({ kind: 'separator in the points' });
  else {
    notes.push({
      kind: separator.kind === 'none' ? 'no separator counted' : 'separator taken off',
    });
  }
  return notes;
}
