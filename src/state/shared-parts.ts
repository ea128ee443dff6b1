// A document that came from elsewhere shares no part with the one at hand, even where they say the
// same. What follows from a part is computed again only when the part is another, so equal parts are
// taken from the one at hand.

/**
 * The later value, made of the parts of the earlier one where they are equal.
 *
 * @param before - a JSON value
 * @param after - a JSON value
 * @returns what equals `after`
 */
export function sharingParts<T>(before: unknown, after: T): T {
  if (Object.is(before, after) || !isObject(before) || !isObject(after)) return after;
  if (Array.isArray(before) !== Array.isArray(after)) return after;
  const keys = Object.keys(after);
  const shared = keys.map((key) => [key, sharingParts(before[key], after[key])] as const);
  const isSame =
    keys.length === Object.keys(before).length &&
    shared.every(([key, value]) => Object.is(value, before[key]));
  if (isSame) return before as T;
  return (
    Array.isArray(after) ? shared.map(([, value]) => value) : Object.fromEntries(shared)
  ) as T;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
