// The whole of what is shown: the open shop, or the list of shops, or the start of a new one; above
// it a line where there is something to say. A shop's file may be dropped anywhere.

import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { follow } from '../../state/follow.ts';
import type { Notice, OpenShop, Shelf } from '../../state/shelf.ts';
import type { Shelved } from '../../state/shelved.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../notice-line/notice-line.ts';
import type { ShelfEvent, ShelfWish } from '../shop-list/shelf-event.ts';
import '../shop-page/shop-page.ts';
import type { StartEvent } from '../start-shop/start-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { saveFile } from './save-file.ts';

/** What the desk reads of the shelf. */
interface DeskView {
  readonly open: OpenShop;
  readonly name: string;
  readonly shops: readonly Shelved[];
  readonly notice: Notice | undefined;
  readonly units: UnitSystem;
}

/** @element dc-shop-desk */
@customElement('dc-shop-desk')
export class ShopDesk extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        min-block-size: 100vh;
      }

      dc-notice-line,
      .sheet {
        display: block;
        max-inline-size: 1640px;
        margin-inline: auto;
        padding-inline: 32px;
      }

      .sheet {
        padding-block: 8px 48px;
      }

      :host([receiving]) {
        outline: 3px dashed var(--dc-air);
        outline-offset: -6px;
      }

      @media (max-width: 599px) {
        dc-notice-line,
        .sheet {
          padding-inline: 16px;
        }
      }
    `,
  ];

  @property({ attribute: false }) shelf: Shelf | undefined;

  /** Whether shops outlast the page in this browser. */
  @property({ type: Boolean }) kept = false;

  /** Whether a file is held over the page. */
  @property({ type: Boolean, reflect: true }) receiving = false;

  @state() private showing: 'shop' | 'list' | 'start' = 'shop';

  #view: DeskView | undefined;
  #unfollow: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('dragover', this.#onDragOver);
    addEventListener('dragleave', this.#onDragLeave);
    addEventListener('drop', this.#onDrop);
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('dragover', this.#onDragOver);
    removeEventListener('dragleave', this.#onDragLeave);
    removeEventListener('drop', this.#onDrop);
    this.#unfollow?.();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('shelf')) this.#follow();
  }

  protected override render(): TemplateResult {
    const view = this.#view;
    if (!view) return html`${nothing}`;
    return html`<div @dc-shelf=${(event: ShelfEvent) => this.#onWish(event.wish)}>
      <dc-notice-line
        .notice=${view.notice}
        @dc-dismiss=${() => this.shelf?.dismiss()}
      ></dc-notice-line>
      ${this.#shown(view)}
    </div>`;
  }

  #shown(view: DeskView): TemplateResult {
    switch (this.showing) {
      case 'shop':
        return html`<dc-shop-page .session=${view.open.session}></dc-shop-page>`;
      case 'list':
        return html`<main class="sheet">
          <dc-shop-list
            .shops=${view.shops}
            .open=${view.open.id}
            .openName=${view.name}
            .kept=${this.kept}
          ></dc-shop-list>
        </main>`;
      case 'start':
        return html`<main class="sheet">
          <dc-start-shop
            .units=${view.units}
            @dc-start=${({ shop }: StartEvent) => {
              this.shelf?.add(shop);
              this.#show('shop');
            }}
          >
            <button slot="cancel" type="button" @click=${() => this.#show('shop')}>
              <span>Cancel, back to ${view.name}</span>
            </button>
          </dc-start-shop>
        </main>`;
      default:
        return this.showing satisfies never;
    }
  }

  #follow(): void {
    this.#unfollow?.();
    const { shelf } = this;
    if (!shelf) return;
    this.#unfollow = follow(
      () => ({
        open: shelf.open.value,
        name: shelf.open.value.session.shop.value.name,
        shops: shelf.shops.value,
        notice: shelf.notice.value,
        units: shelf.units.value,
      }),
      (view) => {
        this.#view = view;
        this.requestUpdate();
      },
    );
  }

  #show(what: 'shop' | 'list' | 'start'): void {
    if (what === 'list') void import('../shop-list/shop-list.ts');
    if (what === 'start') void import('../start-shop/start-shop.ts');
    if (what !== this.showing) scrollTo(0, 0);
    this.showing = what;
  }

  #onWish(wish: ShelfWish): void {
    const { shelf } = this;
    if (!shelf) return;
    switch (wish.kind) {
      case 'list':
      case 'start':
        this.#show(wish.kind);
        return;
      case 'back':
        this.#show('shop');
        return;
      case 'demo':
        shelf.openDemo();
        this.#show('shop');
        return;
      case 'open':
        shelf.openKept(wish.id);
        this.#show('shop');
        return;
      case 'file':
        void this.#openFile(wish.file);
        return;
      case 'rename':
        shelf.rename(wish.id, wish.name);
        return;
      case 'duplicate':
        shelf.duplicate(wish.id);
        return;
      case 'remove':
        shelf.remove(wish.id);
        return;
      case 'download': {
        const file = shelf.file(wish.id);
        if (file) saveFile(file);
        return;
      }
      default:
        wish satisfies never;
    }
  }

  async #openFile(file: File): Promise<void> {
    const before = this.shelf?.open.peek();
    this.shelf?.addFile({ name: file.name, text: await file.text() });
    if (this.shelf?.open.peek() !== before) this.#show('shop');
    else scrollTo(0, 0);
  }

  readonly #onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    this.receiving = true;
  };

  readonly #onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.receiving = false;
  };

  readonly #onDrop = (event: DragEvent): void => {
    this.receiving = false;
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void this.#openFile(file);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-shop-desk': ShopDesk;
  }
}
