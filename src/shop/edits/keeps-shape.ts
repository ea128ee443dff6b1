// Whether a document that was edited has the right shape still. What is the very same as before the edit
// had it then, so only what is new is looked at: under the hand the document is edited in every frame.

import { z } from '../schema/zod.ts';

/** Checks of a list that a list of the same length passes as the one before did. */
const OF_LENGTH: ReadonlySet<string> = new Set(['min_length', 'max_length']);

/**
 * Checks what an edit changed.
 *
 * @param schema - what is right
 * @param before - plain data that is right
 * @param next - plain data made from it, sharing what was not changed
 * @returns whether the schema accepts `next`
 */
export function keepsShape(schema: z.core.$ZodType, before: unknown, next: unknown): boolean {
  if (next === before) return true;
  return keepsParts(schema, before, next) || z.safeParse(schema, next).success;
}

/** Whether the two have the same parts, and all of them are right; if not, the whole may be still. */
function keepsParts(schema: z.core.$ZodType, before: unknown, next: unknown): boolean {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  const checks = def.checks ?? [];
  if (def.type === 'array') {
    return (
      Array.isArray(before) &&
      Array.isArray(next) &&
      before.length === next.length &&
      checks.every(({ _zod }) => OF_LENGTH.has(_zod.def.check)) &&
      next.every((each, i) => keepsShape(def.element, before[i], each))
    );
  }
  if (def.type !== 'object' || checks.length > 0 || !isRecord(before) || !isRecord(next))
    return false;
  const isKept = (key: string) => {
    const part = Object.hasOwn(def.shape, key) && Object.hasOwn(before, key) && def.shape[key];
    return part ? keepsShape(part, before[key], next[key]) : false;
  };
  return (
    Object.keys(next).every(isKept) && Object.keys(before).every((key) => Object.hasOwn(next, key))
  );
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
