// What holds for all settings of a test: the pipe, the air, how a traverse is spread, and how exact
// the instruments are.
// (Over 200 lines: many fields of one sheet, each a few lines with its edit beside it.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { testDensity } from '../../curve/throttle-test/test-density.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { sourceWords } from '../../state/run-editor/figure-source.ts';
import { withTraverse } from '../../state/throttle-test/edit-test.ts';
import {
  airAs,
  type Instrument,
  withAccuracy,
} from '../../state/throttle-test/test-circumstances.ts';
import { withOrWithout } from '../../state/with-or-without.ts';
import { centreRange } from '../../state/throttle-test/guidance.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { TestSheetEvent } from './test-sheet-event.ts';
import { worksheetStyles } from './worksheet.styles.ts';

const AIR_KINDS = [
  { value: 'room', words: 'from the height and the weather' },
  { value: 'barometer', words: 'from a barometer and the weather' },
  { value: 'density', words: 'entered as a density' },
];
const RULES = [
  { value: 'log-tchebycheff', words: 'log-Tchebycheff (ISO 3966)' },
  { value: 'equal-area', words: 'middles of rings of equal area' },
];
const PER_DIAMETER = [4, 6, 8, 10] as const;
const DIAMETERS = [1, 2, 3] as const;
const INSTRUMENTS: readonly {
  readonly key: Instrument;
  readonly name: string;
  readonly quantity: Quantity;
}[] = [
  { key: 'static', name: 'Manometer at the tap', quantity: 'pressure' },
  { key: 'velocity', name: 'Anemometer', quantity: 'velocity' },
  { key: 'velocityPressure', name: 'Manometer of the Pitot tube', quantity: 'pressure' },
];

/**
 * @element dc-test-conditions
 * @fires dc-test-sheet - the sheet is another now
 */
@customElement('dc-test-conditions')
export class TestConditions extends LitElement {
  static override styles = [baseStyles, worksheetStyles];

  @property({ attribute: false }) test: TestSheet | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { test } = this;
    if (!test) return html`${nothing}`;
    return html`<div class="group">
        <h4>The pipe and the air</h4>
        <div class="fields">
          ${this.#field(
            'Inside diameter of the pipe',
            'diameter',
            test.diameter,
            [0.01, 2],
            (diameter) => withOrWithout(test, 'diameter', diameter),
          )}
          ${this.#field(
            'It may be off by',
            'diameter',
            test.diameterTolerance,
            [0, 0.1],
            (tolerance) => withOrWithout(test, 'diameterTolerance', tolerance),
          )}
          <dc-choice-field
            label="Density of the air"
            .choices=${AIR_KINDS}
            .value=${test.air.kind}
            .hint=${formatQuantity('density', this.units, testDensity(test.air)).text}
            @dc-choice=${(event: ChoiceEvent) => {
              event.stopPropagation();
              this.#send({ ...test, air: airAs(test.air, event.value) });
            }}
          ></dc-choice-field>
          ${this.#air(test)}
        </div>
      </div>
      <details class="part">
        <summary>How the mean speed is found</summary>
        ${this.#averaging(test)}
      </details>
      <details class="part">
        <summary>How exact the instruments are</summary>
        ${this.#accuracies(test)}
      </details>`;
  }

  #air(test: TestSheet): TemplateResult {
    const { air } = test;
    if (air.kind === 'density') {
      return html`${this.#must('Density', 'density', air.density, [0.01, 2000], (density) => ({ ...test, air: { ...air, density } }))}`;
    }
    return html`${
      air.kind === 'room'
        ? this.#must(
            'Height above the sea',
            'altitude',
            air.altitude,
            [-500, 6000],
            (altitude) => ({ ...test, air: { ...air, altitude } }),
          )
        : this.#must(
            'Barometer, not reduced to sea level',
            'pressure',
            air.pressure,
            [40_000, 120_000],
            (pressure) => ({ ...test, air: { ...air, pressure } }),
          )
    }
    ${this.#must('Temperature', 'temperature', air.temperature, [-40, 60], (temperature) => ({ ...test, air: { ...air, temperature } }))}
    ${this.#must('Relative humidity', 'fraction', air.humidity, [0, 1], (humidity) => ({ ...test, air: { ...air, humidity } }))}`;
  }

  #averaging(test: TestSheet): TemplateResult {
    const { centre, traverse } = test;
    const { low, high, source } = centreRange();
    const hint = `${low} to ${high}: ${sourceWords(source)}`;
    return html`<p class="about">
        One speed at the centre is too high for the pipe as a whole and is multiplied by a part. Speeds
        across the pipe are averaged as speeds, also where velocity pressures were read.
      </p>
      <div class="fields">
        ${this.#must('Mean speed over centre', 'coefficient', centre.factor, [0.5, 1], (factor) => ({ ...test, centre: { ...centre, factor } }), hint)}
        ${this.#field(
          'That part may be off by',
          'coefficient',
          centre.tolerance,
          [0, 0.5],
          (tolerance) => ({
            ...test,
            centre: withOrWithout(centre, 'tolerance', tolerance),
          }),
        )}
        ${this.#choice('Places across the pipe', RULES, traverse.rule, (value) => {
          const rule = value === 'equal-area' ? 'equal-area' : 'log-tchebycheff';
          return withTraverse(test, { ...traverse, rule });
        })}
        ${this.#choice(
          'Places on one diameter',
          countChoices(PER_DIAMETER),
          `${traverse.perDiameter}`,
          (value) => {
            const perDiameter = PER_DIAMETER.find((count) => `${count}` === value);
            return withTraverse(test, {
              ...traverse,
              perDiameter: perDiameter ?? traverse.perDiameter,
            });
          },
        )}
        ${this.#choice('Diameters', countChoices(DIAMETERS), `${traverse.diameters}`, (value) => {
          const diameters = DIAMETERS.find((count) => `${count}` === value);
          return withTraverse(test, { ...traverse, diameters: diameters ?? traverse.diameters });
        })}
      </div>`;
  }

  #accuracies(test: TestSheet): TemplateResult {
    const { instruments } = test;
    return html`<p class="about">
        As the maker states it, such as ± 3 % of the reading and ±
        ${formatQuantity('velocity', this.units, 0.1016).text}. Both add up. It is taken as a
        limit; what a point may be off by is told for about 95 % of the time.
      </p>
      <div class="fields">
        ${INSTRUMENTS.map(({ key, name, quantity }) => this.#accuracy(test, key, name, quantity))}
        ${this.#field(
          'The density may be off by',
          'fraction',
          test.densityTolerance,
          [0, 0.5],
          (part) => withOrWithout(test, 'densityTolerance', part),
        )}
        ${this.#field(
          'Anemometer shows speeds for air of',
          'density',
          instruments.velocityDensity,
          [0.1, 10],
          (density) => ({
            ...test,
            instruments: withOrWithout(instruments, 'velocityDensity', density),
          }),
          'Hot wires mostly do, for 1.2 kg/m³, 0.075 lb/ft³. Empty: it shows the true speed, as a vane does.',
        )}
      </div>`;
  }

  #accuracy(test: TestSheet, key: Instrument, name: string, quantity: Quantity): TemplateResult {
    const { instruments } = test;
    const accuracy = instruments[key] ?? {};
    const changed = (part: 'fraction' | 'absolute', value: number | undefined): TestSheet => ({
      ...test,
      instruments: withAccuracy(instruments, key, withOrWithout(accuracy, part, value)),
    });
    return html`${this.#field(`${name}, of the reading`, 'fraction', accuracy.fraction, [0, 1], (value) => changed('fraction', value))}
    ${this.#field(`${name}, and in any case`, quantity, accuracy.absolute, [0, 10_000], (value) => changed('absolute', value))}`;
  }

  #choice(
    label: string,
    choices: readonly { readonly value: string; readonly words: string }[],
    value: string,
    take: (value: string) => TestSheet,
  ): TemplateResult {
    return html`<dc-choice-field
      .label=${label}
      .choices=${choices}
      .value=${value}
      @dc-choice=${(event: ChoiceEvent) => {
        event.stopPropagation();
        this.#send(take(event.value));
      }}
    ></dc-choice-field>`;
  }

  /** A field that can't be left open. */
  #must(
    label: string,
    quantity: Quantity,
    value: number,
    limits: readonly [number, number],
    take: (value: number) => TestSheet,
    hint = '',
  ): TemplateResult {
    const takeAny = (next: number | undefined) => (next === undefined ? undefined : take(next));
    return this.#anyField(label, quantity, value, limits, takeAny, hint, 'needed');
  }

  #field(
    label: string,
    quantity: Quantity,
    value: number | undefined,
    limits: readonly [number, number],
    take: (value: number | undefined) => TestSheet,
    hint = '',
  ): TemplateResult {
    return this.#anyField(label, quantity, value, limits, take, hint, 'optional');
  }

  #anyField(
    label: string,
    quantity: Quantity,
    value: number | undefined,
    [low, high]: readonly [number, number],
    take: (value: number | undefined) => TestSheet | undefined,
    hint: string,
    need: 'needed' | 'optional',
  ): TemplateResult {
    return html`<dc-quantity-field
      ?optional=${need === 'optional'}
      .label=${label}
      .quantity=${quantity}
      .units=${this.units}
      .value=${value}
      .low=${low}
      .high=${high}
      .hint=${hint}
      @dc-quantity=${(event: QuantityEvent) => {
        event.stopPropagation();
        const test = take(event.value);
        if (test) this.#send(test);
      }}
    ></dc-quantity-field>`;
  }

  #send(test: TestSheet): void {
    this.dispatchEvent(new TestSheetEvent(test));
  }
}

function countChoices(counts: readonly number[]): { value: string; words: string }[] {
  return counts.map((count) => ({ value: `${count}`, words: `${count}` }));
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-test-conditions': TestConditions;
  }
}
