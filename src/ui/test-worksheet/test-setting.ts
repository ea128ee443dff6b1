// One throttle setting of a test: the suction at the tap, what was read of the air, what comes of it,
// and every step of the way.
// (Over 200 lines: each kind of reading has its own few fields, with their edits beside them.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { ReducedSetting } from '../../curve/throttle-test/reduce-setting.ts';
import type { TestSheet, TestSheetRow } from '../../shop/schema/test-schema.ts';
import { type AirReadingKind, withReadingKind } from '../../state/throttle-test/edit-test.ts';
import { settingWords } from '../../state/throttle-test/setting-words.ts';
import { doubtLines, type StepLine, stepLines } from '../../state/throttle-test/step-lines.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { unbroken } from '../unbroken.ts';
import { placeLabel } from './place-label.ts';
import { TestSettingEvent } from './test-setting-event.ts';
import { worksheetStyles } from './worksheet.styles.ts';
import { testSettingStyles } from './test-setting.styles.ts';

const READINGS: readonly { readonly value: AirReadingKind; readonly words: string }[] = [
  { value: 'closed', words: 'the pipe is closed: no flow' },
  { value: 'velocity', words: 'one speed, at the centre' },
  { value: 'velocity-pressure', words: 'one velocity pressure, at the centre' },
  { value: 'velocity-traverse', words: 'speeds across the pipe' },
  { value: 'velocity-pressure-traverse', words: 'velocity pressures across the pipe' },
];

/** What the document allows: suction [Pa], speed [m/s] and velocity pressure [Pa]. */
const HIGHEST = { suction: 100_000, velocity: 200, pressure: 25_000 } as const;

/**
 * @element dc-test-setting
 * @fires dc-test-setting - something of it was changed, or it is to be taken out
 */
@customElement('dc-test-setting')
export class TestSetting extends LitElement {
  static override styles = [baseStyles, buttonStyles, worksheetStyles, testSettingStyles];

  @property({ attribute: false }) test: TestSheet | undefined;
  @property({ attribute: false }) row: TestSheetRow | undefined;
  @property({ attribute: false }) reduced: ReducedSetting | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  /** Which setting of the test it is, from 1. */
  @property({ attribute: false }) number = 1;

  /** The first field, and not the button that takes the setting out. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('dc-quantity-field')?.focus();
  }

  protected override render(): TemplateResult {
    const { test, row, reduced, number } = this;
    if (!test || !row) return html`${nothing}`;
    return html`<section aria-label=${`Setting ${number}`}>
      <header>
        <h4>Setting ${number}</h4>
        <button
          type="button"
          aria-label=${`Take out setting ${number}`}
          @click=${() => this.dispatchEvent(new TestSettingEvent(undefined))}
        >
          <span>Take out</span>
        </button>
      </header>
      <div class="fields">
        <div>${this.#suction(row)}</div>
        <dc-choice-field
          label="Read of the air"
          .choices=${READINGS}
          .value=${row.air.kind}
          @dc-choice=${(event: ChoiceEvent) => this.#onKind(event, test, row)}
        ></dc-choice-field>
        ${'readings' in row.air || row.air.kind === 'closed' ? nothing : this.#centre(row, row.air)}
      </div>
      ${'readings' in row.air ? this.#traverse(test, row, row.air) : nothing}
      ${reduced ? this.#result(reduced) : nothing}
    </section>`;
  }

  #suction(row: TestSheetRow): TemplateResult {
    return html`<dc-quantity-field
        optional
        label="Suction at the tap"
        quantity="pressure"
        .units=${this.units}
        .value=${row.static}
        .low=${0}
        .high=${HIGHEST.suction}
        @dc-quantity=${(event: QuantityEvent) => {
          event.stopPropagation();
          const { static: _, ...rest } = row;
          this.#send(event.value === undefined ? rest : { ...rest, static: event.value });
        }}
      ></dc-quantity-field>
      ${this.#overRange('suction', row.staticOverRange === true, (isOver) => {
        const { staticOverRange: _, ...rest } = row;
        this.#send(isOver ? { ...rest, staticOverRange: true } : rest);
      })}`;
  }

  #centre(
    row: TestSheetRow,
    air: Extract<TestSheetRow['air'], { kind: 'velocity' | 'velocity-pressure' }>,
  ): TemplateResult {
    const isSpeed = air.kind === 'velocity';
    return html`<div>
      <dc-quantity-field
        optional
        label=${isSpeed ? 'Speed at the centre' : 'Velocity pressure at the centre'}
        quantity=${isSpeed ? 'velocity' : 'pressure'}
        .units=${this.units}
        .value=${air.reading}
        .low=${0}
        .high=${isSpeed ? HIGHEST.velocity : HIGHEST.pressure}
        @dc-quantity=${(event: QuantityEvent) => {
          event.stopPropagation();
          const { reading: _, ...rest } = air;
          const read = event.value === undefined ? rest : { ...rest, reading: event.value };
          this.#send({ ...row, air: read });
        }}
      ></dc-quantity-field>
      ${this.#airOverRange(row, air)}
    </div>`;
  }

  #traverse(
    test: TestSheet,
    row: TestSheetRow,
    air: Extract<TestSheetRow['air'], { readings: unknown }>,
  ): TemplateResult {
    const isSpeed = air.kind === 'velocity-traverse';
    return html`<fieldset class="places">
        <legend>${isSpeed ? 'Speed' : 'Velocity pressure'} at each place, from the near wall</legend>
        ${air.readings.map(
          (reading, i) => html`<dc-quantity-field
            optional
            label=${placeLabel(test, i, this.units)}
            quantity=${isSpeed ? 'velocity' : 'pressure'}
            .units=${this.units}
            .value=${reading ?? undefined}
            .low=${0}
            .high=${isSpeed ? HIGHEST.velocity : HIGHEST.pressure}
            @dc-quantity=${(event: QuantityEvent) => {
              event.stopPropagation();
              const readings = air.readings.with(i, event.value ?? null);
              this.#send({ ...row, air: { ...air, readings } });
            }}
          ></dc-quantity-field>`,
        )}
      </fieldset>
      ${this.#airOverRange(row, air)}`;
  }

  #airOverRange(
    row: TestSheetRow,
    air: Exclude<TestSheetRow['air'], { kind: 'closed' }>,
  ): TemplateResult {
    const { overRange, ...rest } = air;
    const what = air.kind.startsWith('velocity-pressure') ? 'velocity pressure' : 'speed';
    return this.#overRange(what, overRange === true, (isOver) =>
      this.#send({ ...row, air: isOver ? { ...rest, overRange: true } : rest }),
    );
  }

  #overRange(what: string, isOver: boolean, take: (isOver: boolean) => void): TemplateResult {
    return html`<label class="check"
      ><input
        type="checkbox"
        aria-label=${`The ${what} of setting ${this.number} was over range`}
        .checked=${live(isOver)}
        @change=${(event: Event) => take((event.currentTarget as HTMLInputElement).checked)}
      />over range: at least this</label
    >`;
  }

  #result(reduced: ReducedSetting): TemplateResult {
    const words = settingWords(reduced, this.units);
    const result = html`<p
      class=${reduced.kind === 'impossible' ? 'result impossible' : 'result'}
      role="status"
    >
      ${unbroken(words)}
    </p>`;
    if (reduced.kind === 'incomplete') return result;
    const doubts = reduced.kind === 'point' ? doubtLines(reduced.uncertainty, this.units) : [];
    return html`${result}
      <details>
        <summary class="small">Every step<span class="for-ears"> of setting ${this.number}</span></summary>
        ${this.#lines('Steps from the readings to flow and suction', stepLines(reduced.steps, this.units))}
        ${
          doubts.length === 0
            ? nothing
            : this.#lines('What makes it doubtful, each by itself, 95 % of the time', doubts)
        }
      </details>`;
  }

  #lines(caption: string, lines: readonly StepLine[]): TemplateResult {
    return html`<table>
      <caption class="for-ears">
        ${caption}
      </caption>
      <tbody>
        ${lines.map(
          ({ what, how, result }) => html`<tr>
            <th scope="row">${what}</th>
            <td class="how">${unbroken(how)}</td>
            <td>${unbroken(result)}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #onKind(event: ChoiceEvent, test: TestSheet, row: TestSheetRow): void {
    event.stopPropagation();
    const kind = READINGS.find(({ value }) => value === event.value)?.value;
    if (kind !== undefined) this.#send(withReadingKind(test, row, kind));
  }

  #send(row: TestSheetRow): void {
    this.dispatchEvent(new TestSettingEvent(row));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-test-setting': TestSetting;
  }
}
