// Which sections count as the main, and of what family of pipe it is to be.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import { sharedSections, suggestedMain } from '../../shop/decisions/main-sections.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { sectionLabel } from '../../shop/section-label.ts';
import { pipeInWords } from '../../state/decisions/pipe-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { checkListStyles } from '../styles/check-list.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import { type MainForm, MainFormEvent } from './main-form-event.ts';

const FAMILIES = PIPE_FAMILIES.filter(({ kind }) => kind === 'pipe').map(({ id, name }) => ({
  value: id,
  words: name,
}));

/**
 * @element dc-main-fields
 * @fires dc-main-form - something else was said
 */
@customElement('dc-main-fields')
export class MainFields extends LitElement {
  static override styles = [baseStyles, buttonStyles, panelFormStyles, checkListStyles];

  @property({ attribute: false }) shop: Shop | undefined;
  @property({ attribute: false }) form: MainForm | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { shop, form } = this;
    if (!shop || !form) return html`${nothing}`;
    const shared = sharedSections(shop);
    return html`<div class="group">
      <div class="fields">
        <dc-choice-field
          class="long"
          label="Kind of pipe for the main"
          .choices=${FAMILIES}
          .value=${form.family}
          @dc-choice=${({ value }: ChoiceEvent) => this.#say({ ...form, family: value })}
        ></dc-choice-field>
      </div>
      <fieldset>
        <legend>Sections that count as the main</legend>
        <div class="ticks">
          ${shop.sections.filter(({ id }) => shared.includes(id)).map((section) => this.#section(section, form))}
        </div>
        <button type="button" @click=${() => this.#say({ ...form, sections: suggestedMain(shop) })}>
          <span>Back to the trunk</span>
        </button>
      </fieldset>
    </div>`;
  }

  #section(section: Shop['sections'][number], form: MainForm): TemplateResult {
    const { id, pipe } = section;
    return html`<label>
      <input
        type="checkbox"
        .checked=${live(form.sections.includes(id))}
        @change=${() => this.#toggle(id, form)}
      />
      <span>${sectionLabel(section)} <span class="aside">${pipeInWords(pipe, this.units)}</span></span>
    </label>`;
  }

  /** In the order of the document, so that the same sections are the same question. */
  #toggle(id: string, form: MainForm): void {
    const wanted = form.sections.includes(id)
      ? form.sections.filter((each) => each !== id)
      : [...form.sections, id];
    const order = this.shop?.sections.map((section) => section.id) ?? [];
    const sections = wanted.toSorted((a, b) => order.indexOf(a) - order.indexOf(b));
    this.#say({ ...form, sections });
  }

  #say(form: MainForm): void {
    this.dispatchEvent(new MainFormEvent(form));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-main-fields': MainFields;
  }
}
