// What the pressures of a curve are, in words.

import type { Curve } from '../../shop/schema/curve-schema.ts';

/** A kind of pressure, as it is chosen and as its column is headed. */
interface BasisWords {
  readonly kind: Curve['basis']['kind'];
  readonly choice: string;
  readonly column: string;
  readonly explanation: string;
}

/** In the order in which they are offered. */
export const BASIS_WORDS: readonly BasisWords[] = [
  {
    kind: 'fan-static',
    choice: 'fan static pressure, as a chart rates it',
    column: 'Fan static pressure',
    explanation:
      'What a maker’s chart mostly shows: inlet open to the room, pressure read behind the fan.',
  },
  {
    kind: 'tap',
    choice: 'suction read at a tap in the inlet pipe',
    column: 'Suction at the tap',
    explanation:
      'Read at a hole in the pipe’s wall. One velocity pressure of that pipe is taken off: the ducts don’t get it.',
  },
  {
    kind: 'total',
    choice: 'total suction at the inlet',
    column: 'Total suction',
    explanation:
      'Read with a tube that faces the air. What is left for the ducts; used as it stands.',
  },
];

/**
 * The words for the pressures of a curve.
 *
 * @param kind - what the pressures are
 * @returns the words
 */
export function basisWords(kind: Curve['basis']['kind']): BasisWords {
  return BASIS_WORDS.find((words) => words.kind === kind)!;
}
