// The part of the page where the run is edited, folded to one line of its figures. The editor is
// fetched when it is unfolded for the first time.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { runSummary } from '../../state/run-editor/run-summary.ts';
import '../folded-part/folded-part.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-run-part */
@customElement('dc-run-part')
export class RunPart extends LitElement {
  static override styles = baseStyles;

  readonly #summary = new SessionController(
    this,
    ({ shop, units }) => runSummary(shop.value, units.value),
    { turn: 1 },
  );

  protected override render(): TemplateResult {
    const summary = this.#summary.value;
    if (summary === undefined) return html`${nothing}`;
    return html`<dc-folded-part
      heading="The run"
      figures=${summary}
      @dc-unfold=${() => void import('../run-editor/run-editor.ts')}
    >
      <dc-run-editor></dc-run-editor>
    </dc-folded-part>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-part': RunPart;
  }
}
