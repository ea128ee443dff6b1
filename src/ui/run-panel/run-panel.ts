// The drawing of the session's run of ducts. What is selected in it is selected everywhere.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { partReading } from '../../state/part-reading.ts';
import { runShape, runView, type SectionShape, type SectionView } from '../../state/run-view.ts';
import type { Part } from '../../state/selected-part.ts';
import type { Session } from '../../state/session.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel } from '../../units/quantity.ts';
import '../run-drawing/run-drawing.ts';
import '../plot-figure/plot-tools.ts';
import { inTurns } from '../in-turns.ts';
import type { PartEvent } from '../run-editor/run-outline-events.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { runTable } from './run-table.ts';

/** No duct of a shop runs faster, so no speed is written wider [m/s]. */
const WIDEST_SPEED = 40;

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

      dc-run-drawing {
        block-size: var(--dc-run-height, 22.5rem);
      }

      @media print {
        dc-run-drawing {
          block-size: auto;
        }
      }
    `,
  ];

  readonly #read = runReader();
  readonly #session = new SessionController(this, this.#read, { turn: 0 });
  readonly #second = new SessionController(this, this.#read, { turn: 3 });
  readonly #third = new SessionController(this, this.#read, { turn: 5 });

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    const sections = inTurns(
      view.sections,
      this.#second.value?.sections,
      this.#third.value?.sections,
    );
    const drops = sections.filter(({ drop }) => drop !== undefined).length;
    this.style.setProperty('--dc-run-rows', String(drops));
    return html`<h2 class="for-ears">The run of ducts</h2>
      <dc-run-drawing
      .label=${runWords(sections)}
      .speedUnit=${view.speedUnit}
      .widestSpeed=${view.widestSpeed}
      .sections=${sections}
      .selection=${view.selection}
      .read=${view.read}
      @dc-part=${({ part }: PartEvent) => view.session.select(part)}
    ></dc-run-drawing>
      <dc-plot-tools
        label="drawing of the run"
        file="run-of-ducts"
        .table=${() => runTable(sections, view.speedUnit)}
        .picture=${() => this.renderRoot.querySelector('dc-run-drawing')?.picture}
      ></dc-plot-tools>`;
  }
}

/** Reads the run; what stays while gates move is kept from one time to the next. */
function runReader() {
  let shape: readonly SectionShape[] = [];
  let shapeOf: readonly unknown[] = [];
  return (session: Session) => {
    const shop = session.shop.value;
    const model = session.model.value;
    const report = session.shownReport.value;
    const units = session.units.value;
    const from = [shop, model, units];
    if (from.some((part, i) => part !== shapeOf[i])) shape = runShape(shop, model, units);
    shapeOf = from;
    const sections = runView(shop, model, report, units, shape);
    const fares = (id: string) => sections.find((section) => section.id === id)?.state ?? 'still';
    return {
      session,
      sections,
      selection: session.selection.value,
      speedUnit: unitLabel('velocity', units),
      widestSpeed: formatQuantity('velocity', units, WIDEST_SPEED).number,
      read: (part: Part) => partReading(shop, model, report, part, fares(part.id), units),
    };
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
