// Where this work can hurt, said once, at the foot of the page.
//
// 1. IARC Monographs 62 and 100C: wood dust, group 1. 2. NFPA 660 (which holds former 664):
//    combustible dust in wood processing. Both from memory, unverified.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-cautions */
@customElement('dc-cautions')
export class Cautions extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font-size: var(--dc-small);
        line-height: 1.25rem;
      }

      h2 {
        margin: 0 0 8px;
        font-size: var(--dc-text);
        font-weight: 600;
      }

      ul {
        columns: 3 17.5rem;
        column-gap: 32px;
        margin: 0;
        padding: 0;
        list-style: none;
      }

      li {
        break-inside: avoid;
        margin: 0 0 8px;
      }

      b {
        font-weight: 600;
      }
    `,
  ];

  /** Draws without waiting for its turn. */
  drawAtOnce(): void {
    this.performUpdate();
  }

  protected override render(): TemplateResult {
    return html`<h2>Before you build on these numbers</h2>
      <ul>
        <li><b>Wood dust harms lungs</b> and can cause cancer. A speed worked out here does not show that the air you breathe is clean.</li>
        <li><b>Wood dust burns</b>, and dust suspended in a collector or a duct can explode. Sparks, hot metal and large collectors need expert advice.</li>
        <li><b>Plastic pipe gathers static charge.</b> It can shock you, and whether it can light dust depends on the case.</li>
        <li><b>Electrical work</b> on motors, plugs and starters belongs to someone licensed for it.</li>
        <li><b>This is an aid to judgement</b>, not a code-compliance certificate. Local codes and licensed practice come first.</li>
        <li><b>Measure what you built.</b> Real pipes leak, real filters clog, and published coefficients differ from one another.</li>
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-cautions': Cautions;
  }
}
