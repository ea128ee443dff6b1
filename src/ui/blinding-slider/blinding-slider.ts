// How blind the filter is: a slider from clean to five times its clean resistance.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { blindingText } from '../../state/collector/collector-figures.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { BlindingEvent } from './blinding-event.ts';

/** Where the slider ends, unless the filter is blinder still [-]. */
const USUAL_END = 5;

/**
 * @element dc-blinding-slider
 * @fires dc-blinding - it was moved
 */
@customElement('dc-blinding-slider')
export class BlindingSlider extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        max-inline-size: 26.25rem;
      }

      .row {
        display: flex;
        align-items: center;
        gap: 12px;
      }

      input {
        flex: 1;
        min-inline-size: 0;
        block-size: 44px;
        margin: 0;
        accent-color: var(--dc-ink);
        cursor: pointer;
      }

      output {
        flex: none;
        min-inline-size: 7.25rem;
        font-variant-numeric: tabular-nums;
      }
    `,
  ];

  /** How many times its clean resistance the filter has, 1 or more [-]. */
  @property({ attribute: false }) blinding = 1;

  protected override render(): TemplateResult {
    const { blinding } = this;
    const words = blindingText(blinding);
    return html`<div class="field">
      <label for="blinding">How blind the filter is</label>
      <div class="row">
        <input
          id="blinding"
          type="range"
          min="1"
          max=${Math.max(USUAL_END, Math.ceil(blinding))}
          step="0.1"
          .value=${live(String(blinding))}
          aria-valuetext=${words}
          aria-describedby="about"
          @input=${(event: Event) => this.#send(event, 'drag')}
          @change=${(event: Event) => this.#send(event, 'rest')}
        />
        <output for="blinding">${words}</output>
      </div>
      <p class="hint" id="about">1 is clean; 2 takes twice the pressure at the same flow.</p>
    </div>`;
  }

  #send(event: Event, move: 'drag' | 'rest'): void {
    const { value } = event.currentTarget as HTMLInputElement;
    this.dispatchEvent(new BlindingEvent(Number(value), move));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-blinding-slider': BlindingSlider;
  }
}
