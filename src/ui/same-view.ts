// Whether two views would be drawn alike, so that an element whose view was made anew but says the
// same is left alone.

/**
 * Compares plain data by its contents.
 *
 * @param a - plain data
 * @param b - plain data
 * @returns true if both hold the same values in the same places
 */
export function sameView(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  return keys.every((key) => Object.hasOwn(right, key) && sameView(left[key], right[key]));
}
