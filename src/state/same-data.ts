// Whether two pieces of plain data say the same, so that what follows from them is left as it is: an
// element whose view was made anew, the ducts of a shop in which a machine was renamed.

const NONE: ReadonlySet<string> = new Set();

/**
 * Compares plain data by its contents.
 *
 * @param a - plain data
 * @param b - plain data
 * @param except - keys that don't count, at any depth
 * @returns true if both hold the same values in the same places
 * @example
 * sameData({ length: 2, note: 'too long' }, { length: 2 }, new Set(['note'])); // => true
 */
export function sameData(a: unknown, b: unknown, except = NONE): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  return holdsTheSame(a as PlainData, b as PlainData, except);
}

type PlainData = Readonly<Record<string, unknown>>;

/** Asked for every row in every frame, so without lists of keys. */
function holdsTheSame(a: PlainData, b: PlainData, except: ReadonlySet<string>): boolean {
  let more = 0;
  for (const key in a) {
    if (except.has(key)) continue;
    if (!Object.hasOwn(b, key) || !sameData(a[key], b[key], except)) return false;
    more += 1;
  }
  for (const key in b) more -= except.has(key) ? 0 : 1;
  return more === 0;
}
