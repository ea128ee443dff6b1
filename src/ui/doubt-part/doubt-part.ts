// How sure an answer is: a sentence, how far that is worked out, and, folded, what may be off.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LEAST_CASES } from '../../shop/decisions/doubt.ts';
import { DOUBTED, type DoubtForm, USUAL_DOUBT_FORM } from '../../state/decisions/doubt-form.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../study-status/study-status.ts';
import type { Asked } from '../study-worker/study-controller.ts';
import { figureTableStyles } from '../plot-figure/figure-table.styles.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import { unbroken } from '../unbroken.ts';
import { DoubtEvent } from './doubt-event.ts';

/** More cases take long and tell no more. */
const MOST_CASES = 4096;

/**
 * @element dc-doubt-part
 * @fires dc-doubt - something else may be off, or by another amount
 * @fires dc-study-wish - to leave off, or to ask again
 */
@customElement('dc-doubt-part')
export class DoubtPart extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    panelFormStyles,
    figureTableStyles,
    answerStyles,
    css`
      .doubt {
        max-inline-size: 90ch;
        min-block-size: 24px;
        margin: 0;
        line-height: 1.5rem;
        text-wrap: pretty;
      }
    `,
  ];

  /** How sure the answer is; empty until that is known. */
  @property() words = '';
  /** What is doubted, such as "how far it reaches". */
  @property() label = '';
  @property({ attribute: false }) form: DoubtForm = USUAL_DOUBT_FORM;
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) state: Asked = { kind: 'not asked' };

  protected override render(): TemplateResult {
    return html`<p class="doubt">${unbroken(this.words)}</p>
      <dc-study-status label="how sure that is" .state=${this.state}></dc-study-status>
      <details>
        <summary>What may be off, and by how much<span class="for-ears">: ${this.label}</span></summary>
        <div class="fields">
          ${DOUBTED.map(({ key, label, hint }) => this.#range(key, label, hint))}
          <dc-quantity-field
            label="Cases to try"
            quantity="count"
            .units=${this.units}
            .value=${this.form.cases}
            .low=${LEAST_CASES}
            .high=${MOST_CASES}
            hint="spread evenly over all ranges, the same each time"
            @dc-quantity=${({ value }: QuantityEvent) => value !== undefined && this.#say({ cases: Math.round(value) })}
          ></dc-quantity-field>
        </div>
      </details>`;
  }

  #range(key: keyof DoubtForm['ranges'], label: string, hint: string): TemplateResult {
    const { ranges } = this.form;
    return html`<dc-quantity-field
      label=${label}
      quantity="fraction"
      .units=${this.units}
      .value=${ranges[key]}
      .low=${0}
      .high=${1}
      hint=${hint}
      @dc-quantity=${({ value }: QuantityEvent) => value !== undefined && this.#say({ ranges: { ...ranges, [key]: value } })}
    ></dc-quantity-field>`;
  }

  #say(said: Partial<DoubtForm>): void {
    this.dispatchEvent(new DoubtEvent({ ...this.form, ...said }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-doubt-part': DoubtPart;
  }
}
