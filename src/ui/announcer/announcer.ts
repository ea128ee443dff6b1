// The page's one live region: speaks a text politely once it has stood still for half a second.

import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';

/** How long a text must stand before it is spoken [ms]. */
const STILL_FOR = 500;

/** @element dc-announcer */
@customElement('dc-announcer')
export class Announcer extends LitElement {
  /** What is spoken must not have the page laid out anew, so it lies in a box that depends on nothing. */
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        inline-size: 1px;
        block-size: 1px;
        margin-block-end: -1px;
        contain: strict;
      }
    `,
  ];

  @property() text = '';

  @state() private spoken = '';

  #timer: ReturnType<typeof setTimeout> | undefined;
  #changedAt = 0;
  #first = true;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('text') || this.text === '') return;
    if (this.#first) {
      this.#first = false;
      return;
    }
    this.#changedAt = performance.now();
    this.#timer ??= setTimeout(() => this.#speakIfStill(), STILL_FOR);
  }

  protected override render(): TemplateResult {
    return html`<div class="for-ears" role="status" aria-live="polite">${this.spoken}</div>`;
  }

  /** While the text changes in every frame there is one timer, not one for each change. */
  #speakIfStill(): void {
    const left = this.#changedAt + STILL_FOR - performance.now();
    this.#timer = left > 0 ? setTimeout(() => this.#speakIfStill(), left) : undefined;
    if (this.#timer === undefined) this.spoken = this.text;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-announcer': Announcer;
  }
}
