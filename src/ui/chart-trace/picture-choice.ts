// The way in for the picture of a chart: a file that is chosen, dropped or pasted, and what was wrong
// with it.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { ACCEPTED, openPicture } from './open-picture.ts';
import { PictureEvent } from './picture-event.ts';

/**
 * @element dc-picture-choice
 * @fires dc-picture - a picture was opened
 */
@customElement('dc-picture-choice')
export class PictureChoice extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }

      .choose {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 12px;
      }

      label {
        display: inline-flex;
        align-items: center;
        min-block-size: 44px;
        font-size: var(--dc-small);
      }

      input[type='file'] {
        min-block-size: 44px;
        max-inline-size: 100%;
        padding-block: 6px;
        color: var(--dc-ink);
        font: inherit;
        font-size: var(--dc-small);
      }

      input::file-selector-button {
        min-block-size: 32px;
        margin-inline-end: 12px;
        font: inherit;
      }
    `,
  ];

  @state() private problem = '';

  /** Counts the files, so that one which opens late does not take the place of a later one. */
  #latest = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('paste', this.#onPaste);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('paste', this.#onPaste);
  }

  /** Opens a file that came in another way, such as by being dropped nearby. */
  take(file: File): void {
    void this.#open(file);
  }

  protected override render(): TemplateResult {
    return html`<div class="choose">
        <label for="file">Picture of the chart</label>
        <input
          id="file"
          type="file"
          accept=${ACCEPTED}
          aria-describedby="how"
          @change=${(event: Event) => this.#onFile(event)}
        />
      </div>
      <p class="hint" id="how">
        A PNG, JPEG or WebP: choose it, drop it here, or paste it. Of a PDF, take a picture of the page
        on your screen and paste that. It stays on this device and is not kept.
      </p>
      ${this.problem === '' ? nothing : html`<p class="problem" role="alert">${this.problem}</p>`}`;
  }

  #onFile(event: Event): void {
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (file) void this.#open(file);
  }

  /** A picture that is pasted while this is unfolded is meant for it; a text is somebody else's. */
  readonly #onPaste = (event: ClipboardEvent): void => {
    const data = event.clipboardData;
    const file = data?.files[0];
    if (!file || event.defaultPrevented || !this.checkVisibility()) return;
    if (data.types.includes('text/plain')) return;
    event.preventDefault();
    void this.#open(file);
  };

  async #open(file: File): Promise<void> {
    const number = ++this.#latest;
    const opened = await openPicture(file);
    if (number !== this.#latest || !this.isConnected) {
      if (opened.kind === 'open') URL.revokeObjectURL(opened.image.url);
      return;
    }
    this.problem = opened.kind === 'refused' ? opened.words : '';
    if (opened.kind === 'open') this.dispatchEvent(new PictureEvent(opened.image));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-picture-choice': PictureChoice;
  }
}
