// The shelf of curves: the user's own, kept in this browser, and the examples. Each can be taken as the
// collector's and saved as a file; files can be taken in, one or many.
// (Over 200 lines by a little: one row, and all that can be done with it.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { curvesFile } from '../../shop/curves/curve-files.ts';
import { curvesCsv } from '../../shop/curves/curves-csv.ts';
import { exampleCurves } from '../../shop/example-curves.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { CurveShelf, ShelvedCurve } from '../../state/curve-shelf.ts';
import { withOrWithout } from '../../state/with-or-without.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import { currencyChoices } from '../cut-list-panel/currency-choices.ts';
import '../notice-line/notice-line.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { saveFile } from '../shop-desk/save-file.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { TakeCurveEvent } from './curve-shelf-event.ts';
import { ShelfController } from './shelf-controller.ts';
import { curveShelfStyles } from './curve-shelf.styles.ts';

/** Of a price that is typed first; another can be chosen then. */
const USUAL_CURRENCY = 'USD';

/**
 * @element dc-curve-shelf
 * @fires dc-take-curve - a curve is to be the collector's
 */
@customElement('dc-curve-shelf')
export class CurveShelfElement extends LitElement {
  static override styles = [baseStyles, buttonStyles, curveShelfStyles];

  /** The collector's curve, which may be kept. */
  @property({ attribute: false }) curve: Curve | undefined;

  /** Where curves are kept; in this browser unless another is given. */
  @property({ attribute: false }) shelf: CurveShelf | undefined;

  readonly #shelved = new ShelfController(this);
  readonly #examples = exampleCurves();

  protected override render(): TemplateResult {
    const { curve, shelf } = this;
    return html`<dc-notice-line
        .notice=${this.#shelved.notice}
        @dc-dismiss=${() => shelf?.dismiss()}
      ></dc-notice-line>
      <div class="all">
        ${
          curve
            ? html`<button type="button" @click=${() => void shelf?.keep(ownCopy(curve))}>
              <span>Keep “${curve.name}” on the shelf</span>
            </button>`
            : nothing
        }
        <label class="files"
          ><span>Take in files, JSON or CSV</span
          ><input
            type="file"
            multiple
            accept=".json,.csv,application/json,text/csv"
            @change=${(event: Event) => void this.#onFiles(event)}
        /></label>
        ${
          this.#shelved.curves.length > 0
            ? html`<button type="button" @click=${() => saveFile(curvesFile(this.#kept))}>
                <span>Save all as JSON</span></button
              ><button type="button" @click=${() => saveFile(curvesCsv(this.#kept), 'text/csv')}>
                <span>Save all as CSV</span>
              </button>`
            : nothing
        }
      </div>
      <h4>Your own, kept in this browser</h4>
      ${
        this.#shelved.curves.length === 0
          ? html`<p class="note">None yet.</p>`
          : html`<ul>
            ${this.#shelved.curves.map((each) => this.#own(each))}
          </ul>`
      }
      <h4>Examples, with invented points</h4>
      <ul>
        ${this.#examples.map((example) => this.#row(example, nothing))}
      </ul>`;
  }

  get #kept(): readonly Curve[] {
    return this.#shelved.curves.map(({ curve }) => curve);
  }

  #own({ id, curve }: ShelvedCurve): TemplateResult {
    const set = (key: 'note' | 'source', value: string | undefined) =>
      void this.shelf?.change(id, withOrWithout(curve, key, value));
    const price = (amount: number | undefined, currency: string) => {
      const priced = amount === undefined ? undefined : { amount, currency };
      void this.shelf?.change(id, withOrWithout(curve, 'price', priced));
    };
    return this.#row(
      curve,
      html`<button type="button" aria-label="Delete ${curve.name}" @click=${() => void this.shelf?.remove(id)}>
          <span>Delete</span>
        </button>
        <details>
          <summary class="small">Name, note, source and price</summary>
          <div class="details">
            <dc-text-field
              label="Name of the kept curve"
              .value=${curve.name}
              @dc-text=${({ value }: TextEvent) =>
                value !== undefined && void this.shelf?.change(id, { ...curve, name: value })}
            ></dc-text-field>
            <dc-text-field
              lines
              optional
              label="Note"
              .value=${curve.note ?? ''}
              @dc-text=${({ value }: TextEvent) => set('note', value)}
            ></dc-text-field>
            <dc-text-field
              optional
              label="Source, where the points come from"
              .value=${curve.source ?? ''}
              @dc-text=${({ value }: TextEvent) => set('source', value)}
            ></dc-text-field>
            <dc-quantity-field
              optional
              label="Price of the collector"
              quantity="coefficient"
              .value=${curve.price?.amount}
              .low=${0}
              .high=${1e9}
              hint="set against the drops that it serves by “Which collector?”"
              @dc-quantity=${({ value }: QuantityEvent) => price(value, curve.price?.currency ?? USUAL_CURRENCY)}
            ></dc-quantity-field>
            ${
              curve.price === undefined
                ? nothing
                : html`<dc-choice-field
                  label="Currency of the price"
                  .choices=${currencyChoices(curve.price.currency).filter((each) => each.value !== '')}
                  .value=${curve.price.currency}
                  @dc-choice=${({ value }: ChoiceEvent) => price(curve.price?.amount, value)}
                ></dc-choice-field>`
            }
          </div>
        </details>`,
    );
  }

  #row(curve: Curve, more: TemplateResult | typeof nothing): TemplateResult {
    const { name, points, source } = curve;
    return html`<li>
      <div class="row">
        <span class="name"
          >${name}
          <span class="note">${points.length} points${source === undefined ? '' : `, ${source}`}</span></span
        >
        <button type="button" aria-label="Use ${name}" @click=${() => this.dispatchEvent(new TakeCurveEvent(curve))}>
          <span>Use</span>
        </button>
        <button type="button" aria-label="Save ${name} as JSON" @click=${() => saveFile(curvesFile([curve]))}>
          <span>JSON</span>
        </button>
        <button type="button" aria-label="Save ${name} as CSV" @click=${() => saveFile(curvesCsv([curve]), 'text/csv')}>
          <span>CSV</span>
        </button>
        ${more}
      </div>
    </li>`;
  }

  async #onFiles(event: Event): Promise<void> {
    const input = event.currentTarget as HTMLInputElement;
    const files = [...(input.files ?? [])];
    const texts = await Promise.all(
      files.map(async (file) => ({ name: file.name, text: await file.text() })),
    );
    input.value = '';
    await this.shelf?.addFiles(texts);
  }
}

/** An example's id is its own; a kept copy has none. */
function ownCopy(curve: Curve): Curve {
  const { id: _, ...own } = curve;
  return own;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-shelf': CurveShelfElement;
  }
}
