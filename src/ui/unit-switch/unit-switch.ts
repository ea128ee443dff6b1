// The choice between US and metric units: two native radio buttons.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { UnitsEvent } from './units-event.ts';

const CHOICES: readonly { readonly units: UnitSystem; readonly words: string }[] = [
  { units: 'us', words: 'US' },
  { units: 'metric', words: 'metric' },
];

/**
 * @element dc-unit-switch
 * @fires dc-units - the other units were chosen
 */
@customElement('dc-unit-switch')
export class UnitSwitch extends LitElement {
  static override styles = [
    baseStyles,
    css`
      fieldset {
        display: flex;
        align-items: center;
        gap: 12px;
        margin: 0;
        padding: 0;
        border: 0;
      }

      legend {
        float: inline-start;
        padding: 0;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
      }

      label {
        display: inline-flex;
        align-items: center;
        gap: 6px;
        min-block-size: 44px;
        font-size: var(--dc-small);
        cursor: pointer;
      }

      input {
        inline-size: 1rem;
        block-size: 1rem;
        margin: 0;
        accent-color: var(--dc-ink);
      }

      @media (max-width: 37.4375em) {
        legend {
          position: absolute;
          inline-size: 1px;
          block-size: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
      }

      @media print {
        fieldset {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    return html`<fieldset>
      <legend>Units</legend>
      ${CHOICES.map(
        ({ units, words }) => html`<label
          ><input
            type="radio"
            name="units"
            .checked=${this.units === units}
            @change=${() => this.#choose(units)}
          />${words}</label
        >`,
      )}
    </fieldset>`;
  }

  #choose(units: UnitSystem): void {
    this.units = units;
    this.dispatchEvent(new UnitsEvent(units));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-unit-switch': UnitSwitch;
  }
}
