// Items of one kind, each with a field for its price.

import { html, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { setPrice } from '../../shop/edits/edit-purchase.ts';
import type { ItemGroup, ItemRow } from '../../state/cut-list/cut-list-view.ts';
import type { Session } from '../../state/session.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import { unbroken } from '../unbroken.ts';

/** What the document allows of a price [of the currency]. */
const PRICE_LIMITS = { low: 0, high: 1e6 } as const;

/**
 * Writes the items.
 *
 * @param session - whose shop is edited
 * @param group - the items
 * @returns a heading and a list
 */
export function itemGroup(session: Session, { heading, rows }: ItemGroup): TemplateResult {
  return html`<h4>${heading}</h4>
    <ul class="items" role="list">
      ${repeat(
        rows,
        ({ key }) => key,
        (row) => item(session, row),
      )}
    </ul>`;
}

function item(session: Session, row: ItemRow): TemplateResult {
  const { key, what, amount, per, perUnit, price, cost } = row;
  return html`<li>
    <span class="what">${unbroken(what)}</span>
    <span class="amount">${unbroken(per === 'each' ? `${amount} needed` : amount)}</span>
    <dc-quantity-field
      bare
      optional
      .label=${`Price of ${what}, ${per}`}
      quantity="coefficient"
      .value=${price}
      .low=${PRICE_LIMITS.low}
      .high=${PRICE_LIMITS.high * perUnit}
      placeholder="price"
      @dc-quantity=${({ value }: QuantityEvent) =>
        session.edit(setPrice(key, value === undefined ? undefined : value / perUnit))}
    ></dc-quantity-field>
    <span class="per">${per}</span>
    <span class="cost">${cost}</span>
  </li>`;
}
