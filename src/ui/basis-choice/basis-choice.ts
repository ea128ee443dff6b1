// What the pressures of a curve are: three choices, each with a small drawing of where the manometer is.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { ChoiceEvent } from '../choice-field/choice-event.ts';
import { BASIS_WORDS } from '../curve-editor/curve-words.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { basisDrawing } from './basis-drawing.ts';

/**
 * @element dc-basis-choice
 * @fires dc-choice - another kind of pressure was chosen
 */
@customElement('dc-basis-choice')
export class BasisChoice extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
      }

      fieldset {
        margin: 0;
        padding: 0;
        border: 0;
      }

      legend {
        padding: 0;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
        line-height: 1.125rem;
      }

      label {
        display: grid;
        grid-template-columns: 18px minmax(0, 1fr) auto;
        align-items: center;
        gap: 0 12px;
        min-block-size: 68px;
        padding-block: 2px;
        border-block-end: 1px solid var(--dc-rule);
        cursor: pointer;
      }

      input {
        inline-size: 18px;
        block-size: 18px;
        margin: 0;
        accent-color: var(--dc-ink);
      }

      small {
        display: block;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
        line-height: 1.125rem;
      }

      .drawing {
        inline-size: 110px;
        block-size: auto;
        fill: none;
        stroke: var(--dc-ink);
        stroke-width: 1.25;
        stroke-linejoin: round;
      }

      .drawing .air,
      .drawing .water {
        stroke: var(--dc-air);
      }

      .drawing .water {
        stroke-width: 4;
      }

      .drawing .tube,
      .drawing .tip {
        stroke: var(--dc-duct);
      }

      label:not(:has(:checked)) .drawing {
        stroke: var(--dc-ink-soft);
      }
    `,
  ];

  @property() value: Curve['basis']['kind'] = 'fan-static';

  protected override render(): TemplateResult {
    return html`<fieldset>
      <legend>The pressures are</legend>
      ${BASIS_WORDS.map(
        ({ kind, choice, explanation }) => html`<label>
          <input
            type="radio"
            name="basis"
            .value=${kind}
            aria-label=${choice}
            aria-describedby=${kind}
            .checked=${live(kind === this.value)}
            @change=${() => this.dispatchEvent(new ChoiceEvent(kind))}
          />
          <span>${choice}<small id=${kind}>${explanation}</small></span>
          ${basisDrawing(kind)}
        </label>`,
      )}
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-basis-choice': BasisChoice;
  }
}
