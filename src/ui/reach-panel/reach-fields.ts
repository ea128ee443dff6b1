// What is said of a run to be added: which drop, of what pipe, how long, with what bends.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pipeNumbers } from '../../shop/pipe-of.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { sectionLabel } from '../../shop/section-label.ts';
import { airOf } from '../../shop/shop-air.ts';
import {
  ALONE,
  joinedSection,
  LONGEST_RUN,
  NEW_DROP,
  type ReachForm,
} from '../../state/decisions/reach-form.ts';
import { fittingView } from '../../state/run-editor/fitting-view.ts';
import { pipeView } from '../../state/run-editor/pipe-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../run-editor/fitting-list.ts';
import '../run-editor/pipe-choice.ts';
import type { FittingsEvent, PipeEvent } from '../run-editor/value-events.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { ReachFormEvent } from './reach-form-event.ts';

/** Speed that the loss of a bend is shown at, the low end of what is common practice [m/s]. */
const SHOWN_AT = 20;

/**
 * @element dc-reach-fields
 * @fires dc-reach-form - something else was said
 */
@customElement('dc-reach-fields')
export class ReachFields extends LitElement {
  static override styles = [
    baseStyles,
    panelFormStyles,
    css`
      .fields + .fields,
      dc-pipe-choice + .fields {
        margin-block-start: 12px;
      }
    `,
  ];

  @property({ attribute: false }) shop: Shop | undefined;
  @property({ attribute: false }) form: ReachForm | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { shop, form, units } = this;
    if (!shop || !form) return html`${nothing}`;
    const pipe = pipeView(form.pipe);
    const place = {
      pipe: pipeNumbers(form.pipe) ?? { diameter: pipe.diameter, roughness: 0 },
      air: airOf(shop.air),
      velocity: SHOWN_AT,
    };
    return html`<div class="group">
        <div class="fields">
          <dc-choice-field
            label="Which drop is to reach further"
            .choices=${[
              ...shop.drops.map(({ id, name }) => ({ value: id, words: name })),
              { value: NEW_DROP, words: 'a new drop' },
            ]}
            .value=${form.drop}
            @dc-choice=${({ value }: ChoiceEvent) => this.#onDrop(value)}
          ></dc-choice-field>
          <dc-quantity-field
            label="Length to add"
            quantity="length"
            .units=${units}
            .value=${form.length}
            .low=${0}
            .high=${LONGEST_RUN[units]}
            @dc-quantity=${({ value }: QuantityEvent) => value !== undefined && this.#say({ length: value })}
          ></dc-quantity-field>
          <dc-choice-field
            label="Open with it"
            .choices=${[
              { value: ALONE, words: 'nothing else' },
              ...shop.gateSets.map(({ id, name }) => ({ value: id, words: name })),
            ]}
            .value=${form.gateSet}
            @dc-choice=${({ value }: ChoiceEvent) => this.#say({ gateSet: value })}
          ></dc-choice-field>
        </div>
        ${form.drop === NEW_DROP ? this.#newDrop(shop, form) : nothing}
      </div>
      <div class="group">
        <h3>The pipe or hose to add</h3>
        <dc-pipe-choice
          .view=${pipe}
          .units=${units}
          @dc-pipe=${({ pipe: next }: PipeEvent) => this.#say({ pipe: next })}
        ></dc-pipe-choice>
        ${pipe.isHose ? this.#compression(form) : nothing}
        <dc-fitting-list
          .fittings=${form.fittings.map((fitting) => fittingView(fitting, place, units))}
          .units=${units}
          @dc-fittings=${({ fittings }: FittingsEvent) => this.#say({ fittings })}
        ></dc-fitting-list>
      </div>`;
  }

  #newDrop(shop: Shop, form: ReachForm): TemplateResult {
    const { length } = joinedSection(form, shop);
    return html`<div class="fields">
      <dc-text-field
        label="Name of the new drop"
        .value=${form.name}
        @dc-text=${({ value }: TextEvent) => value !== undefined && this.#say({ name: value })}
      ></dc-text-field>
      <dc-quantity-field
        label="Air it needs"
        quantity="flow"
        .units=${this.units}
        .value=${form.need}
        optional
        placeholder="not known"
        .low=${0}
        .high=${100}
        @dc-quantity=${({ value }: QuantityEvent) => this.#say({ need: value })}
      ></dc-quantity-field>
      <dc-choice-field
        label="Branches off"
        .choices=${shop.sections.map((section) => ({ value: section.id, words: sectionLabel(section) }))}
        .value=${form.section}
        @dc-choice=${({ value }: ChoiceEvent) => this.#say({ section: value, fromFarEnd: undefined })}
      ></dc-choice-field>
      <dc-quantity-field
        label="From its far end to the wye"
        quantity="length"
        .units=${this.units}
        .value=${form.fromFarEnd ?? length / 2}
        .low=${0}
        .high=${length}
        hint="a 45° wye; the hood begins as a plain end"
        @dc-quantity=${({ value }: QuantityEvent) => this.#say({ fromFarEnd: value })}
      ></dc-quantity-field>
    </div>`;
  }

  #compression({ compression }: ReachForm): TemplateResult {
    return html`<div class="fields">
      <dc-quantity-field
        label="Hose pushed together by"
        quantity="fraction"
        .units=${this.units}
        .value=${compression}
        .low=${0}
        .high=${0.6}
        @dc-quantity=${({ value }: QuantityEvent) => value !== undefined && this.#say({ compression: value })}
      ></dc-quantity-field>
    </div>`;
  }

  /** The pipe begins like the one that is there. */
  #onDrop(drop: string): void {
    const into = this.shop?.drops.find(({ id }) => id === drop)?.into;
    const own = this.shop?.sections.find(({ id }) => id === into);
    if (own === undefined) this.#say({ drop });
    else this.#say({ drop, pipe: own.pipe, compression: own.compression ?? 0 });
  }

  #say(said: Partial<ReachForm>): void {
    if (this.form) this.dispatchEvent(new ReachFormEvent({ ...this.form, ...said }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-reach-fields': ReachFields;
  }
}
