// What a person typed, understood as a quantity, or asked about, or refused with a reason.
// A number alone is in the shown unit of the unit system in use. Ranges are not judged here.
//
// Source: none; the ways of writing are common practice.

import { echoOf } from './echo.ts';
import type { ReadTerm } from './echo.ts';
import { shownUnit } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';
import { readTerms } from './read-terms.ts';
import type { Term } from './read-terms.ts';
import { refusal } from './refusal.ts';
import { tidyText } from './tidy-text.ts';
import { runsToThousands, toSi } from './unit.ts';

/** One meaning of a typed text: the amount in SI, and how to say it back. */
export interface Reading {
  readonly value: number;
  readonly echo: string;
}

/** What became of a typed text. */
export type ParsedQuantity =
  | ({ readonly kind: 'understood' } & Reading)
  | { readonly kind: 'ambiguous'; readonly readings: readonly Reading[] }
  | { readonly kind: 'refused'; readonly message: string };

const LONGEST = 80;

/**
 * Reads a quantity as people type it. Never throws, whatever the text.
 * @param quantity - the kind of quantity wanted
 * @param system - the unit system in use, which gives a plain number its unit
 * @param text - what was typed
 * @returns the amount in SI with an echo of what was understood; or the readings to choose from,
 *   the likelier first, when a comma may mark thousands or decimals; or a message that says what
 *   is wrong and what would be right
 * @example parseQuantity('length', 'us', '12\' 6 1/2"').value; // => 3.8227
 * @example parseQuantity('length', 'us', '12.5 ft').echo; // => '12\' 6"'
 * @example parseQuantity('flow', 'us', '1,200').kind; // => 'ambiguous'
 */
export function parseQuantity(
  quantity: Quantity,
  system: UnitSystem,
  text: string,
): ParsedQuantity {
  if (text.length > LONGEST) {
    return refusal(quantity, system, text, { kind: 'too-long' });
  }
  const tidied = tidyText(text);
  if (tidied === '') {
    return refusal(quantity, system, text, { kind: 'empty' });
  }
  const outcome = readTerms(tidied, shownUnit(quantity, system));
  if (outcome.kind !== 'terms') {
    return refusal(quantity, system, text, outcome);
  }
  const readings: Reading[] = [];
  for (const terms of meanings(outcome.terms, outcome.sign, system)) {
    const value = amountOf(terms);
    if (!Number.isFinite(value)) {
      return refusal(quantity, system, text, { kind: 'too-large' });
    }
    readings.push({ value, echo: echoOf(quantity, system, terms, value) });
  }
  const [first, ...others] = readings;
  return first !== undefined && others.length === 0
    ? { kind: 'understood', ...first }
    : { kind: 'ambiguous', readings };
}

/** The sum in SI, with 15 digits: what was typed has no more, and 3.81 should not be stored longer. */
function amountOf(terms: readonly ReadTerm[]): number {
  const sum = terms.reduce((total, { number, unit }) => total + toSi(unit, number), 0);
  return Number(sum.toPrecision(15));
}

/** Every way in which the open numbers can be taken, signed; thousands first in US units. */
function meanings(terms: readonly Term[], sign: 1 | -1, system: UnitSystem): ReadTerm[][] {
  return terms.reduce<ReadTerm[][]>(
    (ways, { values, unit, named }) => {
      const settled = named && runsToThousands(unit) ? values.slice(0, 1) : values;
      const ordered = system === 'us' ? settled : settled.toReversed();
      return ways.flatMap((way) =>
        ordered.map((number) => [...way, { number: sign * number, unit }]),
      );
    },
    [[]],
  );
}
