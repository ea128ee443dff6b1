// The answer to "Which collector?": a sentence, all of them in a table, some closely, and a picture. (A
// little over 200 lines, a quarter of them styles and types.)

import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CollectorsLines } from '../../plot/collectors-plot.ts';
import { collectorSentence, footingWords } from '../../shop/decisions/collector-sentence.ts';
import {
  type CloseLook,
  closeTable,
  collectorTable,
  stateName,
} from '../../state/decisions/collector-tables.ts';
import type {
  CollectorAnswer,
  CollectorQuestion,
  ComparedCollector,
} from '../../state/decisions/question.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../answer-table/answer-table.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../collectors-plot/collectors-plot.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { figureTableStyles } from '../plot-figure/figure-table.styles.ts';
import '../plot-figure/plot-tools.ts';
import { Stages } from '../stages.ts';
import type { Answered } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { unbroken } from '../unbroken.ts';
import { collectorFigures } from './collector-figures.ts';

/** Values of the choice of what to look at: a collector by name, a state by its place. */
const ONE = 'collector ';
const STATE = 'state ';
/** The sentence comes first. */
const STAGE = { all: 1, choice: 2, closely: 3, picture: 4 };

/**
 * @element dc-collectors-answer
 * @fires dc-take - a collector is to be taken over, or kept beside the shop
 * @slot said - what came of that
 * @slot doubt - how sure the answer is
 * @slot gates - which gates are open in the picture
 */
@customElement('dc-collectors-answer')
export class CollectorsAnswer extends LitElement {
  static override styles = [
    baseStyles,
    figureTableStyles,
    answerStyles,
    css`
      /* The words of a failure leave room for what takes a row over. */
      .tables {
        --dc-words: 32ch;
      }

      .choice,
      ::slotted([slot='gates']) {
        max-inline-size: 420px;
        margin-block-start: 8px;
      }

      dl {
        margin: 0;
        font-size: var(--dc-small);
        line-height: 1.25rem;
      }

      dt {
        font-weight: 600;
      }

      dd {
        max-inline-size: 90ch;
        margin: 0 0 8px;
        color: var(--dc-ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) question: CollectorQuestion | undefined;
  @property({ attribute: false }) answer: CollectorAnswer | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';
  /** All of them over the ducts; undefined until that is known. */
  @property({ attribute: false }) picture: Answered<'collector picture'> | undefined;

  @state() private look = '';

  readonly #stages = new Stages(this, STAGE.picture);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('answer')) this.#stages.restart();
  }

  protected override render(): TemplateResult {
    const { question, answer, units, look, picture } = this;
    if (!question || !answer) return html`${nothing}`;
    const { shop } = question;
    const { rows } = answer;
    const sentence = collectorSentence(rows, shop.drops.length);
    const { part } = this.#stages;
    return html`<div class="answer stacked">
      <p class="sentence">${unbroken(sentence)}</p>
      <div class="whole"><slot name="said"></slot><slot name="doubt"></slot></div>
      <div class="tables">
        ${part(STAGE.all, [answer, shop, units], () => this.#all(rows, shop))}
        ${part(STAGE.choice, [answer, look], () => this.#choice(rows))}
        ${part(STAGE.closely, [answer, shop, units, look], () => this.#closely(rows, shop))}
      </div>
      <div class="picture">
        <slot name="gates"></slot>
        ${part(STAGE.picture, [answer, units, picture], () =>
          picture ? this.#picture(picture, sentence) : html`${nothing}`,
        )}
      </div>
    </div>`;
  }

  #all(rows: readonly ComparedCollector[], shop: Shop): TemplateResult {
    const all = collectorTable(rows, shop, this.units);
    return html`<dc-answer-table
        sortable
        caption="Collectors on these ducts, in the same air"
        .columns=${all.columns}
        .rows=${all.rows}
      ></dc-answer-table>
      ${this.#footing(rows)}`;
  }

  #choice(rows: readonly ComparedCollector[]): TemplateResult {
    const look = lookOf(this.look, rows);
    return html`<dc-choice-field
      class="choice"
      label="Look closely at"
      .choices=${choicesOf(rows)}
      .value=${look.kind === 'state' ? `${STATE}${look.index}` : `${ONE}${look.name}`}
      @dc-choice=${(event: ChoiceEvent) => this.#onLook(event)}
    ></dc-choice-field>`;
  }

  #closely(rows: readonly ComparedCollector[], shop: Shop): TemplateResult {
    const look = lookOf(this.look, rows);
    const close = closeTable(rows, look, shop, this.units);
    const caption =
      look.kind === 'state'
        ? `${stateName(rows[0]!.states[look.index]!)}, on each collector`
        : `Every drop and gate set on ${look.name}`;
    return html`<dc-answer-table
      sortable
      caption=${caption}
      .columns=${close.columns}
      .rows=${close.rows}
    ></dc-answer-table>`;
  }

  #onLook({ value }: ChoiceEvent): void {
    this.look = value;
  }

  /** What was done so that alike is compared with alike. */
  #footing(rows: readonly ComparedCollector[]): TemplateResult {
    return html`<details>
      <summary>How the curves were brought to one footing</summary>
      <p class="note">
        Each is the suction left at the flange, in the air of this shop, behind the filter and the
        separator as far as they are known.
      </p>
      <dl>
        ${rows.map(
          ({ name, notes }) => html`<dt>${name}</dt>
            <dd>${notes.map((note) => footingWords(note, this.units)).join(' ')}</dd>`,
        )}
      </dl>
    </details>`;
  }

  #picture({ question, answer }: Answered<'collector picture'>, sentence: string): TemplateResult {
    const lines: CollectorsLines = {
      ...answer,
      collectors: answer.collectors.map((each, i) => ({
        ...each,
        origin: question.candidates[i]!.origin,
      })),
    };
    return html`<p class="note">
        Open: ${question.opened}. The bold curve is today’s; hollow points are of examples, with
        invented curves. In 9 of 10 cases the curves lie within their bands.
      </p>
      <dc-collectors-plot
        label="Collectors’ curves over the curve of the ducts. ${sentence}"
        .units=${this.units}
        .lines=${lines}
      ></dc-collectors-plot>
      <dc-plot-tools
        label="collectors on the ducts"
        file="collectors"
        .table=${() => collectorFigures(lines, this.units)}
        .picture=${() => this.renderRoot.querySelector('dc-collectors-plot')?.picture}
      ></dc-plot-tools>`;
  }
}

/** At first the drop that tells the collectors apart, or the first one. */
function lookOf(wish: string, rows: readonly ComparedCollector[]): CloseLook {
  const name = wish.slice(ONE.length);
  if (wish.startsWith(ONE) && rows.some((row) => row.name === name)) {
    return { kind: 'collector', name };
  }
  const states = rows[0]?.states ?? [];
  if (wish.startsWith(STATE)) {
    const index = Number(wish.slice(STATE.length));
    if (states[index]) return { kind: 'state', index };
  }
  const verdictsIn = (at: number) =>
    new Set(rows.map(({ states: each }) => each[at]?.drops[0]?.report.verdict));
  const index = states.findIndex((_, at) => verdictsIn(at).size > 1);
  return { kind: 'state', index: Math.max(0, index) };
}

function choicesOf(rows: readonly ComparedCollector[]) {
  return [
    ...(rows[0]?.states ?? []).map((each, i) => ({
      value: `${STATE}${i}`,
      words: stateName(each),
      group: 'On every collector',
    })),
    ...rows.map(({ name }) => ({ value: `${ONE}${name}`, words: name, group: 'With every drop' })),
  ];
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collectors-answer': CollectorsAnswer;
  }
}
