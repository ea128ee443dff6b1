// Numbers of the document: each has bounds, a unit and one sentence of what would be right, which
// serves as its description in the JSON Schema and as the second half of every complaint about it.

import { inWords, z } from './zod.ts';

/** What a number of the document is and what it may be. */
export interface NumberRule {
  /** What it is, without the unit: 'inside diameter of the pipe'. */
  readonly what: string;
  /** Its unit, as words in brackets: '[m]'. '[-]' for a plain ratio. */
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** What holds if the key is left out, for an optional number. */
  readonly otherwise?: string;
}

/**
 * A finite number from `low` to `high`, both allowed.
 *
 * @param rule - what it is, its unit and its bounds
 * @returns the schema; its complaint names the bounds and the unit
 */
export function numberFrom(rule: NumberRule) {
  const right = `must be a number from ${rule.low} to ${rule.high}${unitWord(rule)}`;
  return z
    .number({ error: right })
    .check(z.minimum(rule.low, { error: right }), z.maximum(rule.high, { error: right }))
    .register(inWords, { description: describeNumber(rule) });
}

/**
 * A whole number from `low` to `high`, both allowed.
 *
 * @param rule - what it is, its unit and its bounds
 * @returns the schema; its complaint names the bounds
 */
export function wholeNumberFrom(rule: NumberRule) {
  const right = `must be a whole number from ${rule.low} to ${rule.high}`;
  return z
    .int({ error: right })
    .check(z.minimum(rule.low, { error: right }), z.maximum(rule.high, { error: right }))
    .register(inWords, { description: describeNumber(rule) });
}

function unitWord(rule: NumberRule): string {
  return rule.unit === '[-]' ? '' : ` ${rule.unit}`;
}

function describeNumber(rule: NumberRule): string {
  const text = `${rule.what} ${rule.unit}, ${rule.low} to ${rule.high}.`;
  const sentence = text.charAt(0).toUpperCase() + text.slice(1);
  return rule.otherwise === undefined ? sentence : `${sentence} Left out: ${rule.otherwise}.`;
}
