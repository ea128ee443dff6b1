// A box as high as what lies in it, which the page need not lay out anew when that changes: its height
// is given. Most changes of words and figures leave it as it is; it grows a frame after its content has,
// and shrinks when changes have stopped following one another, so that what lies below doesn't jump to
// and fro while a gate moves. Where it becomes wider or narrower, it follows at once.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { stillness } from '../stillness.ts';
import { baseStyles } from '../styles/base.styles.ts';

/**
 * @element dc-steady-box
 * @slot - one element without margins of its own
 */
@customElement('dc-steady-box')
export class SteadyBox extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
      }

      @media screen {
        :host([steady]) {
          contain: size layout style;
          block-size: var(--dc-steady-size);
        }
      }
    `,
  ];

  #frame = 0;
  /** What it holds, and what its content needs, which may be less [px]. */
  #size: number | undefined;
  #needed = 0;
  /** How wide it was when its height was last given [px]. */
  #width: number | undefined;
  readonly #observer = new ResizeObserver(([entry]) => {
    const box = entry?.borderBoxSize[0];
    if (!box) return;
    const { blockSize: size, inlineSize: width } = box;
    this.#needed = size;
    // At the next frame: a page that grows while sizes are told would have to tell them again.
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => {
      const isAtOnce = this.#size === undefined || size > this.#size || width !== this.#width;
      this.#width = width;
      if (isAtOnce) this.#hold();
      else if (size < this.#size!) stillness.afterChange(this.#hold);
    });
  });

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer.disconnect();
    cancelAnimationFrame(this.#frame);
    stillness.forget(this.#hold);
  }

  protected override render(): TemplateResult {
    return html`<slot @slotchange=${(event: Event) => this.#watch(event)}></slot>`;
  }

  #watch(event: Event): void {
    this.#observer.disconnect();
    const [content] = (event.target as HTMLSlotElement).assignedElements();
    if (content) this.#observer.observe(content);
  }

  readonly #hold = (): void => {
    if (this.#needed === this.#size) return;
    this.#size = this.#needed;
    this.style.setProperty('--dc-steady-size', `${this.#size}px`);
    this.toggleAttribute('steady', true);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-steady-box': SteadyBox;
  }
}
