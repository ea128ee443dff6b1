// What the verdicts mean, with the numbers they turn on, for whoever meets them for the first time.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SpeedRange } from '../../plot/speed-scale.ts';
import type { Verdict } from '../../shop/verdict.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { unbroken } from '../unbroken.ts';
import '../verdict/verdict.ts';

/** @element dc-words-key */
@customElement('dc-words-key')
export class WordsKey extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        margin-block-start: 12px;
        font-size: var(--dc-small);
        line-height: 1.125rem;
      }

      dl {
        display: grid;
        grid-template-columns: max-content minmax(0, 1fr);
        gap: 4px 16px;
        max-inline-size: 72ch;
        margin: 0;
      }

      dd {
        margin: 0;
        color: var(--dc-ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) range: SpeedRange = { low: 17.78, high: 22.86 };
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const low = formatQuantity('velocity', this.units, this.range.low).text;
    const high = formatQuantity('velocity', this.units, this.range.high).text;
    return html`<dl>
      ${meaning('settles', `Somewhere on its way the air is slower than ${low}. Chips lie down there and plug the pipe.`)}
      ${meaning('short', 'The machine gets less air than it needs to catch its dust.')}
      ${meaning('tight', `Its own pipe runs faster than ${high}: it is small for this air and holds the collector back.`)}
      ${meaning('carries', 'Enough air, and fast enough in every pipe on the way.')}
    </dl>`;
  }
}

function meaning(verdict: Verdict, words: string): TemplateResult {
  return html`<dt><dc-verdict verdict=${verdict}></dc-verdict></dt>
    <dd>${unbroken(words)}</dd>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-words-key': WordsKey;
  }
}
