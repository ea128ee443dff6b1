// What stands under every plot: its figures as a table, folded, and its picture as a file.
//
// How a plot adopts it: put it under the plot and hand it `.table=${() => …}`, which is called only
// while the table is open, and `.picture=${() => …}`, which finds the plot's SVG element when a
// picture is saved. A plot made of one SVG element needs nothing else: its colours and fonts are
// read off the page.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PlotTable } from '../../plot/plot-table.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { figureTable } from './figure-table.ts';
import { figureTableStyles } from './figure-table.styles.ts';
import { plotToolsStyles } from './plot-tools.styles.ts';
import type { PictureKind } from './save-picture.ts';

/**
 * @element dc-plot-tools
 * @slot - further controls, on the line of the buttons
 */
@customElement('dc-plot-tools')
export class PlotTools extends LitElement {
  static override styles = [baseStyles, buttonStyles, figureTableStyles, plotToolsStyles];

  /** What the plot is called, such as "operating plot". */
  @property() label = 'plot';
  /** Name of saved files, without their ending. */
  @property() file = 'plot';
  /** The figures; a new function says that they have changed. */
  @property({ attribute: false }) table: (() => PlotTable) | undefined;
  /** Finds the picture to save. */
  @property({ attribute: false }) picture: (() => SVGSVGElement | null | undefined) | undefined;

  @state() private isOpen = false;

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    const onlyFigures = [...changed.keys()].every((name) => name === 'table' || name === 'picture');
    return !onlyFigures || this.isOpen || !this.hasUpdated;
  }

  protected override render(): TemplateResult {
    return html`<div class="line">
        <button
          class="fold"
          type="button"
          aria-expanded=${this.isOpen ? 'true' : 'false'}
          aria-controls="figures"
          @click=${() => this.#fold()}
          >Figures<span class="for-ears"> of the ${this.label}, as a table</span></button
        >
        <slot></slot>
        <div class="save" role="group" aria-label="Save the ${this.label} as a picture">
          ${this.#saveButton('svg', 'SVG')}${this.#saveButton('png', 'PNG')}
        </div>
      </div>
      <div id="figures">${this.isOpen && this.table ? figureTable(this.table()) : nothing}</div>`;
  }

  #saveButton(kind: PictureKind, word: string): TemplateResult {
    return html`<button
      type="button"
      aria-label="Save the ${this.label} as ${word}"
      @click=${() => this.#save(kind)}
    >
      <span>${word}</span>
    </button>`;
  }

  #fold(): void {
    this.isOpen = !this.isOpen;
  }

  async #save(kind: PictureKind): Promise<void> {
    const picture = this.picture?.();
    if (!picture) return;
    const { savePicture } = await import('./save-picture.ts');
    await savePicture(picture, kind, this.file);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-plot-tools': PlotTools;
  }
}
