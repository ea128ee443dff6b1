// The drops of the shop, one row each, with the sets of gates that are used together above them.

import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { DropView } from '../../state/drop-views.ts';
import '../drop-row/drop-row.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { dropListStyles } from './drop-list.styles.ts';
import { GateSetEvent } from './gate-set-event.ts';

/** A named set of gates that are open together. */
export interface GateSetView {
  readonly name: string;
  /** Ids of its drops. */
  readonly open: readonly string[];
  /** Whether just these are open now. */
  readonly current: boolean;
}

/**
 * The list of drops.
 *
 * @element dc-drop-list
 * @fires dc-drop-gate - from a row: what is to become of its gate
 * @fires dc-gate-set - a saved set, or "all shut", was chosen
 */
@customElement('dc-drop-list')
export class DropList extends LitElement {
  static override styles = [baseStyles, buttonStyles, dropListStyles];

  @property({ attribute: false }) drops: readonly DropView[] = [];
  @property({ attribute: false }) sets: readonly GateSetView[] = [];

  protected override render(): TemplateResult {
    return html`<h2 class="for-ears">Drops and their gates</h2>
      <div class="sets" role="group" aria-label="Gates together">
        ${this.sets.map((set) => this.#setButton(set))}
        <button type="button" @click=${() => this.#choose([])}><span>Shut all</span></button>
      </div>
      <div class="head" aria-hidden="true">
        <span>drop</span><span>gate</span><span></span><span class="end">flow</span>
        <span class="speed">speed <i></i> carries</span><span>verdict, slowest pipe</span>
      </div>
      <ul role="list">
        ${repeat(
          this.drops,
          (drop) => drop.id,
          (drop) => html`<li><dc-drop-row .drop=${drop}></dc-drop-row></li>`,
        )}
      </ul>`;
  }

  #setButton({ name, open, current }: GateSetView): TemplateResult {
    return html`<button
      type="button"
      aria-pressed=${current ? 'true' : 'false'}
      @click=${() => this.#choose(open)}
    >
      <span>${name}</span>
    </button>`;
  }

  #choose(open: readonly string[]): void {
    this.dispatchEvent(new GateSetEvent(open));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-drop-list': DropList;
  }
}
