// The drawing of the session's run of ducts.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { runView, type SectionView } from '../../state/run-view.ts';
import type { Session } from '../../state/session.ts';
import { unitLabel } from '../../units/quantity.ts';
import '../run-drawing/run-drawing.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-run-panel */
@customElement('dc-run-panel')
export class RunPanel extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
    `,
  ];

  readonly #session = new SessionController(this, readRun);

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    return html`<h2 class="for-ears">The run of ducts</h2>
      <dc-run-drawing
      .label=${runWords(view.sections)}
      .speedUnit=${view.speedUnit}
      .sections=${view.sections}
    ></dc-run-drawing>`;
  }
}

function readRun(session: Session) {
  const { shop, model, shownReport, units } = session;
  return {
    sections: runView(shop.value, model.value, shownReport.value, units.value),
    speedUnit: unitLabel('velocity', units.value),
  };
}

/** The drawing in a sentence: how many ducts there are, and which of them want a look. */
function runWords(sections: readonly SectionView[]): string {
  const named = (state: SectionView['state']) =>
    sections.filter((section) => section.state === state).map(({ name }) => name);
  const settles = named('settles');
  const tight = named('tight');
  return [
    `Line drawing of the ducts: ${sections.length} sections.`,
    settles.length > 0 ? `Chips settle in ${settles.join(', ')}.` : '',
    tight.length > 0 ? `Tight: ${tight.join(', ')}.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-panel': RunPanel;
  }
}
