// A worksheet for measuring a collector of one's own: what holds for the whole test, then one part for
// each throttle setting, and the points that come of it. Every change is sent at once, to be kept.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type ReducedTest, reduceTest } from '../../curve/throttle-test/test-points.ts';
import type { TestAir } from '../../curve/throttle-test/throttle-test.ts';
import { testFigures } from '../../plot/test-figures.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import {
  startedTest,
  withNewSetting,
  withoutSetting,
  withSetting,
} from '../../state/throttle-test/edit-test.ts';
import { unstatedWords } from '../../state/throttle-test/setting-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import '../table-out/table-out.ts';
import './test-conditions.ts';
import './test-guidance.ts';
import { TestPointsEvent } from './test-points-event.ts';
import './test-setting.ts';
import type { TestSettingEvent } from './test-setting-event.ts';
import { TestSheetEvent } from './test-sheet-event.ts';
import { worksheetStyles } from './worksheet.styles.ts';

/** The air of a test that nobody has said anything of. */
const USUAL_AIR: TestAir = { kind: 'room', altitude: 0, temperature: 20, humidity: 0.5 };

/**
 * @element dc-test-worksheet
 * @fires dc-test-sheet - something was typed: the sheet as it is now, to be kept
 * @fires dc-test-points - its points are to be those of the curve
 */
@customElement('dc-test-worksheet')
export class TestWorksheet extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    worksheetStyles,
    css`
      .foot {
        padding-block-start: 8px;
      }

      .foot p {
        margin: 4px 0;
      }

      .foot button,
      .add {
        margin-inline-start: -6px;
      }
    `,
  ];

  /** The sheet; undefined where none was begun. */
  @property({ attribute: false }) test: TestSheet | undefined;

  /** The air that a new sheet begins with. */
  @property({ attribute: false }) air: TestAir | undefined;

  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const test = this.#sheet;
    const reduced = reduceTest(test);
    return html`<p class="about">
        Hang a straight pipe on the collector, throttle it step by step, and read at each step the suction at
        a tap and the speed of the air. Nothing here changes the curve until you say so.
      </p>
      <details class="part">
        <summary>Where to hold the instrument</summary>
        <dc-test-guidance .test=${test} .units=${this.units}></dc-test-guidance>
      </details>
      <dc-test-conditions
        .test=${test}
        .units=${this.units}
        @dc-test-sheet=${(event: TestSheetEvent) => {
          event.stopPropagation();
          this.#send(event.test);
        }}
      ></dc-test-conditions>
      ${repeat(
        test.rows,
        ({ id }) => id,
        (row, i) => html`<dc-test-setting
          .test=${test}
          .row=${row}
          .reduced=${reduced.settings[i]}
          .units=${this.units}
          .number=${i + 1}
          @dc-test-setting=${(event: TestSettingEvent) => this.#onSetting(event, row.id)}
        ></dc-test-setting>`,
      )}
      <button class="add" type="button" @click=${() => this.#add()}><span>Add a setting</span></button>
      ${this.#foot(test, reduced)}`;
  }

  get #sheet(): TestSheet {
    return this.test ?? startedTest(this.air ?? USUAL_AIR);
  }

  #foot(test: TestSheet, { settings, points }: ReducedTest): TemplateResult {
    const flows = new Set(points.map(({ flow }) => flow)).size;
    const unstated = unstatedWords(settings);
    const bounds = settings.filter(({ kind }) => kind === 'bound').length;
    return html`${settings.length === 0 ? nothing : html`<dc-table-out .table=${testFigures(settings, this.units)}></dc-table-out>`}
    <div class="foot">
      ${unstated === '' ? nothing : html`<p class="about">${unstated}</p>`}
      <p>${pointsWords(points.length, flows, bounds)}</p>
      ${
        flows < 2
          ? nothing
          : html`<button
              type="button"
              @click=${() => this.dispatchEvent(new TestPointsEvent(test, points))}
            >
              <span>Make these ${points.length} points the curve</span>
            </button>`
      }
    </div>`;
  }

  #onSetting(event: TestSettingEvent, id: string): void {
    event.stopPropagation();
    const { row } = event;
    this.#send(row ? withSetting(this.#sheet, row) : withoutSetting(this.#sheet, id));
    // The button that was pressed is gone with its setting.
    if (!row) this.renderRoot.querySelector<HTMLElement>('.add')?.focus();
  }

  async #add(): Promise<void> {
    this.#send(withNewSetting(this.#sheet));
    await this.updateComplete;
    const last = [...this.renderRoot.querySelectorAll('dc-test-setting')].at(-1);
    await last?.updateComplete;
    last?.focus();
  }

  /** Shown at once, also where whoever holds the sheet is slow to give it back. */
  #send(test: TestSheet): void {
    this.test = test;
    this.dispatchEvent(new TestSheetEvent(test));
  }
}

function pointsWords(points: number, flows: number, bounds: number): string {
  const over =
    bounds === 0
      ? ''
      : ` ${bounds === 1 ? 'One setting is' : `${bounds} settings are`} over range and kept as a bound.`;
  if (points === 0) return `No setting is complete yet.${over}`;
  if (flows < 2) return `A curve needs two different flows; there is one.${over}`;
  const again =
    flows < points
      ? ' A flow was met twice, so the line will be smoothed between the readings.'
      : '';
  return `${points} points of total suction, in the air of the test.${over}${again}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-test-worksheet': TestWorksheet;
  }
}
