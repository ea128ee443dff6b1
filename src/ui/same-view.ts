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
  return holdsTheSame(a as PlainData, b as PlainData);
}

type PlainData = Readonly<Record<string, unknown>>;

/** Asked for every row in every frame, so without lists of keys. */
function holdsTheSame(a: PlainData, b: PlainData): boolean {
  let more = 0;
  for (const key in a) {
    if (!Object.hasOwn(b, key) || !sameView(a[key], b[key])) return false;
    more += 1;
  }
  for (const _ in b) more -= 1;
  return more === 0;
}
