// The conditions that the shop runs in: its air, the state of its filter, and the speeds that carry. (A
// little over 200 lines: three short groups of fields.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { CARRYING_RANGES, usualCarryingRange } from '../../shop/carrying-range.ts';
import { setAir, setCarryingRange, setCollector } from '../../shop/edits/edit-shop.ts';
import type { ShopAir } from '../../shop/schema/air-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { airOf } from '../../shop/shop-air.ts';
import { USUAL_AIR } from '../../shop/started-shop.ts';
import { filterBlinded } from '../../state/collector/filter-choice.ts';
import { sourceWords } from '../../state/run-editor/figure-source.ts';
import type { Session } from '../../state/session.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import type { BlindingEvent } from '../blinding-slider/blinding-event.ts';
import '../blinding-slider/blinding-slider.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../effect-line/effect-line.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';

const OWN = 'own';
const AIR_KINDS = [
  { value: 'room', words: 'from the place and the weather' },
  { value: 'plain', words: 'entered as numbers' },
];
/** What the document allows of a carrying range [m/s]. */
const RANGE_LIMITS = { low: [0, 100], high: [0, 200] } as const;

/** @element dc-conditions-panel */
@customElement('dc-conditions-panel')
export class ConditionsPanel extends LitElement {
  static override styles = [baseStyles, buttonStyles, panelFormStyles];

  /** Why an end of the carrying range was refused. */
  @state() private refused: { readonly end: 'low' | 'high'; readonly words: string } | undefined;

  readonly #session = new SessionController(this, (session) => ({
    session,
    shop: session.shop.value,
    air: session.model.value.air,
    units: session.units.value,
  }));

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    const { session, shop, air, units } = view;
    const density = formatQuantity('density', units, air.density).text;
    return html`<dc-effect-line></dc-effect-line>
      <div class="group">
        <h3>The air</h3>
        <p class="about">Its density is ${density}. Thin air carries the same speed with less pressure.</p>
        <div class="fields">
          <dc-choice-field
            class="long"
            label="Density and viscosity are"
            .choices=${AIR_KINDS}
            .value=${shop.air.kind}
            @dc-choice=${({ value }: ChoiceEvent) => session.edit(setAir(airAs(shop.air, value)))}
          ></dc-choice-field>
          ${this.#air(session, shop.air, units)}
        </div>
        ${this.#reset(`Back to ${usualAirWords(units)}`, shop.air, USUAL_AIR, () => session.edit(setAir(USUAL_AIR)))}
      </div>
      <div class="group">
        <h3>The filter</h3>
        ${this.#filter(session, shop)}
      </div>
      <div class="group">
        <h3>Speeds that carry chips</h3>
        ${this.#range(session, shop.carryingRange, units)}
      </div>`;
  }

  #air(session: Session, air: ShopAir, units: UnitSystem): TemplateResult {
    const field = (
      label: string,
      quantity: Quantity,
      value: number,
      limits: readonly [number, number],
      take: (value: number) => ShopAir,
    ) => html`<dc-quantity-field
      .label=${label}
      .quantity=${quantity}
      .units=${units}
      .value=${value}
      .low=${limits[0]}
      .high=${limits[1]}
      @dc-quantity=${(event: QuantityEvent) => event.value !== undefined && session.edit(setAir(take(event.value)))}
    ></dc-quantity-field>`;
    if (air.kind === 'plain') {
      return html`${field('Density', 'density', air.density, [0.01, 2000], (density) => ({ ...air, density }))}
      ${field('Viscosity', 'viscosity', air.viscosity, [1e-7, 1], (viscosity) => ({ ...air, viscosity }))}`;
    }
    return html`${field('Height above the sea', 'altitude', air.altitude, [-500, 6000], (altitude) => ({ ...air, altitude }))}
    ${field('Temperature', 'temperature', air.temperature, [-40, 60], (temperature) => ({ ...air, temperature }))}
    ${field('Relative humidity', 'fraction', air.humidity, [0, 1], (humidity) => ({ ...air, humidity }))}`;
  }

  #filter(session: Session, { collector }: Shop): TemplateResult {
    const { filter } = collector;
    if (filter.kind === 'none') {
      return html`<p class="about">
        No filter is entered, so there is nothing to blind. Say under “Collector” what is known of it.
      </p>`;
    }
    const blind = (blinding: number) =>
      session.edit(setCollector({ filter: filterBlinded(filter, blinding) }), 'blinding');
    return html`<dc-blinding-slider
        .blinding=${filter.blinding ?? 1}
        @dc-blinding=${({ blinding, move }: BlindingEvent) => {
          blind(blinding);
          if (move === 'rest') session.history.seal();
        }}
      ></dc-blinding-slider>
      ${this.#reset('Back to a clean filter', filter.blinding ?? 1, 1, () => {
        blind(1);
        session.history.seal();
      })}`;
  }

  #range(session: Session, range: Shop['carryingRange'], units: UnitSystem): TemplateResult {
    const row = CARRYING_RANGES.find(({ low, high }) => low === range.low && high === range.high);
    const choices = CARRYING_RANGES.map(({ id, name }) => ({ value: id, words: name }));
    const hint = row ? sourceWords(row.source) : 'entered for this shop';
    return html`<div class="fields">
        <dc-choice-field
          class="long"
          label="For"
          .choices=${row ? choices : [{ value: OWN, words: 'a range of your own' }, ...choices]}
          .value=${row?.id ?? OWN}
          .hint=${hint}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onRange(session, value)}
        ></dc-choice-field>
        ${this.#end(session, range, 'low', 'Slower and chips settle', units)}
        ${this.#end(session, range, 'high', 'Faster and the pipe throttles', units)}
      </div>
      ${this.#reset('Back to the usual range', range, usualCarryingRange(), () =>
        session.edit(setCarryingRange(usualCarryingRange())),
      )}`;
  }

  #end(
    session: Session,
    range: Shop['carryingRange'],
    end: 'low' | 'high',
    label: string,
    units: UnitSystem,
  ): TemplateResult {
    const [low, high] = RANGE_LIMITS[end];
    return html`<dc-quantity-field
      .label=${label}
      quantity="velocity"
      .units=${units}
      .value=${range[end]}
      .low=${low}
      .high=${high}
      .problem=${this.refused?.end === end ? this.refused.words : ''}
      @dc-quantity=${({ value }: QuantityEvent) => {
        if (value === undefined) return;
        const problems = session.edit(setCarryingRange({ ...range, [end]: value }));
        const words = 'The low end must lie below the high end; the former range holds.';
        this.refused = problems.length === 0 ? undefined : { end, words };
      }}
    ></dc-quantity-field>`;
  }

  #reset<T>(words: string, now: T, usual: T, take: () => void): TemplateResult {
    const isUsual = JSON.stringify(now) === JSON.stringify(usual);
    return html`<button type="button" ?disabled=${isUsual} @click=${take}><span>${words}</span></button>`;
  }

  #onRange(session: Session, id: string): void {
    const row = CARRYING_RANGES.find((each) => each.id === id);
    if (!row) return;
    session.edit(setCarryingRange({ low: row.low, high: row.high }));
    this.refused = undefined;
  }
}

function usualAirWords(units: UnitSystem): string {
  const temperature = formatQuantity('temperature', units, USUAL_AIR.temperature).text;
  return `sea level, ${temperature} and ${formatQuantity('fraction', units, USUAL_AIR.humidity).text}`;
}

/** The same air stated in the other way; a room is taken where only its density was known. */
function airAs(air: ShopAir, kind: string): ShopAir {
  if (kind === air.kind) return air;
  if (kind === 'room') return USUAL_AIR;
  const { density, viscosity } = airOf(air);
  return { kind: 'plain', density, viscosity };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-conditions-panel': ConditionsPanel;
  }
}
