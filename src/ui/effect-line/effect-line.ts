// The effect of what is being changed, in view while it is changed: what the collector gives now, and
// the sentence of the page.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { effectWords } from '../../state/collector/effect-words.ts';
import { SessionController } from '../session-controller.ts';
import '../steady-box/steady-box.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { unbroken } from '../unbroken.ts';

/** @element dc-effect-line */
@customElement('dc-effect-line')
export class EffectLine extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        padding-block: 8px;
        border-block-end: 1px solid var(--dc-rule);
        background: var(--dc-paper);
        font-size: var(--dc-small);
        line-height: 1.25rem;
        font-variant-numeric: tabular-nums;
      }

      p {
        max-inline-size: 110ch;
        margin: 0;
      }

      b {
        font-weight: 600;
      }

      @media (min-width: 37.5em) {
        :host {
          position: sticky;
          inset-block-start: 0;
          z-index: 1;
        }
      }

      @media print {
        :host {
          position: static;
        }
      }
    `,
  ];

  readonly #session = new SessionController(
    this,
    (session) => {
      const shop = session.shop.value;
      const report = session.report.value;
      const before = session.former.value?.report;
      const { air } = session.model.value;
      return {
        effect: effectWords(
          { collector: shop.collector, air, report, before },
          session.units.value,
        ),
        sentence: session.sentence.value,
      };
    },
    { turn: 5 },
  );

  protected override render(): TemplateResult {
    const words = this.#session.value;
    if (!words) return html`${nothing}`;
    return html`<dc-steady-box
      ><div>
        <p><b>${unbroken(words.sentence)}</b></p>
        <p>${unbroken(words.effect)}</p>
      </div></dc-steady-box
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-effect-line': EffectLine;
  }
}
