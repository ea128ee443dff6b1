// A typed amount taken apart: a sign, then numbers each with a unit. One number is the rule; a
// length may have several, from the largest unit down: 12' 6 1/2", 2 m 40 cm.
//
// Source: none; the ways of writing are common practice.

import { readNumber } from './read-number.ts';
import { UNITS } from './unit.ts';
import type { Unit } from './unit.ts';
import { unitOfSpelling } from './unit-spellings.ts';

/** One number with its unit. Two values where a comma leaves the number open. */
export interface Term {
  /** The values that the number may have, in its unit. */
  readonly values: readonly number[];
  readonly unit: Unit;
  /** Whether the writer named the unit, or it was supplied. */
  readonly named: boolean;
}

/** The terms, or the first thing that could not be understood. */
export type TermsOutcome =
  | { readonly kind: 'terms'; readonly sign: 1 | -1; readonly terms: readonly Term[] }
  | { readonly kind: 'no-number' }
  | { readonly kind: 'bad-number'; readonly written: string }
  | { readonly kind: 'unknown-unit'; readonly written: string }
  | { readonly kind: 'other-dimension'; readonly unit: Unit }
  | { readonly kind: 'bad-sequence' };

const SIGN = /^[-+] ?/;
const LENGTH_UNIT = /(?:[^\d+,.-]|\.(?!\d))*/y;
const BETWEEN = / ?(?:[-+]|, )? ?/y;

/**
 * Takes a tidied text apart. Never throws.
 * @param text - text from `tidyText`, not empty
 * @param shown - the unit of a number that has none, and the dimension that is wanted
 * @returns the sign and at least one term, or what was not understood
 */
export function readTerms(text: string, shown: Unit): TermsOutcome {
  const signed = SIGN.exec(text)?.[0] ?? '';
  const terms: Term[] = [];
  let at = signed.length;
  do {
    const number = readNumber(text, at);
    if (number === undefined) {
      return terms.length === 0 ? { kind: 'no-number' } : { kind: 'bad-sequence' };
    }
    if (number.values.length === 0) {
      return { kind: 'bad-number', written: text.slice(at, number.end) };
    }
    const spelling = spellingAt(text, number.end, shown);
    at = number.end + spelling.length;
    const term = termOf(number.values, spelling.trim(), shown, terms.at(-1));
    if (!('values' in term)) {
      return term;
    }
    terms.push(term);
    at += at < text.length ? matchLength(BETWEEN, text, at) : 0;
  } while (at < text.length);
  return inSequence(terms)
    ? { kind: 'terms', sign: signed.startsWith('-') ? -1 : 1, terms }
    : { kind: 'bad-sequence' };
}

/** The rest of the text, but for a length only as far as the next number. */
function spellingAt(text: string, start: number, shown: Unit): string {
  const rest = text.slice(start);
  const whole = shown.dimension !== 'length' || unitOfSpelling(rest, 'length') !== undefined;
  return whole ? rest : rest.slice(0, matchLength(LENGTH_UNIT, rest, 0));
}

function termOf(
  values: readonly number[],
  spelling: string,
  shown: Unit,
  before: Term | undefined,
): Term | TermsOutcome {
  const bareDegrees = spelling === '°' && shown.dimension === 'temperature';
  if (spelling === '' || bareDegrees) {
    const inches = before?.unit === UNITS.foot && before.named;
    return { values, unit: inches ? UNITS.inch : shown, named: false };
  }
  const unit = unitOfSpelling(spelling.replace(/ and$/, ''), shown.dimension);
  if (unit === undefined) {
    return { kind: 'unknown-unit', written: spelling };
  }
  return unit.dimension === shown.dimension
    ? { values, unit, named: true }
    : { kind: 'other-dimension', unit };
}

/** From the largest unit down, whole numbers but for the last, no unit missing in between. */
function inSequence(terms: readonly Term[]): boolean {
  return terms.every((term, i) => {
    const next = terms[i + 1];
    const whole = term.values.every(Number.isInteger);
    const supplied = !term.named && i > 0 && term.unit !== UNITS.inch;
    return next === undefined ? !supplied : term.named && whole && term.unit.size > next.unit.size;
  });
}

function matchLength(pattern: RegExp, text: string, start: number): number {
  pattern.lastIndex = start;
  return pattern.exec(text)?.[0].length ?? 0;
}
