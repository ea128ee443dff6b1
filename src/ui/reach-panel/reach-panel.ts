// "Can it reach further?": what is asked about a longer run or a new drop, and the answer.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { ReachLines } from '../../plot/reach-plot.ts';
import { reachFigures } from '../../plot/reach-table.ts';
import type { ReachDoubt } from '../../shop/decisions/reach-doubt.ts';
import { worstOff } from '../../shop/worst-off.ts';
import type { ReachAnswer, ReachQuestion } from '../../state/decisions/question.ts';
import {
  beginForm,
  heldForm,
  type ReachForm,
  reachQuestion,
} from '../../state/decisions/reach-form.ts';
import { reachDoubtWords } from '../../state/decisions/reach-doubt-words.ts';
import { costTable, limitTable, sizeTable } from '../../state/decisions/reach-tables.ts';
import { reachAnswerWords, reachSpeech, runInWords } from '../../state/decisions/reach-words.ts';
import type { Session } from '../../state/session.ts';
import '../answer-table/answer-table.ts';
import type { TakeEvent } from '../answer-table/take-event.ts';
import { DoubtController } from '../doubt-part/doubt-controller.ts';
import '../plot-figure/plot-tools.ts';
import '../reach-plot/reach-plot.ts';
import { SessionController } from '../session-controller.ts';
import '../study-status/study-status.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { type Answered, StudyController } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { TakeOver } from '../take-over/take-over.ts';
import { unbroken } from '../unbroken.ts';
import './reach-fields.ts';
import type { ReachFormEvent } from './reach-form-event.ts';

/**
 * @element dc-reach-panel
 * @fires dc-shelf - a variant is to be kept beside the shop
 */
@customElement('dc-reach-panel')
export class ReachPanel extends LitElement {
  static override styles = [baseStyles, answerStyles];

  @state() private form: ReachForm | undefined;

  readonly #session = new SessionController(this, (session) => ({
    session,
    shop: session.shop.value,
    units: session.units.value,
  }));
  readonly #study = new StudyController(this, 'reach');
  readonly #doubting = new DoubtController(this, 'reach doubt');
  readonly #taking = new TakeOver(this);
  #question: ReachQuestion | undefined;

  protected override willUpdate(): void {
    const read = this.#session.value;
    if (!read) return;
    const { session, shop, units } = read;
    const { answered } = this.#study;
    this.#doubting.follow(answered, (doubt) => ({ ...answered!.question, doubt }));
    const form = heldForm(this.form ?? beginForm(shop, firstDrop(session), units), shop);
    if (form === this.form && shop === this.#question?.shop) return;
    this.form = form;
    this.#ask(shop, form);
  }

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { answered, state } = this.#study;
    return html`<dc-reach-fields
        .shop=${read.shop}
        .form=${this.form}
        .units=${read.units}
        @dc-reach-form=${({ form }: ReachFormEvent) => this.#onForm(form)}
      ></dc-reach-fields>
      <dc-study-status
        label="how far it reaches"
        .state=${state}
        @dc-study-wish=${({ wish }: StudyWishEvent) => this.#onWish(wish)}
      ></dc-study-status>
      ${answered ? this.#answer(answered) : nothing}`;
  }

  #answer(answered: Answered<'reach'>): TemplateResult {
    const { question, answer } = answered;
    const { session, units } = this.#session.value!;
    const speech = reachSpeech(question, units);
    const sentence = reachAnswerWords(question, answer, speech);
    const limits = limitTable(answer, speech);
    const sizes = sizeTable(question, answer, speech);
    const costs = costTable(answer, speech);
    const take = ({ key, how }: TakeEvent) => {
      const row = answer.sizes.sizes.find(({ size }) => size.id === key);
      if (row)
        this.#taking[how](session, {
          choice: row.choice,
          words: runInWords(question, key, speech),
        });
    };
    const doubt = this.#doubting.doubtOf(answered);
    const { length, longest } = question;
    const sure = doubt ? reachDoubtWords(doubt, length, longest, units) : '';
    const lines = linesOf(answer, question, doubt);
    return html`<div class="answer">
      <p class="sentence">${unbroken(sentence)}</p>
      ${this.#taking.line} ${this.#doubting.part('how far it reaches', sure, units)}
      <div class="tables"><dc-answer-table
        caption="In every size, at the length to add"
        .columns=${sizes.columns}
        .rows=${sizes.rows}
        @dc-take=${take}
      ></dc-answer-table>
      ${
        limits.rows.length === 0
          ? nothing
          : html`<dc-answer-table
              caption="Everything that gives out or comes back, in the chosen size"
              .columns=${limits.columns}
              .rows=${limits.rows}
            ></dc-answer-table>`
      }
      ${
        costs.rows.length === 0
          ? nothing
          : html`<dc-answer-table
              caption="What the length to add costs, in the saved gate sets"
              .columns=${costs.columns}
              .rows=${costs.rows}
            ></dc-answer-table>`
      }</div>
      <div class="picture"><dc-reach-plot
        label="Air and slowest speed over the added length. ${sentence}"
        .units=${units}
        .lines=${lines}
        .reach=${answer.reach.end.kind === 'limit' ? answer.reach.length : undefined}
        .wanted=${question.length}
      ></dc-reach-plot>
      <dc-plot-tools
        label="air and speed over the added length"
        file="reach"
        .table=${() => reachFigures(lines.stops, units)}
        .picture=${() => this.renderRoot.querySelector('dc-reach-plot')?.picture}
      ></dc-plot-tools></div>
    </div>`;
  }

  #onForm(form: ReachForm): void {
    this.form = form;
    const read = this.#session.value;
    if (read) this.#ask(read.shop, form);
  }

  #ask(shop: ReachQuestion['shop'], form: ReachForm): void {
    const { units } = this.#session.value!;
    this.#question = reachQuestion(form, shop, units);
    this.#study.wish(this.#question);
  }

  #onWish(wish: 'cancel' | 'again'): void {
    if (wish === 'cancel') this.#study.cancel();
    else if (this.#question) void this.#study.ask(this.#question);
  }
}

/** The drop that is looked at, or the one worst off, or the first. */
function firstDrop(session: Session): string {
  const selected = session.selection.peek();
  if (selected?.kind === 'drop') return selected.id;
  return worstOff(session.report.peek())?.id ?? session.shop.peek().drops[0]!.id;
}

function linesOf(
  { reach }: ReachAnswer,
  { shop }: ReachQuestion,
  doubt: ReachDoubt | undefined,
): ReachLines {
  return {
    stops: reach.points.map(({ length, figures }) => ({
      length,
      flow: figures?.flow,
      slowest: figures?.slowest,
    })),
    doubt: (doubt?.points ?? []).map(({ length, flow, slowest }) => ({
      length,
      flow: [flow.low, flow.high],
      slowest: [slowest.low, slowest.high],
    })),
    need: reach.need,
    range: shop.carryingRange,
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-reach-panel': ReachPanel;
  }
}
