// Everything that can be said of one section.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ShopEdit } from '../../shop/edits/change.ts';
import {
  noteOnSection,
  renameSection,
  setCompression,
  setFittings,
  setJoin,
  setLength,
  setPipe,
  setTransition,
} from '../../shop/edits/edit-section.ts';
import { pipeWord } from '../../shop/pipe-of.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import type { SectionFormView } from '../../state/run-editor/section-form-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import './fitting-list.ts';
import { formStyles } from './form.styles.ts';
import './join-choice.ts';
import './pipe-choice.ts';
import './reducer-choice.ts';
import { ShopEditEvent } from './shop-edit-event.ts';
import type { FittingsEvent, JoinEvent, PipeEvent, ReducerEvent } from './value-events.ts';

/**
 * @element dc-section-form
 * @fires dc-shop-edit - something of it is to be changed
 */
@customElement('dc-section-form')
export class SectionForm extends LitElement {
  static override styles = [baseStyles, formStyles];

  @property({ attribute: false }) view: SectionFormView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { view, units } = this;
    if (!view) return html`${nothing}`;
    const { section } = view;
    const { id } = section;
    return html`<h4>Pipe, on its way into ${view.into}</h4>
      <div class="fields">
        <dc-text-field
          label="Name"
          optional
          .value=${section.name ?? ''}
          @dc-text=${({ value }: TextEvent) => this.#ask(renameSection(id, value))}
        ></dc-text-field>
        <dc-quantity-field
          label="Length"
          hint="bends not counted"
          quantity="length"
          .units=${units}
          .value=${section.length}
          .low=${0}
          .high=${1000}
          @dc-quantity=${({ value }: QuantityEvent) => value !== undefined && this.#ask(setLength(id, value))}
        ></dc-quantity-field>
        ${this.#hose(view)}
        <dc-pipe-choice
          class="wide"
          .view=${view.pipe}
          .units=${units}
          @dc-pipe=${({ pipe, isChoice }: PipeEvent) => this.#ask(withPipe(id, pipe), isChoice ? `pipe of ${id}` : undefined)}
        ></dc-pipe-choice>
      </div>
      <h4>Bends and other fittings</h4>
      <dc-fitting-list
        .fittings=${view.fittings}
        .units=${units}
        @dc-fittings=${({ fittings, chosen }: FittingsEvent) => this.#ask(setFittings(id, fittings), chosen === undefined ? undefined : `fitting ${chosen} of ${id}`)}
      ></dc-fitting-list>
      ${
        view.join
          ? html`<h4>Where it joins</h4>
              <dc-join-choice
                .view=${view.join}
                .units=${units}
                @dc-join=${({ join, isChoice }: JoinEvent) => this.#ask(setJoin(id, join), isChoice ? `join of ${id}` : undefined)}
              ></dc-join-choice>`
          : nothing
      }
      ${
        view.reducer
          ? html`<h4>Change of diameter into ${view.into}</h4>
              <dc-reducer-choice
                .view=${view.reducer}
                .units=${units}
                @dc-reducer=${({ transition, isChoice }: ReducerEvent) => this.#ask(setTransition(id, transition), isChoice ? `reducer of ${id}` : undefined)}
              ></dc-reducer-choice>`
          : nothing
      }
      <h4>Remark</h4>
      <dc-text-field
        label="Note"
        optional
        lines
        .value=${section.note ?? ''}
        @dc-text=${({ value }: TextEvent) => this.#ask(noteOnSection(id, value))}
      ></dc-text-field>`;
  }

  #hose({ section, pipe, hoseWords }: SectionFormView): TemplateResult | typeof nothing {
    const { compression = 0 } = section;
    if (!pipe.isHose && compression === 0) return nothing;
    return html`<dc-quantity-field
      label="Pushed together by"
      quantity="fraction"
      .units=${this.units}
      .value=${compression}
      .low=${0}
      .high=${0.6}
      hint=${hoseWords}
      @dc-quantity=${({ value }: QuantityEvent) => this.#ask(setCompression(section.id, value === 0 ? undefined : value))}
    ></dc-quantity-field>`;
  }

  #ask(edit: ShopEdit, mergeKey?: string): void {
    this.dispatchEvent(new ShopEditEvent(edit, mergeKey));
  }
}

/** Another pipe; what is no hose of the catalogue is not pushed together either. */
function withPipe(id: string, pipe: Pipe): ShopEdit {
  return (shop) => {
    const next = setPipe(id, pipe)(shop);
    const isHose = pipeWord(pipe) === 'hose' || pipe.kind === 'custom';
    return isHose ? next : setCompression(id, undefined)(next);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-section-form': SectionForm;
  }
}
