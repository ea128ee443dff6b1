// The fittings of a section, with a button for each kind that can be added.

import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { FittingView } from '../../state/run-editor/fitting-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import './fitting-row.ts';
import { FITTING_WORDS, NEW_FITTINGS } from './fitting-words.ts';
import { formStyles } from './form.styles.ts';
import { type FittingEvent, FittingsEvent } from './value-events.ts';

/**
 * @element dc-fitting-list
 * @fires dc-fittings - one was added, changed or removed
 */
@customElement('dc-fitting-list')
export class FittingList extends LitElement {
  static override styles = [baseStyles, buttonStyles, formStyles];

  @property({ attribute: false }) fittings: readonly FittingView[] = [];
  @property({ attribute: false }) units: UnitSystem = 'us';

  /** Whether one was added here that is still to be drawn. */
  #isAdding = false;

  protected override render(): TemplateResult {
    return html`${this.fittings.map(
      (view, at) => html`<dc-fitting-row
          .view=${view}
          .units=${this.units}
          .place=${at + 1}
          @dc-fitting=${(event: FittingEvent) => this.#onFitting(event, at)}
        ></dc-fitting-row>`,
    )}
      <div class="buttons" role="group" aria-label="Add a fitting">
        ${NEW_FITTINGS.map(
          (fitting) => html`<button type="button" @click=${() => this.#add(fitting)}>
            <span>Add ${lowered(FITTING_WORDS[fitting.kind])}</span>
          </button>`,
        )}
      </div>`;
  }

  get #held(): readonly Fitting[] {
    return this.fittings.map(({ fitting }) => fitting);
  }

  protected override async updated(): Promise<void> {
    if (!this.#isAdding) return;
    this.#isAdding = false;
    const added = [...this.renderRoot.querySelectorAll('dc-fitting-row')].at(-1);
    await added?.updateComplete;
    added?.focus();
  }

  #add(fitting: Fitting): void {
    this.#isAdding = true;
    this.dispatchEvent(new FittingsEvent([...this.#held, fitting]));
  }

  #onFitting(event: FittingEvent, at: number): void {
    event.stopPropagation();
    const { fitting, isChoice } = event;
    const next = fitting ? this.#held.with(at, fitting) : this.#held.toSpliced(at, 1);
    this.dispatchEvent(new FittingsEvent(next, isChoice ? at : undefined));
  }
}

function lowered(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-fitting-list': FittingList;
  }
}
