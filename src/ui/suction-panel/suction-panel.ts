// Where the session's suction goes on the way of one drop: the selected one, or the one that is worst
// off. Choosing another selects it everywhere.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { plotExtent } from '../../plot/plot-extent.ts';
import type { PlotTable } from '../../plot/plot-table.ts';
import type { Session } from '../../state/session.ts';
import { type SuctionView, suctionView } from '../../state/suction-view.ts';
import '../plot-figure/plot-tools.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { partStyles } from '../styles/part.styles.ts';
import '../steady-box/steady-box.ts';
import '../suction-plot/suction-plot.ts';
import { unbroken } from '../unbroken.ts';
import { suctionPanelStyles } from './suction-panel.styles.ts';

/** Value of the choice that follows the gates. */
const WORST_OFF = '';

/** @element dc-suction-panel */
@customElement('dc-suction-panel')
export class SuctionPanel extends LitElement {
  static override styles = [baseStyles, partStyles, suctionPanelStyles];

  readonly #session = new SessionController(this, readSuction, { turn: 3 });
  /** What is written on the way, which has a turn of its own. */
  readonly #written = new SessionController(this, readView, { turn: 0 });

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { view } = read;
    const told = this.#written.value;
    const written = told && told.drop?.id === view.drop?.id ? told : view;
    return html`<section aria-labelledby="title">
      <header>
        <h2 id="title">Where the suction goes</h2>
        ${this.#chooser(view, read.selected)}
      </header>
      <dc-steady-box>
        <div class="picture">
          <p class="words">${unbroken(written.sentence)}</p>
          <dc-suction-plot
            label="Suction from the hood to the collector. ${written.sentence}"
            .units=${read.units}
            .unit=${view.unit}
            .steps=${view.steps}
            .written=${written.steps}
            .end=${read.end}
          ></dc-suction-plot>
        </div>
      </dc-steady-box>
      ${
        view.steps.length === 0
          ? nothing
          : html`<dc-plot-tools
              label="suction along the way"
              file="suction-${view.drop?.id ?? ''}"
              .table=${() => tableOf(view)}
              .picture=${() => this.renderRoot.querySelector('dc-suction-plot')?.picture}
            ></dc-plot-tools>`
      }
    </section>`;
  }

  #chooser({ drops, drop }: SuctionView, selected: string | undefined): TemplateResult {
    const worst = selected === undefined && drop ? `worst off: ${drop.name}` : 'the one worst off';
    return html`<label>
      Drop
      <select @change=${(event: Event) => this.#onChoose(event)}>
        <option value=${WORST_OFF} .selected=${selected === undefined}>${worst}</option>
        ${drops.map(
          ({ id, name, isOpen }) =>
            html`<option value=${id} .selected=${id === selected}>
              ${isOpen ? name : `${name}, shut`}
            </option>`,
        )}
      </select>
    </label>`;
  }

  #onChoose(event: Event): void {
    const { value } = event.currentTarget as HTMLSelectElement;
    this.#session.value?.session.select(
      value === WORST_OFF ? undefined : { kind: 'drop', id: value },
    );
  }
}

function readSuction(session: Session) {
  const view = readView(session);
  return {
    session,
    view,
    units: session.units.value,
    end: plotExtent(session.model.value.curve).pressure,
    selected: session.selection.value === undefined ? undefined : view.drop?.id,
  };
}

function readView({ shop, model, shownReport, selection, units }: Session): SuctionView {
  return suctionView(shop.value, model.value, shownReport.value, selection.value, units.value);
}

function tableOf({ steps, unit, drop }: SuctionView): PlotTable {
  return {
    caption: `Suction on the way of ${drop?.name ?? ''}`,
    columns: [
      { name: 'part' },
      { name: 'lost in it', unit },
      { name: 'share', unit: '%' },
      { name: 'total suction after it', unit },
      { name: 'static suction after it', unit },
    ],
    rows: steps.map(({ words, loss, share, totalText, staticText }) => [
      words,
      loss,
      share.replace('\u2009%', ''),
      totalText,
      staticText,
    ]),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-suction-panel': SuctionPanel;
  }
}
