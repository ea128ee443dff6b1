// The field in which an amount of the collector is typed.

import { html, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../units/quantity.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import type { Amount, OpenAmount } from './collector-amounts.ts';

/** The field of an amount that can't be left open. */
export function amountField(units: UnitSystem, { take, ...rest }: Amount): TemplateResult {
  return openAmountField(units, {
    ...rest,
    take: (value) => {
      if (value !== undefined) take(value);
    },
  });
}

/** The field of an amount that may be left open. */
export function openAmountField(units: UnitSystem, amount: OpenAmount): TemplateResult {
  const { label, quantity, value, low, high, hint = '', optional = false, take } = amount;
  return html`<dc-quantity-field
    .label=${label}
    .quantity=${quantity}
    .units=${units}
    .value=${value}
    .low=${low}
    .high=${high}
    .hint=${hint}
    ?optional=${optional}
    @dc-quantity=${(event: QuantityEvent) => take(event.value)}
  ></dc-quantity-field>`;
}
