// The variants that were kept beside a shop, with the shop itself: named, compared, opened, taken over.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { ShopVariant } from '../../state/decisions/family.ts';
import { variantFoot, variantTable } from '../../state/decisions/variant-table.ts';
import { variantTaken } from '../../state/decisions/variants.ts';
import type { Session } from '../../state/session.ts';
import '../answer-table/answer-table.ts';
import { SessionController } from '../session-controller.ts';
import { ShelfEvent, type ShelfWish } from '../shop-list/shelf-event.ts';
import '../study-status/study-status.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { StudyController } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { variantsPanelStyles } from './variants-panel.styles.ts';

/**
 * @element dc-variants-panel
 * @fires dc-shelf - a shop is to be opened, named or deleted
 */
@customElement('dc-variants-panel')
export class VariantsPanel extends LitElement {
  static override styles = [baseStyles, buttonStyles, answerStyles, variantsPanelStyles];

  /** The shops of the family, the open one among them, the first one first. */
  @property({ attribute: false }) variants: readonly ShopVariant[] = [];

  readonly #session = new SessionController(this, (session) => ({
    session,
    units: session.units.value,
  }));
  readonly #study = new StudyController(this, 'alone');
  #asked: readonly ShopVariant[] = [];
  #said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('variants') || this.variants.length < 2) return;
    const isSame =
      this.variants.length === this.#asked.length &&
      this.variants.every(({ shop }, i) => shop === this.#asked[i]!.shop);
    this.#asked = this.variants;
    if (!isSame) this.#study.wish({ shops: this.variants.map(({ shop }) => shop) });
  }

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    if (this.variants.length < 2) {
      return html`<p class="note">
        “Keep beside” in an answer above keeps a variant of this shop here, to be compared with it.
      </p>`;
    }
    return html`<ul role="list">
        ${repeat(
          this.variants,
          ({ id }) => id,
          (variant) => this.#entry(variant, read.session),
        )}
      </ul>
      <p class="said" role="status">${this.#said}</p>
      <dc-study-status
        label="all variants"
        .state=${this.#study.state}
        @dc-study-wish=${({ wish }: StudyWishEvent) => this.#onWish(wish)}
      ></dc-study-status>
      ${this.#tables(read.units)}`;
  }

  #entry(variant: ShopVariant, session: Session): TemplateResult {
    const { id, shop, isOpen } = variant;
    const { name } = shop;
    return html`<li>
      <dc-text-field
        label=${isOpen ? 'Name, open now' : 'Name'}
        .value=${name}
        @dc-text=${({ value }: TextEvent) => value !== undefined && this.#wish({ kind: 'rename', id, name: value })}
      ></dc-text-field>
      <div class="actions" role="group" aria-label=${name}>
        ${
          isOpen
            ? nothing
            : html`${button('Open', name, () => this.#wish({ kind: 'open', id }))}
              ${button('Make it so', name, () => this.#take(variant, session))}
              ${button('Delete', name, () => this.#wish({ kind: 'remove', id }))}`
        }
      </div>
    </li>`;
  }

  #tables(units: Parameters<typeof variantTable>[2]): TemplateResult {
    const { answered } = this.#study;
    const family = this.variants;
    const isOf = answered?.question.shops.every((shop, i) => shop === family[i]?.shop);
    if (!answered || isOf !== true || answered.question.shops.length !== family.length) {
      return html`${nothing}`;
    }
    const drops = variantTable(family, answered.answer, units);
    return html`<div class="tables">
      <dc-answer-table
        sortable
        caption="Each drop alone, in each variant, and what is to be bought"
        .columns=${drops.columns}
        .rows=${drops.rows}
        .foot=${variantFoot(family, answered.answer, units)}
      ></dc-answer-table>
    </div>`;
  }

  /** The open shop becomes what the variant is; one undo takes it back. */
  #take({ shop }: ShopVariant, session: Session): void {
    session.edit((of) => variantTaken(of, shop));
    this.#said = `Done: ${session.shop.peek().name} is as “${shop.name}” now; Undo takes it back.`;
    this.requestUpdate();
  }

  #onWish(wish: 'cancel' | 'again'): void {
    if (wish === 'cancel') this.#study.cancel();
    else void this.#study.ask({ shops: this.variants.map(({ shop }) => shop) });
  }

  #wish(wish: ShelfWish): void {
    this.dispatchEvent(new ShelfEvent(wish));
  }
}

function button(words: string, name: string, act: () => void): TemplateResult {
  return html`<button type="button" aria-label="${words}: ${name}" @click=${act}>
    <span>${words}</span>
  </button>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-variants-panel': VariantsPanel;
  }
}
