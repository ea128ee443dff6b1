// The whole of what is shown: the open shop, or the list of shops, or the start of a new one; above
// it a line where there is something to say. A shop's file may be dropped anywhere. (A little over 200
// lines: three views, and all that leads from one to another.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ShopVersion } from '../../shop/store/shop-store.ts';
import { familyOf, type ShopVariant } from '../../state/decisions/family.ts';
import { follow } from '../../state/follow.ts';
import type { Notice } from '../../state/notice.ts';
import type { OpenShop } from '../../state/open-shop.ts';
import type { Shelf } from '../../state/shelf.ts';
import type { Shelved } from '../../state/shelved.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../notice-line/notice-line.ts';
import type { ShelfEvent, ShelfWish } from '../shop-list/shelf-event.ts';
import '../shop-page/shop-page.ts';
import type { StartEvent } from '../start-shop/start-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { FileDrop } from './file-drop.ts';
import { grantWish } from './grant-wish.ts';
import { copyLink, openFile } from './files-and-links.ts';
import type { SavedFile } from './save-in-place.ts';
import { shopDeskStyles } from './shop-desk.styles.ts';

/** What the desk reads of the shelf. */
interface DeskView {
  readonly open: OpenShop;
  readonly name: string;
  readonly shops: readonly Shelved[];
  readonly family: readonly ShopVariant[];
  readonly notice: Notice | undefined;
  readonly units: UnitSystem;
}

/** @element dc-shop-desk */
@customElement('dc-shop-desk')
export class ShopDesk extends LitElement {
  static override styles = [baseStyles, buttonStyles, shopDeskStyles];

  @property({ attribute: false }) shelf: Shelf | undefined;

  /** Whether shops outlast the page in this browser. */
  @property({ type: Boolean }) kept = false;

  /** Whether a file is held over the page. */
  @property({ type: Boolean, reflect: true }) receiving = false;

  @state() private showing: 'shop' | 'list' | 'start' = 'shop';

  /** The file that the shop of this id is saved to after each edit. */
  @state() private savedTo: (SavedFile & { readonly id: string }) | undefined;

  #view: DeskView | undefined;
  #unfollow: (() => void) | undefined;

  constructor() {
    super();
    this.addController(
      new FileDrop({
        over: (isOver) => {
          this.receiving = isOver;
        },
        dropped: (file) => void this.#openFile(file),
      }),
    );
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
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
        return html`<dc-shop-page
          .session=${view.open.session}
          .variants=${view.family}
        ></dc-shop-page>`;
      case 'list':
        return html`<main class="sheet">
          <dc-shop-list
            .shops=${view.shops}
            .open=${view.open.id}
            .openName=${view.name}
            .kept=${this.kept}
            .versions=${this.#versions}
            .savedTo=${this.savedTo?.id === view.open.id ? this.savedTo.name : ''}
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
        family: familyOf(shelf.shops.value, {
          id: shelf.open.value.id,
          shop: shelf.open.value.session.shop.value,
        }),
        notice: shelf.notice.value,
        units: shelf.units.value,
      }),
      (view) => {
        this.#view = view;
        this.requestUpdate();
      },
    );
  }

  readonly #versions = async (id: string): Promise<readonly ShopVersion[]> =>
    (await this.shelf?.versions(id)) ?? [];

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
      case 'file':
        void this.#openFile(wish.file);
        return;
      case 'link':
        void copyLink(shelf, wish.id).then(() => scrollTo(0, 0));
        return;
      case 'save in place':
        void this.#saveInPlace(shelf);
        return;
      case 'stop saving':
        this.#stopSaving();
        return;
      case 'demo':
      case 'open':
      case 'rename':
      case 'variant':
      case 'duplicate':
      case 'remove':
      case 'restore':
      case 'download':
      case 'download all':
      case 'download version':
        if (grantWish(shelf, wish) === 'show the shop') this.#show('shop');
        return;
      default:
        wish satisfies never;
    }
  }

  async #openFile(file: File): Promise<void> {
    const { shelf } = this;
    if (!shelf) return;
    const before = shelf.open.peek();
    await openFile(shelf, file);
    if (shelf.open.peek() !== before) this.#show('shop');
    else scrollTo(0, 0);
  }

  async #saveInPlace(shelf: Shelf): Promise<void> {
    const { saveInPlace } = await import('./save-in-place.ts');
    const open = shelf.open.peek();
    const file = await saveInPlace(open, (notice) => {
      this.#stopSaving();
      shelf.say(notice);
    });
    if (!file) return;
    this.#stopSaving();
    this.savedTo = { ...file, id: open.id };
  }

  #stopSaving(): void {
    this.savedTo?.stop();
    this.savedTo = undefined;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-shop-desk': ShopDesk;
  }
}
