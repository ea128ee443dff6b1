// The run as an outline. Each row is a button that opens the form of its drop or section beneath it;
// arrow keys go from row to row, Home and End to the ends.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { OutlineRow } from '../../state/run-editor/outline.ts';
import type { Part } from '../../state/selected-part.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { PartEvent } from './run-outline-events.ts';
import { runOutlineStyles } from './run-outline.styles.ts';

/**
 * @element dc-run-outline
 * @slot - the form of the open row
 * @fires dc-part - a row was opened or shut
 */
@customElement('dc-run-outline')
export class RunOutline extends LitElement {
  static override styles = [baseStyles, runOutlineStyles];

  @property({ attribute: false }) rows: readonly OutlineRow[] = [];
  @property({ attribute: false }) openPart: Part | undefined;

  /** Key of the row that the Tab key comes to. */
  @state() private current = '';

  protected override render(): TemplateResult {
    const keys = this.rows.map(keyOf);
    const open = this.openPart && keyOf(this.openPart);
    const tabbed = [this.current, open, keys[0]].find((key) => key && keys.includes(key));
    return html`<ul role="list" @keydown=${(event: KeyboardEvent) => this.#onKey(event)}>
      ${repeat(this.rows, keyOf, (row) => this.#row(row, keyOf(row) === open, keyOf(row) === tabbed))}
      <li class="rest" role="presentation"></li>
    </ul>`;
  }

  protected override updated(): void {
    this.style.setProperty('--rows', String(this.rows.length));
  }

  /** Puts the focus on the row of a part. */
  focusPart(part: Part): void {
    this.current = keyOf(part);
    const button = this.#buttonOf(this.current);
    if (button) button.focus();
    else void this.updateComplete.then(() => this.#buttonOf(keyOf(part))?.focus());
  }

  #row(row: OutlineRow, isOpen: boolean, isTabbed: boolean): TemplateResult {
    const { kind, name, facts, joins, depth, isBranch, isEnd } = row;
    const rails = Array.from({ length: depth }, () => html`<i class="rail"></i>`);
    const spot = ['spot', isEnd ? 'end' : '', isBranch ? 'joins' : ''].join(' ');
    return html`<li>
      <button
        type="button"
        class=${`row ${kind}`}
        data-key=${keyOf(row)}
        tabindex=${isTabbed ? 0 : -1}
        aria-expanded=${isOpen ? 'true' : 'false'}
        @click=${() => this.#toggle(row, isOpen)}
        @focus=${() => {
          this.current = keyOf(row);
        }}
      >
        <span class="rails" aria-hidden="true">${rails}<i class=${spot}></i></span>
        <span class="words">
          <span class="name">${name}</span>
          <span class="facts">${facts}${joins === '' ? nothing : html` · ${joins}`}</span>
          ${depth === 0 ? nothing : html`<span class="for-ears">, branch of level ${depth}</span>`}
        </span>
      </button>
      ${isOpen ? html`<div class="form"><slot></slot></div>` : nothing}
    </li>`;
  }

  #toggle({ kind, id }: OutlineRow, isOpen: boolean): void {
    this.dispatchEvent(new PartEvent(isOpen ? undefined : { kind, id }));
  }

  #onKey(event: KeyboardEvent): void {
    const key = (event.target as HTMLElement).dataset['key'];
    const at = this.rows.findIndex((row) => keyOf(row) === key);
    if (at === -1 || event.altKey || event.ctrlKey || event.metaKey) return;
    const next = { ArrowUp: at - 1, ArrowDown: at + 1, Home: 0, End: this.rows.length - 1 }[
      event.key
    ];
    const row = this.rows[next ?? -1];
    if (next === undefined) return;
    event.preventDefault();
    if (row) this.#buttonOf(keyOf(row))?.focus();
  }

  #buttonOf(key: string): HTMLButtonElement | undefined {
    const rows = this.renderRoot.querySelectorAll<HTMLButtonElement>('button.row');
    return [...rows].find(({ dataset }) => dataset['key'] === key);
  }
}

function keyOf({ kind, id }: Part): string {
  return `${kind} ${id}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-outline': RunOutline;
  }
}
