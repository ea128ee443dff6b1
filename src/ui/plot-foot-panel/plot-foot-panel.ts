// What stands under the operating plot: the plot's figures, the gates played, and the picture as a
// file. It is apart from the plot, which stays in view on a phone while this scrolls away.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { operatingTable } from '../../plot/operating-table.ts';
import { plotExtent } from '../../plot/plot-extent.ts';
import { travelsOf } from '../../state/gate-positions.ts';
import { systemKnots } from '../../state/plot-view.ts';
import type { Session } from '../../state/session.ts';
import '../gate-play/gate-play.ts';
import '../plot-figure/plot-tools.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/**
 * @element dc-plot-foot-panel
 * @fires dc-gates - the play moves all gates
 */
@customElement('dc-plot-foot-panel')
export class PlotFootPanel extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
    `,
  ];

  /** Finds the operating plot's picture. */
  @property({ attribute: false }) picture: (() => SVGSVGElement | null | undefined) | undefined;

  readonly #session = new SessionController(this, readFoot, { turn: 1 });

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    return html`<dc-plot-tools
      label="operating plot"
      file="operating-plot"
      .table=${view.table}
      .picture=${this.picture}
    >
      <dc-gate-play .drops=${view.drops} .gates=${view.gates} .slow=${view.slow}></dc-gate-play>
    </dc-plot-tools>`;
  }
}

function readFoot(session: Session) {
  const { drops } = session.shop.value;
  const selected = session.selection.value;
  const gates = session.gates.value;
  return {
    drops,
    gates,
    slow: selected?.kind === 'drop' ? selected.id : drops.find(({ id }) => gates.get(id))?.id,
    table: tableOf(session),
  };
}

/** The figures of the gates where they are to stand; computed only while somebody reads them. */
function tableOf(session: Session) {
  const shop = session.shop.value;
  const model = session.model.value;
  const gates = session.gates.value;
  const units = session.units.value;
  return () => {
    const report = session.report.peek();
    const extent = plotExtent(model.curve);
    const travels = travelsOf(shop.drops, gates);
    const lines = {
      curve: model.curve,
      collector: shop.collector.curve.name,
      system: systemKnots(model, travels, report, extent.flow, extent.pressure),
      point: report.operatingPoint ?? undefined,
    };
    return operatingTable(lines, extent.flow, units);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-plot-foot-panel': PlotFootPanel;
  }
}
