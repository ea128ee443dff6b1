// A verdict on a drop: a shape, a word, and a tone, in this order of importance.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Verdict } from '../../shop/verdict.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { VERDICT_SHAPES } from './verdict-shape.ts';
import { verdictShapeStyles } from './verdict-shape.styles.ts';
import { verdictWord } from './verdict-word.ts';

/** @element dc-verdict */
@customElement('dc-verdict')
export class VerdictMark extends LitElement {
  static override styles = [
    baseStyles,
    verdictShapeStyles,
    css`
      :host {
        display: inline-flex;
        align-items: center;
        gap: 6px;
        white-space: nowrap;
      }

      svg {
        flex: none;
        inline-size: 1rem;
        block-size: 1rem;
      }

      .word.settles,
      .word.short {
        color: var(--dc-duct);
        font-weight: 600;
      }

      .word.tight {
        color: var(--dc-air);
        font-weight: 600;
      }

      .word.shut,
      .word.carries {
        color: var(--dc-ink-soft);
      }
    `,
  ];

  @property() verdict: Verdict = 'shut';

  protected override render(): TemplateResult {
    return html`<svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
        ${VERDICT_SHAPES[this.verdict]}</svg
      ><span class="word ${this.verdict}">${verdictWord(this.verdict)}</span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-verdict': VerdictMark;
  }
}
