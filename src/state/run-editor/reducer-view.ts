// A change of diameter that follows from two pipes in a row, or from a port and its pipe: put in by
// itself, shown, and changeable.

import { changeLoss } from '../../shop/fitting-loss.ts';
import type { Transition } from '../../shop/schema/section-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { formulaSource } from '../assumptions/fitting-source.ts';
import { sourceWords } from './figure-source.ts';

/** The cone that is put in where nothing is said [deg]. */
export const USUAL_CONE = 30;

export interface ReducerView {
  /** '6 in. to 5 in.', in the direction of the air. */
  readonly sizes: string;
  /** How it changes, as the document says; undefined for the cone put in by itself. */
  readonly transition: Transition | undefined;
  /** Its loss on the velocity pressure of the smaller pipe [-] */
  readonly coefficient: number;
  readonly source: string;
}

/**
 * A change of diameter as a form shows it.
 *
 * @param from - inside diameter the air comes from [m]
 * @param to - inside diameter the air goes to [m]
 * @param transition - how it changes, as the document says
 * @param system - the units to speak in
 * @returns the view, or undefined where the diameters are equal and nothing was said
 */
export function reducerView(
  from: number,
  to: number,
  transition: Transition | undefined,
  system: UnitSystem,
): ReducerView | undefined {
  if (from === to && transition === undefined) return undefined;
  const [first, second] = [from, to].map((size) => formatQuantity('diameter', system, size).text);
  const smaller = Math.min(from, to);
  return {
    sizes: `${first} to ${second}`,
    transition,
    coefficient: changeLoss(from, to, transition, smaller).fixed,
    source: sourceOf(transition, to > from),
  };
}

function sourceOf(transition: Transition | undefined, widens: boolean): string {
  if (transition?.kind === 'plain') return 'entered for this shop';
  const shape = transition?.kind === 'sudden' ? 'sudden' : 'conical';
  return sourceWords(formulaSource(`${shape}-${widens ? 'expansion' : 'contraction'}`));
}
