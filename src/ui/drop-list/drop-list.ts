// The drops of the shop, one row each, with the sets of gates that are used together above them.

import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { DropMotion, DropView } from '../../state/drop-views.ts';
import '../drop-row/drop-row.ts';
import type { GateSetView } from '../gate-sets/gate-sets.ts';
import '../gate-sets/gate-sets.ts';
import '../steady-box/steady-box.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { dropListStyles } from './drop-list.styles.ts';

/**
 * The list of drops.
 *
 * @element dc-drop-list
 * @fires dc-drop-gate - from a row: what is to become of its gate
 * @fires dc-gate-set - a saved set, or "shut all", was chosen
 * @fires dc-save-set - what is open is to be saved under a name
 * @fires dc-remove-set - the set in use is to be taken out
 */
@customElement('dc-drop-list')
export class DropList extends LitElement {
  static override styles = [baseStyles, dropListStyles];

  @property({ attribute: false }) drops: readonly DropView[] = [];
  /** How far each has moved by now; the figures may come a little after it. */
  @property({ attribute: false }) motions: readonly DropMotion[] = [];
  @property({ attribute: false }) sets: readonly GateSetView[] = [];
  /** Whether a gate is open. */
  @property({ type: Boolean }) open = false;

  protected override render(): TemplateResult {
    return html`<h2 class="for-ears">Drops and their gates</h2>
      <dc-gate-sets .sets=${this.sets} .open=${this.open}></dc-gate-sets>
      <div class="head" aria-hidden="true">
        <span>drop</span><span>gate</span><span class="pressed"></span><span class="end">flow</span>
        <span class="speed">speed <i></i> carries</span><span>verdict, slowest pipe</span>
      </div>
      <ul role="list">
        ${repeat(
          this.drops,
          (drop) => drop.id,
          (drop, i) =>
            html`<li><dc-steady-box><dc-drop-row .drop=${drop} .motion=${this.motions[i]}></dc-drop-row></dc-steady-box></li>`,
        )}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-drop-list': DropList;
  }
}
