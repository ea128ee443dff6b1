// Which pipe a section is of: a family and a size of the catalogue, or one by its own diameter and
// wall. The true inside diameter stands beside the size, for nominal is not inside.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PIPE_FAMILIES, type PipeSize } from '../../duct/catalogue.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import { likePipe } from '../../state/run-editor/new-parts.ts';
import type { PipeView } from '../../state/run-editor/pipe-view.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { Choice } from '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../sourced-field/sourced-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { formStyles } from './form.styles.ts';
import { PipeEvent } from './value-events.ts';

const CUSTOM = 'custom';
/** A wall can't be rougher than this part of the diameter. */
const ROUGHEST = 0.1;

/**
 * @element dc-pipe-choice
 * @fires dc-pipe - another pipe was chosen, or a figure of it entered
 */
@customElement('dc-pipe-choice')
export class PipeChoice extends LitElement {
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .fields {
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 12.5rem), 1fr));
      }
    `,
  ];

  @property({ attribute: false }) view: PipeView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html`${nothing}`;
    const { pipe } = view;
    return html`<div class="fields">
      <dc-choice-field
        label="Kind of pipe"
        .choices=${FAMILIES}
        value=${pipe.kind === 'custom' ? CUSTOM : pipe.family}
        @dc-choice=${(event: ChoiceEvent) => this.#onFamily(event)}
      ></dc-choice-field>
      ${pipe.kind === 'custom' ? this.#ownDiameter(view) : this.#size(view, pipe)}
      <dc-sourced-field
        label="Roughness of the wall"
        quantity="roughness"
        .units=${this.units}
        .figure=${view.roughness}
        .low=${0}
        .high=${Math.min(0.02, ROUGHEST * view.diameter)}
        @dc-quantity=${(event: QuantityEvent) => this.#onRoughness(event)}
      ></dc-sourced-field>
    </div>`;
  }

  #size(view: PipeView, pipe: Extract<Pipe, { readonly kind: 'catalogue' }>): TemplateResult {
    const inside = formatQuantity('diameter', this.units, view.diameter).text;
    return html`<dc-choice-field
      label="Size"
      .choices=${sizesOf(pipe.family, this.units)}
      value=${pipe.size}
      hint=${`${inside} inside · ${view.diameterSource}`}
      @dc-choice=${({ value }: ChoiceEvent) => this.#send({ ...pipe, size: value }, 'choice')}
    ></dc-choice-field>`;
  }

  #ownDiameter(view: PipeView): TemplateResult {
    return html`<dc-quantity-field
      label="Inside diameter"
      quantity="diameter"
      .units=${this.units}
      .value=${view.diameter}
      .low=${Math.max(0.01, (view.roughness.own ?? 0) / ROUGHEST)}
      .high=${2}
      hint="entered for this shop"
      @dc-quantity=${(event: QuantityEvent) => this.#onDiameter(event)}
    ></dc-quantity-field>`;
  }

  #onFamily({ value }: ChoiceEvent): void {
    if (!this.view) return;
    const { pipe, diameter, roughness } = this.view;
    const wall = roughness.own ?? roughness.usual ?? 0;
    this.#send(
      value === CUSTOM ? { kind: 'custom', diameter, roughness: wall } : likePipe(value, pipe),
      'choice',
    );
  }

  #onDiameter(event: QuantityEvent): void {
    event.stopPropagation();
    const pipe = this.view?.pipe;
    if (pipe?.kind !== 'custom' || event.value === undefined) return;
    this.#send({ ...pipe, diameter: event.value });
  }

  #onRoughness(event: QuantityEvent): void {
    event.stopPropagation();
    const pipe = this.view?.pipe;
    const { value: roughness } = event;
    if (!pipe) return;
    if (roughness !== undefined) {
      this.#send({ ...pipe, roughness });
    } else if (pipe.kind === 'catalogue') {
      this.#send({ kind: 'catalogue', family: pipe.family, size: pipe.size });
    }
  }

  #send(pipe: Pipe, how?: 'choice'): void {
    this.dispatchEvent(new PipeEvent(pipe, how));
  }
}

const FAMILIES: readonly Choice[] = [
  ...PIPE_FAMILIES.map(({ id, name, kind }) => ({
    value: id,
    words: name,
    group: kind === 'hose' ? 'Hose' : 'Pipe',
  })),
  { value: CUSTOM, words: 'Your own, by its inside diameter', group: 'Neither' },
];

/** The sizes of a family, those of the reader's units first. */
function sizesOf(familyId: string, units: UnitSystem): Choice[] {
  const sizes = PIPE_FAMILIES.find(({ id }) => id === familyId)?.sizes ?? [];
  const isInch = ({ name }: PipeSize) => name.endsWith('in.');
  const choice = ({ id, name }: PipeSize) => ({ value: id, words: name });
  const inches = sizes.filter(isInch).map(choice);
  const metric = sizes.filter((size) => !isInch(size)).map(choice);
  return units === 'us' ? [...inches, ...metric] : [...metric, ...inches];
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-pipe-choice': PipeChoice;
  }
}
