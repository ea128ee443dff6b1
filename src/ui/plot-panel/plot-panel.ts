// The operating-point plot of the session.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { plotExtent } from '../../plot/plot-extent.ts';
import { travelsOf } from '../../state/gate-positions.ts';
import { systemKnots } from '../../state/plot-view.ts';
import type { Session } from '../../state/session.ts';
import { isSamePlace, markedStates } from '../../state/trail.ts';
import '../operating-plot/operating-plot.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** More states than this would crowd the plot. */
const MOST_MARKED = 8;

/** @element dc-plot-panel */
@customElement('dc-plot-panel')
export class PlotPanel extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
    `,
  ];

  readonly #session = new SessionController(this, readPlot, 'as it can');
  readonly #numbers = new SessionController(this, readNumbers, { turn: 1 });

  /** The plot's picture, to be saved. */
  get picture(): SVGSVGElement | null | undefined {
    return this.renderRoot.querySelector('dc-operating-plot')?.picture;
  }

  protected override render(): TemplateResult {
    const view = this.#session.value;
    const said = this.#numbers.value;
    if (!view || !said) return html`${nothing}`;
    return html`<dc-operating-plot
      .label=${said.label}
      .units=${view.units}
      .curve=${view.curve}
      .collector=${view.collector}
      .system=${view.system}
      .point=${view.point}
      .numbers=${said.point}
      .others=${view.others}
      .trail=${view.trail}
      .instead=${view.instead}
    ></dc-operating-plot>`;
  }
}

function readNumbers(session: Session) {
  return {
    label: `Collector curve and duct curve. ${session.sentence.value}`,
    point: session.shownReport.value.operatingPoint ?? undefined,
  };
}

function readPlot(session: Session) {
  const model = session.model.value;
  const report = session.shownReport.value;
  const shop = session.shop.value;
  const extent = plotExtent(model.curve);
  const travels = travelsOf(shop.drops, session.shownGates.value);
  const point = report.operatingPoint ?? undefined;
  const others = report.crossings.filter(({ flow }) => !point || !isSamePlace({ flow }, point));
  return {
    units: session.units.value,
    curve: model.curve,
    collector: shop.collector.curve.name,
    system: systemKnots(model, travels, report, extent.flow, extent.pressure),
    point,
    others,
    trail: markedStates(session.trail.value, point, MOST_MARKED),
    instead: session.report.value.outcome,
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-plot-panel': PlotPanel;
  }
}
