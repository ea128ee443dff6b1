// The whole shop on paper: what it does now, the drawing, the plot, every drop and set, the cautions,
// what to buy and how to cut it, and what was assumed. Its width is that of the printed part of both A4
// and Letter, so that drawing and plot are laid out before they are printed.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Cautions } from '../cautions/cautions.ts';
import '../cautions/cautions.ts';
import type { OperatingPlot } from '../operating-plot/operating-plot.ts';
import '../operating-plot/operating-plot.ts';
import type { RunDrawing } from '../run-drawing/run-drawing.ts';
import '../run-drawing/run-drawing.ts';
import { baseStyles } from '../styles/base.styles.ts';
import type { Sheet } from './read-sheet.ts';
import { sheetAssumptions } from './sheet-assumptions.ts';
import { sheetCuts } from './sheet-cuts.ts';
import { sheetStates } from './sheet-states.ts';
import { sheetTablesStyles } from './sheet-tables.styles.ts';
import { shopSheetStyles } from './shop-sheet.styles.ts';
import { unbroken } from '../unbroken.ts';

/** Height of a row of the drawing, and of the whole: beside the plot on one page, alone on one [px]. */
const ROW = { usual: 26, close: 17.5 };
const MOST = { beside: 440, alone: 720, page: 840 };

/** @element dc-shop-sheet */
@customElement('dc-shop-sheet')
export class ShopSheet extends LitElement {
  static override styles = [baseStyles, shopSheetStyles, sheetTablesStyles];

  @property({ attribute: false }) sheet: Sheet | undefined;

  /** Whether drawing and plot have been laid out and drawn. */
  get isDrawn(): boolean {
    const plot = this.renderRoot.querySelector('dc-operating-plot');
    const drawing = this.renderRoot.querySelector('dc-run-drawing');
    return Boolean(plot?.picture && drawing?.picture);
  }

  /** Draws the whole sheet, plot and drawing too, before it returns. */
  drawAtOnce(): void {
    this.performUpdate();
    const parts = this.renderRoot.querySelectorAll<Cautions | OperatingPlot | RunDrawing>(
      'dc-cautions, dc-operating-plot, dc-run-drawing',
    );
    for (const part of parts) part.drawAtOnce();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('sheet') || !this.sheet) return;
    const rows = this.sheet.run.sections.filter(({ drop }) => drop !== undefined).length;
    this.style.setProperty('--dc-sheet-drawing', `${drawingHeight(rows)}px`);
  }

  protected override render(): TemplateResult {
    const { sheet } = this;
    if (!sheet) return html`${nothing}`;
    const { name, note, printed, sentence, units, air, range, run, plot } = sheet;
    return html`<header>
        <h1>${name}</h1>
        <p class="date">Printed ${printed}</p>
      </header>
      <p class="sentence">${unbroken(sentence)}</p>
      <p class="about">
        ${plot.collector}; air of ${unbroken(air)}; chips keep moving from ${unbroken(range)}.
      </p>
      <section class="figure">
        <h2>The run of ducts, as the gates stand now</h2>
        <dc-run-drawing
          label="Line drawing of the ducts: ${run.sections.length} sections."
          .speedUnit=${run.speedUnit}
          .sections=${run.sections}
        ></dc-run-drawing>
      </section>
      <section class="figure">
        <h2>Operating point</h2>
        <dc-operating-plot
          label="Collector curve and duct curve. ${sentence}"
          .units=${units}
          .curve=${plot.curve}
          .collector=${plot.collector}
          .system=${plot.system}
          .point=${plot.point}
          .instead=${plot.instead}
        ></dc-operating-plot>
      </section>
      ${note === undefined ? nothing : html`<section class="figure"><h2>Note</h2><p class="note">${note}</p></section>`}
      ${sheetStates(sheet.states, range)}
      <dc-cautions></dc-cautions>
      ${sheetCuts(sheet.cuts)}${sheetAssumptions(sheet.assumptions)}`;
  }
}

/** As high as its rows want, and so that it shares the first page with the plot, or fills one. */
function drawingHeight(rows: number): number {
  const keyAndFoot = 68;
  if (ROW.close * rows <= MOST.beside) {
    return keyAndFoot + Math.min(MOST.beside, Math.max(120, ROW.usual * rows));
  }
  const wanted = ROW.close * rows;
  return keyAndFoot + (wanted <= MOST.alone ? wanted : MOST.page);
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-shop-sheet': ShopSheet;
  }
}
