// A number with its unit as every element writes it: the unit smaller and lighter, a thin space
// between them, figures of one width.

import { css, html, type TemplateResult } from 'lit';

/** A number and its unit, formatted for the reader. */
export interface Shown {
  readonly number: string;
  readonly unit: string;
}

/**
 * Writes a number with its unit.
 *
 * @param shown - the formatted number and unit
 * @returns the template; it needs {@link quantityStyles}
 */
export function quantity(shown: Shown): TemplateResult {
  return html`<span class="quantity"
    ><span class="number">${shown.number}</span><span class="unit"> ${shown.unit}</span></span
  >`;
}

export const quantityStyles = css`
  .quantity {
    white-space: nowrap;
  }

  .number {
    font-variant-numeric: tabular-nums;
  }

  .unit {
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }
`;
