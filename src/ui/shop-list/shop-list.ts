// All shops of this browser: open one, name it, copy it, save it as a file, delete it; start another.
// (A little over 200 lines: each of these is one button of the list.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { ShopVersion } from '../../shop/store/shop-store.ts';
import { type Shelved, shelvedName } from '../../state/shelved.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { sheetStyles } from '../styles/sheet.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { ShelfEvent, type ShelfWish } from './shelf-event.ts';
import { shopListStyles } from './shop-list.styles.ts';

/** Problems of an unreadable record that are listed; its file tells the rest. */
const MOST_PROBLEMS = 5;

/** Told by its address, so that nothing is fetched until it is wanted. */
const TAKE_ALONG = html`<p>
  <a href="./dropcurve.html" download="dropcurve.html">Download the whole page as one file</a>: it
  opens from a disk or a stick, without a network. Shops move there and back as files.
</p>`;

/**
 * @element dc-shop-list
 * @fires dc-shelf - something is wanted of the shelf
 */
@customElement('dc-shop-list')
export class ShopList extends LitElement {
  static override styles = [baseStyles, buttonStyles, sheetStyles, shopListStyles];

  @property({ attribute: false }) shops: readonly Shelved[] = [];

  /** Id of the shop that is open. */
  @property() open = '';

  /** Name of the shop that is open. */
  @property() openName = '';

  /** Whether shops outlast the page in this browser. */
  @property({ type: Boolean }) kept = false;

  /** Name of the file that the open shop is saved to after each edit; empty where there is none. */
  @property() savedTo = '';

  /** Finds the earlier versions of a shop. */
  @property({ attribute: false }) versions: (id: string) => Promise<readonly ShopVersion[]> =
    async () => [];

  /** Ids of the shops whose earlier versions are shown. */
  @state() private unfolded: readonly string[] = [];

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
  }

  protected override render(): TemplateResult {
    const isListed = this.shops.some(({ record }) => record.id === this.open);
    return html`<h1 tabindex="-1">Shops</h1>
      <p>
        ${
          this.kept
            ? 'They are kept in this browser, on this device, and nowhere else. Save a file to have one elsewhere too.'
            : 'This browser keeps nothing: they last while the page is open. Save a file to have one afterwards.'
        }
      </p>
      <div class="actions">
        ${this.#button('Start my own', { kind: 'start' })}
        ${this.#button('Open the demo', { kind: 'demo' })}
        <label class="file"
          ><span>Open a file</span
          ><input
            class="for-ears"
            type="file"
            accept=".json,application/json"
            @change=${(event: Event) => this.#onFile(event)}
        /></label>
        ${this.shops.length > 1 ? this.#button('Save all in one file', { kind: 'download all' }) : nothing}
        ${isListed ? nothing : this.#button(`Save “${this.openName}” as a file`, { kind: 'download', id: this.open })}
      </div>
      <ul role="list">
        ${repeat(
          this.shops,
          ({ record }) => record.id,
          (entry) => this.#entry(entry),
        )}
      </ul>
      ${
        this.shops.length === 0
          ? html`<p>None is kept yet. The demo is kept once you change something in it.</p>`
          : nothing
      }
      ${location.protocol === 'file:' ? nothing : TAKE_ALONG}
      <div class="actions">${this.#button(`Back to ${this.openName}`, { kind: 'back' })}</div>`;
  }

  #entry(entry: Shelved): TemplateResult {
    const { id } = entry.record;
    const name = shelvedName(entry);
    const isOpen = id === this.open;
    return html`<li aria-current=${isOpen ? 'true' : 'false'}>
      <div>${entry.kind === 'shop' ? this.#shop(entry, name, isOpen) : this.#unreadable(entry, name)}</div>
      <div class="actions">
        ${
          entry.kind === 'unreadable'
            ? nothing
            : html`${this.#button('Open', isOpen ? { kind: 'back' } : { kind: 'open', id }, name)}
            ${this.#button('Duplicate', { kind: 'duplicate', id }, name)}`
        }
        ${this.#button('Save as a file', { kind: 'download', id }, name)}
        ${entry.kind === 'shop' ? this.#button('Copy a link', { kind: 'link', id }, name) : nothing}
        ${isOpen ? this.#inPlace() : nothing}
        ${this.#button('Delete', { kind: 'remove', id }, name)}
      </div>
      ${this.#history(entry, name)}
    </li>`;
  }

  #inPlace(): TemplateResult | typeof nothing {
    if (this.savedTo !== '') {
      return this.#button(`Stop saving to ${this.savedTo}`, { kind: 'stop saving' });
    }
    return 'showSaveFilePicker' in globalThis
      ? this.#button('Keep saving to a file', { kind: 'save in place' })
      : nothing;
  }

  #history({ record: { id, document } }: Shelved, name: string): TemplateResult {
    const isOpen = this.unfolded.includes(id);
    return html`<details @toggle=${(event: ToggleEvent) => this.#onToggle(event, id)}>
      <summary><span>Earlier versions<span class="for-ears"> of ${name}</span></span></summary>
      ${
        isOpen
          ? html`<dc-version-list
            .shop=${id}
            .now=${document}
            .versions=${() => this.versions(id)}
          ></dc-version-list>`
          : nothing
      }
    </details>`;
  }

  #onToggle(event: ToggleEvent, id: string): void {
    const others = this.unfolded.filter((each) => each !== id);
    if (event.newState !== 'open') {
      this.unfolded = others;
      return;
    }
    void import('../version-list/version-list.ts');
    this.unfolded = [...others, id];
  }

  #shop(entry: Extract<Shelved, { kind: 'shop' }>, name: string, isOpen: boolean): TemplateResult {
    const { drops, collector } = entry.shop;
    const { id } = entry.record;
    return html`<dc-text-field
        label="Name"
        .value=${name}
        @dc-text=${({ value }: TextEvent) => value !== undefined && this.#send({ kind: 'rename', id, name: value })}
      ></dc-text-field>
      <p class="about">
        ${isOpen ? 'Open now · ' : ''}${drops.length === 1 ? '1 drop' : `${drops.length} drops`} ·
        ${collector.curve.name} · changed ${dayOf(entry.record.written)}
      </p>`;
  }

  #unreadable(entry: Extract<Shelved, { kind: 'unreadable' }>, name: string): TemplateResult {
    return html`<b>${name}</b>
      <p class="about">Can’t be opened. It was left as it was found:</p>
      <p class="wrong">
        ${entry.problems.slice(0, MOST_PROBLEMS).map(({ place, message }) => html`${place} ${message}<br />`)}
      </p>`;
  }

  #button(words: string, wish: ShelfWish, name?: string): TemplateResult {
    return html`<button
      type="button"
      aria-label=${name === undefined ? nothing : `${words}: ${name}`}
      @click=${() => this.#send(wish)}
    >
      <span>${words}</span>
    </button>`;
  }

  #onFile(event: Event): void {
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (file) this.#send({ kind: 'file', file });
    input.value = '';
  }

  #send(wish: ShelfWish): void {
    this.dispatchEvent(new ShelfEvent(wish));
  }
}

function dayOf(written: number): string {
  return new Date(written).toLocaleDateString(undefined, { dateStyle: 'medium' });
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-shop-list': ShopList;
  }
}
