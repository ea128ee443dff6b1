// Undo and redo: two buttons, and the keys that everybody knows.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { historyWish } from './history-keys.ts';

/** @element dc-history-buttons */
@customElement('dc-history-buttons')
export class HistoryButtons extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: flex;
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  readonly #session = new SessionController(this, (session) => ({
    session,
    canUndo: session.canUndo.value,
    canRedo: session.canRedo.value,
  }));

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('keydown', this.#onKey);
  }

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    const { session, canUndo, canRedo } = view;
    return html`<button
        type="button"
        aria-keyshortcuts="Control+Z Meta+Z"
        ?disabled=${!canUndo}
        @click=${() => session.undo()}
      >
        <span>Undo</span></button
      ><button
        type="button"
        aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z Control+Y"
        ?disabled=${!canRedo}
        @click=${() => session.redo()}
      >
        <span>Redo</span>
      </button>`;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const wish = historyWish(event);
    const session = this.#session.value?.session;
    if (wish === undefined || session === undefined) return;
    event.preventDefault();
    if (wish === 'undo') session.undo();
    else session.redo();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-history-buttons': HistoryButtons;
  }
}
