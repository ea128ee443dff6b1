// Finds what was typed but not understood, before a form is taken as it stands.

import { QuantityField } from './quantity-field.ts';

/**
 * The first quantity field, in reading order and through all shadow roots, that holds something not
 * understood or still asked about.
 *
 * @param root - where to look
 * @returns the field, or undefined where everything is understood
 */
export function firstUnsettled(root: ParentNode): QuantityField | undefined {
  for (const element of root.querySelectorAll('*')) {
    if (element instanceof QuantityField && element.isUnsettled) return element;
    const inside = element.shadowRoot && firstUnsettled(element.shadowRoot);
    if (inside) return inside;
  }
  return undefined;
}
