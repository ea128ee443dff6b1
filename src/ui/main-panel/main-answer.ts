// The answer to "Would a larger main help?": a sentence, the sizes, one of them closely, and a picture
// of every drop.

import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { MainSeries, MainStop } from '../../plot/main-multiples.ts';
import type { ToldMains } from '../../state/decisions/told-doubt.ts';
import type { MainRow, MainSizes } from '../../shop/decisions/main-sizes.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { mainDropTable, mainSetTable, mainTable } from '../../state/decisions/main-tables.ts';
import { bestMain, mainAnswerWords, type MainSpeech } from '../../state/decisions/main-words.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import '../answer-table/answer-table.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../main-plot/main-plot.ts';
import '../plot-figure/plot-tools.ts';
import { Stages } from '../stages.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { unbroken } from '../unbroken.ts';
import { mainFigures } from './main-figures.ts';

const STAGE = { sentence: 0, sizes: 1, picture: 2, choice: 3, closely: 4, sets: 5 };

/**
 * @element dc-main-answer
 * @fires dc-take - a size is to be taken over, or kept beside the shop
 * @slot said - what came of that
 * @slot doubt - how sure the answer is
 */
@customElement('dc-main-answer')
export class MainAnswer extends LitElement {
  static override styles = [
    baseStyles,
    answerStyles,
    css`
      .choice {
        max-inline-size: 220px;
        margin-block-start: 8px;
      }
    `,
  ];

  @property({ attribute: false }) shop: Shop | undefined;
  /** The sizes to be shown, by rising diameter, and the main of today. */
  @property({ attribute: false }) sizes: MainSizes | undefined;
  @property({ attribute: false }) doubts: ToldMains | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  /** Id of the size that is looked at closely; empty for the best. */
  @state() private closely = '';

  readonly #stages = new Stages(this, STAGE.sets);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sizes')) this.#stages.restart();
  }

  protected override render(): TemplateResult {
    const { shop, sizes, units, doubts } = this;
    if (!shop || !sizes) return html`${nothing}`;
    const speech = { shop, system: units };
    const { rows } = sizes;
    const best = bestMain(rows, shop);
    const row = rows.find(({ size }) => size.id === this.closely) ?? best;
    const { part } = this.#stages;
    return html`<div class="answer stacked">
      ${part(STAGE.sentence, [sizes, shop, units], () => sentenceOf(sizes, speech))}
      <div class="whole"><slot name="said"></slot><slot name="doubt"></slot></div>
      <div class="tables">
        ${part(STAGE.sizes, [sizes, shop, units], () => this.#sizes(rows, best, speech))}
      </div>
      <div class="picture">
        ${part(STAGE.picture, [sizes, shop, units, doubts], () => this.#picture(sizes, speech))}
      </div>
      <div class="tables">
        ${part(STAGE.choice, [row, sizes], () => this.#choice(row, rows))}
        ${part(STAGE.closely, [row, sizes, shop, units], () => this.#closely(row, speech))}
        ${part(STAGE.sets, [row, sizes, shop, units], () => this.#sets(row, sizes, speech))}
      </div>
    </div>`;
  }

  #sizes(rows: readonly MainRow[], best: MainRow | undefined, speech: MainSpeech): TemplateResult {
    const all = mainTable(rows, best, speech);
    return html`<dc-answer-table
      caption="The main in every size"
      .columns=${all.columns}
      .rows=${all.rows}
    ></dc-answer-table>`;
  }

  #onSize({ value }: ChoiceEvent): void {
    this.closely = value;
  }

  #choice(row: MainRow | undefined, rows: readonly MainRow[]): TemplateResult {
    if (!row) return html`${nothing}`;
    return html`<dc-choice-field
      class="choice"
      label="Look closely at a main of"
      .choices=${rows.map(({ size }) => ({ value: size.id, words: size.name }))}
      .value=${row.size.id}
      @dc-choice=${(event: ChoiceEvent) => this.#onSize(event)}
    ></dc-choice-field>`;
  }

  #closely(row: MainRow | undefined, speech: MainSpeech): TemplateResult {
    if (!row) return html`${nothing}`;
    const drops = mainDropTable(row, speech);
    return html`<dc-answer-table
      sortable
      caption="A main of ${row.size.name}, each drop alone"
      .columns=${drops.columns}
      .rows=${drops.rows}
    ></dc-answer-table>`;
  }

  #sets(row: MainRow | undefined, sizes: MainSizes, speech: MainSpeech): TemplateResult {
    const sets = row && mainSetTable(row, sizes, speech);
    if (!sets || sets.rows.length === 0) return html`${nothing}`;
    return html`<dc-answer-table
      caption="A main of ${row.size.name}, in the saved gate sets"
      .columns=${sets.columns}
      .rows=${sets.rows}
    ></dc-answer-table>`;
  }

  #picture(sizes: MainSizes, speech: MainSpeech): TemplateResult {
    const { shop } = speech;
    const { rows } = sizes;
    const series = seriesOf(rows, sizes, this.doubts, shop);
    const names = rows.map(({ size }) => size.name);
    const sentence = mainAnswerWords(sizes, rows, speech);
    return html`<p class="note">
        Each drop alone over the size of the main: its air in ${unitLabel('flow', this.units)} above,
        the slowest in the main in ${unitLabel('velocity', this.units)} below, with the speeds that
        carry as a band. Dashed: its air today.
      </p>
      <dc-main-plot
        label="Air and speed in the main over its size, for each drop. ${sentence}"
        .units=${this.units}
        .series=${series}
        .sizes=${names}
        .range=${shop.carryingRange}
      ></dc-main-plot>
      <dc-plot-tools
        label="every drop over the size of the main"
        file="main"
        .table=${() => mainFigures(series, names, this.units)}
        .picture=${() => this.renderRoot.querySelector('dc-main-plot')?.picture}
      ></dc-plot-tools>`;
  }
}

function sentenceOf(sizes: MainSizes, speech: MainSpeech): TemplateResult {
  return html`<p class="sentence">${unbroken(mainAnswerWords(sizes, sizes.rows, speech))}</p>`;
}

function seriesOf(
  rows: readonly MainRow[],
  sizes: MainSizes,
  doubts: ToldMains | undefined,
  shop: Shop,
): readonly MainSeries[] {
  return shop.drops.map(({ id, name }, i) => ({
    name,
    today: sizes.today.states[i]?.drops.find((drop) => drop.id === id)?.flow ?? 0,
    stops: rows.map((row): MainStop => {
      const state = row.states[i];
      const after = row.drops[i]!.after;
      const doubt = doubts?.rows[sizes.rows.indexOf(row)]?.states[i]?.drops.find(
        (drop) => drop.id === id,
      );
      // The doubt is of the slowest on the whole way; where that lies in the main it is this.
      const isMain = after.slowest.section === state?.mainSlowest?.section;
      return {
        flow: after.flow,
        speed: state?.mainSlowest?.velocity,
        flowDoubt: doubt && [doubt.flow.low, doubt.flow.high],
        speedDoubt: doubt && isMain ? [doubt.slowest.low, doubt.slowest.high] : undefined,
      };
    }),
  }));
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-main-answer': MainAnswer;
  }
}
