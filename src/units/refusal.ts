// Why a typed text could not be taken as a quantity, in words: which text, why not, what would do.
//
// Source: none.

import { formatQuantity } from './format.ts';
import { QUANTITY_NAMES, quantityWords, shownUnit, typicalAmount } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';
import type { TermsOutcome } from './read-terms.ts';
import type { Unit } from './unit.ts';

/** What was wrong. */
export type Fault =
  | Exclude<TermsOutcome, { kind: 'terms' }>
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long' }
  | { readonly kind: 'too-large' };

/** A text refused, with the message to show. */
export interface Refusal {
  readonly kind: 'refused';
  readonly message: string;
}

/**
 * The refusal of a text.
 * @param quantity - the kind of quantity that was wanted
 * @param system - the unit system in use; its example comes first
 * @param text - what was typed
 * @param fault - what was wrong with it
 * @returns the refusal, with one or two sentences
 * @example refusal('flow', 'us', '', { kind: 'empty' }).kind; // => 'refused'
 */
export function refusal(
  quantity: Quantity,
  system: UnitSystem,
  text: string,
  fault: Fault,
): Refusal {
  const advice = `Type ${quantityWords(quantity)}, such as ${examples(quantity, system)}`;
  const reason = reasonOf(quantity, `“${shortened(text.trim())}”`, fault);
  return { kind: 'refused', message: `${reason} ${advice.replace(/\.?$/, '.')}`.trim() };
}

function reasonOf(quantity: Quantity, quoted: string, fault: Fault): string {
  switch (fault.kind) {
    case 'empty':
      return '';
    case 'too-long':
      return `${quoted} is too long to be a number with a unit.`;
    case 'too-large':
      return `${quoted} is too large.`;
    case 'no-number':
      return `${quoted} does not begin with a number.`;
    case 'bad-number':
      return `In ${quoted}, “${shortened(fault.written)}” is not a number that can be read.`;
    case 'unknown-unit':
      return `In ${quoted}, “${shortened(fault.written)}” is not a unit known here.`;
    case 'other-dimension':
      return `${quoted} is ${measuredBy(fault.unit)}, not ${quantityWords(quantity)}.`;
    case 'bad-sequence':
      return `In ${quoted}, each number needs its unit, largest first, a fraction only in the last.`;
    default:
      return fault satisfies never;
  }
}

function measuredBy(unit: Unit): string {
  const quantity = QUANTITY_NAMES.find(
    (name) => shownUnit(name, 'metric').dimension === unit.dimension,
  );
  return quantity === undefined ? 'something else' : quantityWords(quantity);
}

function examples(quantity: Quantity, system: UnitSystem): string {
  const systems: readonly UnitSystem[] = system === 'us' ? ['us', 'metric'] : ['metric', 'us'];
  const texts = systems.map((each) => formatQuantity(quantity, each, typicalAmount(quantity)).text);
  return [...new Set(texts)].join(' or ');
}

function shortened(text: string): string {
  const start = Array.from(text.slice(0, 80)).slice(0, 40).join('');
  return start === text ? text : `${start}…`;
}
