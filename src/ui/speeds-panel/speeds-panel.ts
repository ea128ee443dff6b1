// The speed at each drop of the session, before and after the last change.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { PlotTable } from '../../plot/plot-table.ts';
import type { Session } from '../../state/session.ts';
import { type SpeedsView, speedsView } from '../../state/speeds-view.ts';
import '../plot-figure/plot-tools.ts';
import { SessionController } from '../session-controller.ts';
import '../speeds-plot/speeds-plot.ts';
import '../steady-box/steady-box.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { partStyles } from '../styles/part.styles.ts';
import { verdictWord } from '../verdict/verdict-word.ts';

/** @element dc-speeds-panel */
@customElement('dc-speeds-panel')
export class SpeedsPanel extends LitElement {
  static override styles = [baseStyles, buttonStyles, partStyles];

  readonly #session = new SessionController(this, readSpeeds, { turn: 4 });
  /** What is written of the speeds, which has a turn of its own. */
  readonly #written = new SessionController(this, readView, { turn: 1 });

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { view, session } = read;
    const written = this.#written.value ?? view;
    return html`<section aria-labelledby="title">
      <header>
        <h2 id="title">Speed at each drop</h2>
        ${
          view.hasFormer
            ? html`<button type="button" @click=${() => session.dismissFormer()}>
                <span>Clear the former speeds</span>
              </button>`
            : nothing
        }
      </header>
      <dc-steady-box>
        <div class="picture">
          <p class="words">${written.sentence}</p>
          <dc-speeds-plot
            label="Speed at each drop. ${written.sentence}"
            .units=${read.units}
            .view=${view}
            .written=${written.rows}
            .selected=${read.selected}
          ></dc-speeds-plot>
        </div>
      </dc-steady-box>
      <dc-plot-tools
        label="speed at each drop"
        file="speed-at-each-drop"
        .table=${() => tableOf(view)}
        .picture=${() => this.renderRoot.querySelector('dc-speeds-plot')?.picture}
      ></dc-plot-tools>
    </section>`;
  }
}

function readSpeeds(session: Session) {
  const selection = session.selection.value;
  return {
    session,
    units: session.units.value,
    selected: selection?.kind === 'drop' ? selection.id : undefined,
    view: readView(session),
  };
}

function readView({ shop, shownReport, report, former, units }: Session): SpeedsView {
  return speedsView(shop.value, shownReport.value, report.value, former.value, units.value);
}

function tableOf({ rows, unit, hasFormer }: SpeedsView): PlotTable {
  const former = hasFormer ? [{ name: 'own pipe before', unit }] : [];
  return {
    caption: 'Speed at each drop',
    columns: [
      { name: 'drop' },
      { name: 'own pipe', unit },
      ...former,
      { name: 'slowest on its way', unit },
      { name: 'where that is' },
      { name: 'verdict' },
    ],
    rows: rows.map(({ drop, former: then }) => [
      drop.name,
      drop.speed?.shown.number ?? '–',
      ...(hasFormer ? [then?.speed?.shown.number ?? '–'] : []),
      drop.slowest?.shown.number ?? drop.speed?.shown.number ?? '–',
      drop.slowest?.name ?? (drop.speed ? 'its own pipe' : ''),
      verdictWord(drop.verdict),
    ]),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-speeds-panel': SpeedsPanel;
  }
}
