// The start of a shop of one's own: a collector, a main, one drop. Nothing else is asked, and what is
// taken for the rest is said at the foot. (Over 200 lines: three short parts that fill one draft.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { exampleCurves } from '../../shop/example-curves.ts';
import { findMachine, MACHINES } from '../../shop/machine-flow.ts';
import { openShopDocument } from '../../shop/open-shop.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import { type ShopStart, startedShop } from '../../shop/started-shop.ts';
import { pipeView } from '../../state/run-editor/pipe-view.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../curve-editor/curve-editor.ts';
import type { CurveEvent } from '../curve-editor/curve-event.ts';
import { firstUnsettled } from '../quantity-field/first-unsettled.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../run-editor/pipe-choice.ts';
import type { PipeEvent } from '../run-editor/value-events.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { sheetStyles } from '../styles/sheet.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { EMPTY_CURVE, firstFigures } from './first-figures.ts';
import { StartEvent } from './start-event.ts';
import { takenWords } from './taken-words.ts';
import { startShopStyles } from './start-shop.styles.ts';

const NO_MACHINE = '';
const MACHINE_CHOICES = [
  ...MACHINES.map(({ id, name }) => ({ value: id, words: name })),
  { value: NO_MACHINE, words: 'none of these' },
];
/** The example that most small shops are nearest to. */
const FIRST_EXAMPLE = 'cyclone-3hp-14in';

/**
 * @element dc-start-shop
 * @fires dc-start - the shop is ready to be opened
 * @slot cancel - the way back
 */
@customElement('dc-start-shop')
export class StartShop extends LitElement {
  static override styles = [baseStyles, buttonStyles, fieldStyles, sheetStyles, startShopStyles];

  @property({ attribute: false }) units: UnitSystem = 'us';

  @state() private start: ShopStart | undefined;

  /** The points that were typed, also while an example is chosen. */
  @state() private own: Curve = EMPTY_CURVE;

  @state() private isOwn = false;

  @state() private problem = '';

  readonly #examples = exampleCurves();

  protected override willUpdate(): void {
    const first = this.#examples.find(({ id }) => id === FIRST_EXAMPLE) ?? this.#examples[0]!;
    this.start ??= firstFigures(first, this.units);
  }

  protected override firstUpdated(_changed: PropertyValues<this>): void {
    this.renderRoot.querySelector('h1')?.focus();
  }

  protected override render(): TemplateResult {
    const { start } = this;
    if (!start) return html`${nothing}`;
    return html`<h1 tabindex="-1">Start your own shop</h1>
      <p>A collector, the main pipe and one drop are enough for an operating point. The rest comes on the page.</p>
      ${this.#collector(start)} ${this.#main(start)} ${this.#drop(start)}
      <section>
        <h2>Taken for now, and changed on the page</h2>
        <p class="small">${takenWords(this.units)}</p>
        <dc-text-field
          label="Name of the shop"
          .value=${start.name}
          @dc-text=${({ value }: TextEvent) => this.#set({ name: value ?? start.name })}
        ></dc-text-field>
      </section>
      <div class="end">
        <button class="go" type="button" @click=${() => this.#open(start)}>
          <span>Open the shop</span>
        </button>
        <div class="back"><slot name="cancel"></slot></div>
        ${this.problem === '' ? nothing : html`<p class="problem" role="alert">${this.problem}</p>`}
      </div>`;
  }

  #collector({ curve }: ShopStart): TemplateResult {
    return html`<section>
      <h2>1. The collector</h2>
      <fieldset>
        <legend class="for-ears">Where its curve comes from</legend>
        ${this.#source('An example, with invented points', false)}
        ${this.#source('Points of my own', true)}
      </fieldset>
      ${
        this.isOwn
          ? html`<dc-curve-editor
            .curve=${this.own}
            .units=${this.units}
            @dc-curve=${(event: CurveEvent) => this.#onOwn(event)}
          ></dc-curve-editor>`
          : html`<dc-choice-field
            label="Example"
            .choices=${this.#examples.map(({ id, name }) => ({ value: id ?? name, words: name }))}
            .value=${curve.id ?? ''}
            .hint=${curve.note ?? ''}
            @dc-choice=${(event: ChoiceEvent) => this.#onExample(event)}
          ></dc-choice-field>`
      }
    </section>`;
  }

  #source(words: string, isOwn: boolean): TemplateResult {
    return html`<label
      ><input
        type="radio"
        name="source"
        .checked=${this.isOwn === isOwn}
        @change=${() => this.#onSource(isOwn)}
      />${words}</label
    >`;
  }

  #main({ main }: ShopStart): TemplateResult {
    return html`<section>
      <h2>2. The main</h2>
      <div class="fields">
        ${this.#length('Length of the main', main.length, (length) =>
          this.#set({ main: { ...main, length } }),
        )}
        ${this.#pipe(main.pipe, (pipe) => this.#set({ main: { ...main, pipe } }))}
      </div>
    </section>`;
  }

  #drop({ drop }: ShopStart): TemplateResult {
    const machine = drop.machine === undefined ? undefined : findMachine(drop.machine);
    const need =
      machine === undefined
        ? 'No flow is asked of it.'
        : `Asks for ${formatQuantity('flow', this.units, machine.flow).text} (${machine.source.status}).`;
    return html`<section>
      <h2>3. One drop</h2>
      <div class="fields">
        <dc-text-field
          label="Name of the drop"
          .value=${drop.name}
          @dc-text=${({ value }: TextEvent) => this.#set({ drop: { ...drop, name: value ?? drop.name } })}
        ></dc-text-field>
        <dc-choice-field
          label="Machine"
          .choices=${MACHINE_CHOICES}
          .value=${drop.machine ?? NO_MACHINE}
          .hint=${need}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onMachine(value)}
        ></dc-choice-field>
        ${this.#length('Length of its pipe', drop.length, (length) =>
          this.#set({ drop: { ...drop, length } }),
        )}
        ${this.#pipe(drop.pipe, (pipe) => this.#set({ drop: { ...drop, pipe } }))}
      </div>
    </section>`;
  }

  #length(label: string, value: number, take: (length: number) => void): TemplateResult {
    return html`<dc-quantity-field
      label=${label}
      quantity="length"
      .units=${this.units}
      .value=${value}
      .low=${0}
      .high=${1000}
      @dc-quantity=${({ value: length }: QuantityEvent) => take(length ?? value)}
    ></dc-quantity-field>`;
  }

  #pipe(pipe: Pipe, take: (pipe: Pipe) => void): TemplateResult {
    return html`<dc-pipe-choice
      class="wide"
      .view=${pipeView(pipe)}
      .units=${this.units}
      @dc-pipe=${(event: PipeEvent) => take(event.pipe)}
    ></dc-pipe-choice>`;
  }

  #onSource(isOwn: boolean): void {
    this.isOwn = isOwn;
    this.problem = '';
  }

  #onOwn(event: CurveEvent): void {
    this.own = event.curve;
    this.problem = '';
  }

  #onExample({ value }: ChoiceEvent): void {
    const curve = this.#examples.find(({ id }) => id === value);
    if (curve) this.#set({ curve });
  }

  /** A drop that is named after its machine is named after the next one. */
  #onMachine(id: string): void {
    const drop = this.start?.drop;
    if (!drop) return;
    const machine = id === NO_MACHINE ? undefined : id;
    const isNamedAfter = drop.machine !== undefined && drop.name === shortName(drop.machine);
    const name = isNamedAfter && machine !== undefined ? shortName(machine) : drop.name;
    this.#set({ drop: { ...drop, machine, name } });
  }

  #set(changes: Partial<ShopStart>): void {
    this.problem = '';
    if (this.start) this.start = { ...this.start, ...changes };
  }

  #open(start: ShopStart): void {
    const unsettled = firstUnsettled(this.renderRoot);
    if (unsettled) {
      this.problem = `“${unsettled.label}” holds something that is not understood yet.`;
      unsettled.focus();
      return;
    }
    if (this.isOwn && this.own.points.length < 2) {
      this.problem =
        'The collector’s curve needs two points at least, each with flow and pressure.';
      return;
    }
    const curve = this.isOwn ? this.own : start.curve;
    const opened = openShopDocument(startedShop({ ...start, curve }));
    if (opened.kind === 'opened') this.dispatchEvent(new StartEvent(opened.shop));
    else
      this.problem = opened.problems.map(({ place, message }) => `${place} ${message}.`).join(' ');
  }
}

/** 'Table saw' for 'table saw, blade to 250 mm'. */
function shortName(machine: string): string {
  const words = findMachine(machine)?.name.split(',')[0] ?? machine;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-start-shop': StartShop;
  }
}
