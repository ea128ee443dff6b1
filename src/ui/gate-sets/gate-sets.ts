// The sets of gates that are used together: open one, save what is open now as another, or take the
// one in use out. Taking out is undone like any other edit, so nothing asks twice.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { sameData } from '../../state/same-data.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { GateSetEvent, RemoveSetEvent, SaveSetEvent } from './gate-set-event.ts';

/** A named set of gates that are open together. */
export interface GateSetView {
  readonly id: string;
  readonly name: string;
  /** Ids of its drops. */
  readonly open: readonly string[];
  /** Whether just these are open now. */
  readonly current: boolean;
}

/** A name is no longer than fits on a button. */
const LONGEST_NAME = 60;

/**
 * @element dc-gate-sets
 * @fires dc-gate-set - a saved set, or "shut all", was chosen
 * @fires dc-save-set - what is open is to be saved under a name
 * @fires dc-remove-set - the set in use is to be taken out
 */
@customElement('dc-gate-sets')
export class GateSets extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }

      .sets,
      form {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        column-gap: 4px;
        margin-inline: -6px;
      }

      form {
        align-items: end;
        margin-inline-start: 0;
        padding-block-end: 8px;
      }

      .field {
        flex: 0 1 17.5rem;
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false, hasChanged: (next, before) => !sameData(next, before) })
  sets: readonly GateSetView[] = [];
  /** Whether a gate is open, so that there is something to save. */
  @property({ type: Boolean }) open = false;

  @state() private isNaming = false;

  @query('input') private readonly nameInput!: HTMLInputElement | null;
  @query('.save') private readonly saveButton!: HTMLButtonElement | null;

  protected override render(): TemplateResult {
    return html`<div class="sets" role="group" aria-label="Gates together">
        ${this.sets.map((set) => this.#setButton(set))}
        <button type="button" @click=${() => this.dispatchEvent(new GateSetEvent([]))}>
          <span>Shut all</span>
        </button>
        ${this.#change()}
      </div>
      ${this.isNaming ? this.#form() : nothing}`;
  }

  #setButton({ name, open, current }: GateSetView): TemplateResult {
    return html`<button
      type="button"
      aria-pressed=${current ? 'true' : 'false'}
      @click=${() => this.dispatchEvent(new GateSetEvent(open))}
    >
      <span>${name}</span>
    </button>`;
  }

  #change(): TemplateResult | typeof nothing {
    const current = this.sets.find((set) => set.current);
    if (current) {
      return html`<button
        type="button"
        aria-label="Remove set ${current.name}"
        @click=${() => this.#remove(current)}
      >
        <span>Remove set</span>
      </button>`;
    }
    if (!this.open || this.isNaming) return nothing;
    return html`<button class="save" type="button" @click=${() => this.#name()}>
      <span>Save as a set</span>
    </button>`;
  }

  #form(): TemplateResult {
    return html`<form
      @submit=${(event: SubmitEvent) => this.#onSubmit(event)}
      @keydown=${(event: KeyboardEvent) => this.#onKey(event)}
    >
      <div class="field">
        <label for="name">Name of the set</label>
        <input class="line" id="name" required maxlength=${LONGEST_NAME} autocomplete="off" />
      </div>
      <button type="submit"><span>Save</span></button>
      <button type="button" @click=${() => this.#leave()}><span>Leave it</span></button>
    </form>`;
  }

  async #name(): Promise<void> {
    this.isNaming = true;
    await this.updateComplete;
    this.nameInput?.focus();
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    this.#leave();
  }

  #onSubmit(event: SubmitEvent): void {
    event.preventDefault();
    const name = this.nameInput?.value.trim() ?? '';
    if (name === '') return;
    this.dispatchEvent(new SaveSetEvent(name));
    this.#leave();
  }

  #remove({ id }: GateSetView): void {
    this.dispatchEvent(new RemoveSetEvent(id));
    this.#focusNext();
  }

  #leave(): void {
    this.isNaming = false;
    this.#focusNext();
  }

  /** What had the focus is gone: it goes to what stands in its place, once that is drawn. */
  #focusNext(): void {
    requestAnimationFrame(() => {
      const inUse = this.renderRoot.querySelector<HTMLElement>('[aria-pressed=true]');
      (this.saveButton ?? inUse)?.focus();
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-gate-sets': GateSets;
  }
}
