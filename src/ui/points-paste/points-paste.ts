// A pasted table of points: a place to paste it, the question that it leaves open, and what was
// understood of it. The points go up only when nothing is open any more, so they are one step to undo.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PasteAnswers, PasteOutcome } from '../../state/pasted/paste-outcome.ts';
import { readPastedPoints } from '../../state/pasted-points.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { PointsEvent } from '../points-table/points-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';

/**
 * @element dc-points-paste
 * @fires dc-points - points were pasted and understood, in the order of the text
 */
@customElement('dc-points-paste')
export class PointsPaste extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    fieldStyles,
    css`
      :host {
        display: block;
      }

      textarea {
        inline-size: 100%;
        min-block-size: 88px;
        padding: 8px;
        border: 1px solid var(--dc-rule-strong);
        border-radius: 2px;
        background: var(--dc-paper);
        color: inherit;
        font: inherit;
        font-size: var(--dc-small);
        resize: vertical;
      }

      .choices {
        display: flex;
        flex-wrap: wrap;
        gap: 0 8px;
        margin-inline-start: -6px;
      }
    `,
  ];

  @property({ attribute: false }) units: UnitSystem = 'us';

  @state() private text = '';
  @state() private outcome: PasteOutcome | undefined;

  /**
   * Takes a text that was pasted elsewhere.
   *
   * @returns whether it looks like points, and so is dealt with here
   */
  take(text: string): boolean {
    const outcome = readPastedPoints(text, this.units);
    if (outcome.kind === 'no points') return false;
    this.text = text;
    this.#settle(outcome);
    return true;
  }

  protected override render(): TemplateResult {
    return html`<div role="status">${this.#said()}</div>
      <details>
        <summary class="small">Paste or type a table as text</summary>
        <div class="field">
          <label for="text">Two columns with their units, from a spreadsheet, a mail or a leaflet</label>
          <textarea
            id="text"
            rows="4"
            spellcheck="false"
            .value=${this.text}
            @input=${(event: InputEvent) => this.#onInput(event)}
          ></textarea>
        </div>
        <button type="button" @click=${() => this.#onRead()}><span>Read the points</span></button>
      </details>`;
  }

  #said(): TemplateResult {
    const { outcome } = this;
    switch (outcome?.kind) {
      case undefined:
        return html`${nothing}`;
      case 'no points':
        return html`<p class="problem">
          No two columns of numbers are in that text. Put one point a line, such as “400 cfm; 9.8 in. w.g.”
        </p>`;
      case 'refused':
        return html`<p class="problem">${outcome.message}</p>`;
      case 'question':
        return html`<p class="problem">${outcome.question.words}</p>
          <div class="choices" role="group" aria-label=${outcome.question.words}>
            ${outcome.question.choices.map(
              ({
                words,
                answers,
              }) => html`<button type="button" @click=${() => this.#answer(answers)}>
                <span>${words}</span>
              </button>`,
            )}
            <button type="button" @click=${() => this.#leave()}><span>Leave the points as they were</span></button>
          </div>`;
      case 'points':
        return html`<p class="hint">Understood: ${outcome.understood} Undo brings the former points back.</p>`;
      default:
        return outcome satisfies never;
    }
  }

  #onInput(event: InputEvent): void {
    this.text = (event.currentTarget as HTMLTextAreaElement).value;
  }

  #onRead(): void {
    this.#settle(readPastedPoints(this.text, this.units));
  }

  #answer(answers: PasteAnswers): void {
    this.#settle(readPastedPoints(this.text, this.units, answers));
  }

  #leave(): void {
    this.outcome = undefined;
  }

  #settle(outcome: PasteOutcome): void {
    this.outcome = outcome;
    if (outcome.kind === 'points') this.dispatchEvent(new PointsEvent(outcome.points));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-points-paste': PointsPaste;
  }
}
