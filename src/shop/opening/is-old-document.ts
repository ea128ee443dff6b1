// Whether a shop document is of an older version, so that opening it changes its form.

import { CURVE_VERSION } from '../schema/curve-schema.ts';
import { SHOP_VERSION } from '../schema/shop-schema.ts';
import { valueAtPath } from './place.ts';

/**
 * Whether a document that opens was migrated on the way.
 *
 * @param document - a shop document as it is kept
 * @returns whether it, or the curve in it, is of an older version
 */
export function isOldDocument(document: unknown): boolean {
  return (
    valueAtPath(document, ['version']) !== SHOP_VERSION ||
    valueAtPath(document, ['collector', 'curve', 'version']) !== CURVE_VERSION
  );
}
