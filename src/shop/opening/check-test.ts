// What a test sheet must be beyond its shape: each throttle setting has an id of its own.

import type { TestSheet } from '../schema/test-schema.ts';
import { type Path, placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Throttle settings that share an id.
 *
 * @param test - the test, if the curve has one
 * @param path - where it stands in the document
 * @returns a problem for each that repeats an id
 */
export function checkTest(test: TestSheet | undefined, path: Path): Problem[] {
  const first = new Map<string, number>();
  return (test?.rows ?? []).flatMap(({ id }, at) => {
    const before = first.get(id);
    if (before === undefined) {
      first.set(id, at);
      return [];
    }
    const message = `is "${id}", the id of rows[${before}] already; each setting has its own`;
    return [{ place: placeOf([...path, 'rows', at, 'id'], undefined), message }];
  });
}
