// A fitting as a form shows it: what it is, what one of it loses, and where that comes from.

import type { Air } from '../../air/air.ts';
import { fittingLoss } from '../../shop/fitting-loss.ts';
import type { PipeNumbers } from '../../shop/pipe-of.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { fittingSource } from '../assumptions/fitting-source.ts';
import { type Overridable, sourceWords } from './figure-source.ts';
import { coefficientAt } from './one-loss.ts';

export interface FittingView {
  readonly fitting: Fitting;
  /** Loss of one [-] */
  readonly coefficient: Overridable;
}

/** What the loss of a fitting is worked out for. */
export interface FittingPlace {
  readonly pipe: PipeNumbers;
  readonly air: Air;
  /** Speed that friction is taken at [m/s] */
  readonly velocity: number;
}

/**
 * A fitting as a form shows it.
 *
 * @param fitting - a fitting of a section
 * @param place - the pipe it is in, the air, and the speed to take friction at
 * @param system - the units to speak in
 * @returns the view
 */
export function fittingView(
  fitting: Fitting,
  place: FittingPlace,
  system: UnitSystem,
): FittingView {
  const { pipe, air, velocity } = place;
  if (fitting.kind === 'plain') {
    const { coefficient } = fitting;
    return { fitting, coefficient: { own: coefficient, usual: undefined, source: '' } };
  }
  const { coefficient: own, count: _count, ...computed } = fitting;
  const loss = fittingLoss(computed);
  const usual = Number(coefficientAt(loss, pipe, air, velocity).toPrecision(3));
  const speed = formatQuantity('velocity', system, velocity).text;
  const when = loss.frictional === 0 ? '' : `at ${speed} · `;
  const source = `${when}${sourceWords(fittingSource(fitting))}`;
  return { fitting, coefficient: { own, usual, source } };
}
