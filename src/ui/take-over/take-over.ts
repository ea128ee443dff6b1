// Takes a row of an answer over into the shop by one edit, or has it kept beside the shop, and holds
// what came of it.

import { html, nothing, type ReactiveController, type LitElement, type TemplateResult } from 'lit';
import { type Choice, editOf } from '../../shop/decisions/choice.ts';
import type { Session } from '../../state/session.ts';
import { ShelfEvent } from '../shop-list/shelf-event.ts';

/** What a row offers. */
export interface Offer {
  readonly choice: Choice;
  /** What it is, to follow the name of the shop, such as "main of 7 in.". */
  readonly words: string;
}

interface Said {
  readonly kind: 'done' | 'refused';
  readonly words: string;
}

export class TakeOver implements ReactiveController {
  readonly #host: LitElement;
  #said: Said | undefined;

  /** @param host - the panel with the answer */
  constructor(host: LitElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#said = undefined;
  }

  /** A line that says what came of it, spoken too; it needs the answers' styles. */
  get line(): TemplateResult {
    const said = this.#said;
    return html`<p class="said ${said?.kind ?? ''}" role="status">${said?.words ?? nothing}</p>`;
  }

  /**
   * Makes the shop as the offer has it; one undo takes it back.
   *
   * @param session - with the shop
   * @param offer - what is taken over
   */
  make(session: Session, { choice, words }: Offer): void {
    this.#try(() => {
      const [problem] = session.edit(editOf(choice));
      return problem === undefined
        ? { kind: 'done', words: `Done: ${words}; Undo takes it back.` }
        : { kind: 'refused', words: `Not done: ${problem.place} ${problem.message}.` };
    });
  }

  /**
   * Has the shop as the offer has it kept beside this one, which stays as it is.
   *
   * @param session - with the shop
   * @param offer - what is kept
   */
  keep(session: Session, { choice, words }: Offer): void {
    this.#try(() => {
      const shop = editOf(choice)(session.shop.peek());
      this.#host.dispatchEvent(new ShelfEvent({ kind: 'variant', shop, words }));
      return { kind: 'done', words: `Kept beside the shop: ${words}; “Variants” compares it.` };
    });
  }

  /** The shop may have lost what an older answer names. */
  #try(act: () => Said): void {
    try {
      this.#said = act();
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#said = { kind: 'refused', words: `Not done: ${error.message}. The shop has changed.` };
    }
    this.#host.requestUpdate();
  }
}
