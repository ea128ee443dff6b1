// What can be done with the part that is open, as plain buttons, and where it can be led instead.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { formStyles } from './form.styles.ts';
import { PartActionEvent } from './run-outline-events.ts';

/** An action in words; those of a group are entries of one choice. */
export interface ActionWords {
  readonly id: string;
  readonly words: string;
  readonly group: string;
}

/**
 * @element dc-part-actions
 * @fires dc-part-action - one of them is to be done
 */
@customElement('dc-part-actions')
export class PartActions extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    formStyles,
    css`
      .move {
        display: flex;
        align-items: end;
        gap: 4px;
        max-inline-size: 26.25rem;
        margin-block-end: 20px;
      }

      dc-choice-field {
        flex: 1;
        min-inline-size: 0;
      }
    `,
  ];

  @property() label = '';
  @property({ attribute: false }) actions: readonly ActionWords[] = [];

  /** Where the branch is to be led, once that is chosen. */
  @state() private target = '';

  protected override render(): TemplateResult {
    const buttons = this.actions.filter(({ group }) => group === '');
    const moves = this.actions.filter(({ group }) => group !== '');
    return html`<div class="buttons" role="group" aria-label=${`What to do with ${this.label}`}>
        ${buttons.map(
          ({ id, words }) =>
            html`<button type="button" @click=${() => this.#do(id)}><span>${words}</span></button>`,
        )}
      </div>
      ${moves.length === 0 ? nothing : this.#moves(moves)}`;
  }

  #moves(moves: readonly ActionWords[]): TemplateResult {
    const target = moves.find(({ id }) => id === this.target) ?? moves[0]!;
    const choices = moves.map(({ id, words, group }) => ({ value: id, words, group }));
    return html`<div class="move">
      <dc-choice-field
        label="Move this branch to another wye"
        .choices=${choices}
        value=${target.id}
        @dc-choice=${(event: ChoiceEvent) => this.#onTarget(event)}
      ></dc-choice-field>
      <button type="button" aria-label="Move it there" @click=${() => this.#do(target.id)}>
        <span>Move</span>
      </button>
    </div>`;
  }

  #onTarget(event: ChoiceEvent): void {
    event.stopPropagation();
    this.target = event.value;
  }

  #do(id: string): void {
    this.dispatchEvent(new PartActionEvent(id));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-part-actions': PartActions;
  }
}
