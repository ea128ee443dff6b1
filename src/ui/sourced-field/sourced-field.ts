// A field for a figure that is computed or tabulated unless the maker enters another. It shows where
// the usual one comes from, marks one that was entered, and puts the usual one back by one button.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Overridable } from '../../state/run-editor/figure-source.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';

const NOTHING: Overridable = { own: undefined, usual: undefined, source: '' };

/**
 * @element dc-sourced-field
 * @fires dc-quantity - another figure was entered; undefined where the usual one was put back
 */
@customElement('dc-sourced-field')
export class SourcedField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }

      button {
        margin-inline-start: -6px;
      }
    `,
  ];

  @property() label = '';
  @property() quantity: Quantity = 'coefficient';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) figure: Overridable = NOTHING;

  /** Whether the maker's own figure may be taken away where there is no usual one. */
  @property({ type: Boolean }) optional = false;

  /** Least and greatest amount allowed, in SI. */
  @property({ attribute: false }) low: number | undefined;
  @property({ attribute: false }) high: number | undefined;

  protected override render(): TemplateResult {
    const { own, usual } = this.figure;
    const isOverridden = own !== undefined && usual !== undefined;
    return html`<dc-quantity-field
        label=${this.label}
        quantity=${this.quantity}
        .units=${this.units}
        .value=${own ?? usual}
        .low=${this.low}
        .high=${this.high}
        ?optional=${this.optional || isOverridden}
        hint=${this.#hint}
      ></dc-quantity-field>
      ${
        isOverridden
          ? html`<button
              type="button"
              aria-label="Put back ${this.#show(usual)}, ${this.label}"
              @click=${() => this.dispatchEvent(new QuantityEvent(undefined))}
            >
              <span>Put back ${this.#show(usual)}</span>
            </button>`
          : nothing
      }`;
  }

  get #hint(): string {
    const { own, usual, source } = this.figure;
    if (own === undefined) return source;
    if (usual === undefined) return 'entered for this shop';
    return `entered, in place of ${this.#show(usual)} · ${source}`;
  }

  #show(si: number): string {
    return formatQuantity(this.quantity, this.units, si).text;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-sourced-field': SourcedField;
  }
}
