// A box as high as what lies in it, which the page need not lay out anew when that changes: its height
// is given, and is given anew a frame after its content has become higher or lower. Most changes of
// words and figures leave it as it is.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
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
  #size: string | undefined;
  readonly #observer = new ResizeObserver(([entry]) => {
    const size = entry?.borderBoxSize[0]?.blockSize;
    if (size === undefined) return;
    // At the next frame: a page that grows while sizes are told would have to tell them again.
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#hold(`${size}px`));
  });

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer.disconnect();
    cancelAnimationFrame(this.#frame);
  }

  protected override render(): TemplateResult {
    return html`<slot @slotchange=${(event: Event) => this.#watch(event)}></slot>`;
  }

  #watch(event: Event): void {
    this.#observer.disconnect();
    const [content] = (event.target as HTMLSlotElement).assignedElements();
    if (content) this.#observer.observe(content);
  }

  #hold(size: string): void {
    if (size === this.#size) return;
    this.#size = size;
    this.style.setProperty('--dc-steady-size', size);
    this.toggleAttribute('steady', true);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-steady-box': SteadyBox;
  }
}
