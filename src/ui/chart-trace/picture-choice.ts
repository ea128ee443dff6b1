// The way in for the picture of a chart: a file that is chosen, dropped or pasted, which of its pages
// where it has several, and what was wrong with it.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { ChartImage } from './chart-image.ts';
import { ACCEPTED, openPicture } from './open-picture.ts';
import { pageField, readPage } from './page-field.ts';
import type { PdfPages } from './pdf-pages.ts';
import { PictureEvent } from './picture-event.ts';

/**
 * @element dc-picture-choice
 * @fires dc-picture - a picture was opened
 */
@customElement('dc-picture-choice')
export class PictureChoice extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }

      .choose,
      .page {
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

      .page {
        margin-block-start: 8px;
      }

      .page input {
        inline-size: 5rem;
      }

      .page .problem {
        flex-basis: 100%;
      }

      input::file-selector-button {
        min-block-size: 32px;
        margin-inline-end: 12px;
        font: inherit;
      }
    `,
  ];

  /** The picture that is traced; a step back may have led to another page. */
  @property({ attribute: false }) shown: ChartImage | undefined;

  @state() private problem = '';
  @state() private pageProblem = '';
  @state() private isBusy = false;
  /** The file whose pages can be turned. */
  @state() private pages: PdfPages | undefined;

  /** Counts the files, so that one which opens late does not take the place of a later one. */
  #latest = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('paste', this.#onPaste);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('paste', this.#onPaste);
    this.#latest += 1;
    this.pages?.close();
    this.pages = undefined;
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
        A PNG, JPEG, WebP or PDF: choose it, drop it here, or paste it. It stays on this device and is
        not kept.
      </p>
      ${this.#pageField()}
      <p class="hint" role="status">${this.isBusy ? 'It is being opened.' : ''}</p>
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

  #pageField(): TemplateResult | typeof nothing {
    const { pages } = this;
    if (!pages || pages.count < 2) return nothing;
    const page = this.shown?.page ?? 1;
    return pageField({ page, count: pages.count, problem: this.pageProblem }, (words) => {
      const wanted = readPage(words, pages.count);
      this.pageProblem = typeof wanted === 'string' ? wanted : '';
      if (typeof wanted === 'number' && wanted !== page) void this.#turn(pages, wanted);
    });
  }

  async #open(file: File): Promise<void> {
    const opened = await this.#await(openPicture(file), (late) => {
      if (late.kind === 'refused') return;
      URL.revokeObjectURL(late.image.url);
      late.pages?.close();
    });
    if (!opened) return;
    this.problem = opened.kind === 'refused' ? opened.words : '';
    if (opened.kind === 'refused') return;
    this.pages?.close();
    this.pages = opened.pages;
    this.pageProblem = '';
    this.dispatchEvent(new PictureEvent(opened.image));
  }

  async #turn(pages: PdfPages, page: number): Promise<void> {
    const drawing = pages.draw(page).catch(() => undefined);
    const image = await this.#await(drawing, (late) => late && URL.revokeObjectURL(late.url));
    if (pages !== this.pages) return;
    if (image) this.dispatchEvent(new PictureEvent(image));
    else if (!this.isBusy) this.pageProblem = `Page ${page} can’t be drawn. Another one may be.`;
  }

  /** Waits for the latest only; what comes later than something newer is thrown away. */
  async #await<T>(work: Promise<T>, throwAway: (late: T) => void): Promise<T | undefined> {
    const number = ++this.#latest;
    this.isBusy = true;
    const outcome = await work;
    const isLatest = number === this.#latest && this.isConnected;
    if (number === this.#latest) this.isBusy = false;
    if (!isLatest) throwAway(outcome);
    return isLatest ? outcome : undefined;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-picture-choice': PictureChoice;
  }
}
