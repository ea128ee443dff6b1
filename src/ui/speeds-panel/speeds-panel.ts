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

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { view, session } = read;
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
          <p class="words">${view.sentence}</p>
          <dc-speeds-plot
            label="Speed at each drop. ${view.sentence}"
            .units=${read.units}
            .view=${view}
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
  const units = session.units.value;
  const selection = session.selection.value;
  return {
    session,
    units,
    selected: selection?.kind === 'drop' ? selection.id : undefined,
    view: speedsView(
      session.shop.value,
      session.shownReport.value,
      session.report.value,
      session.former.value,
      units,
    ),
  };
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
