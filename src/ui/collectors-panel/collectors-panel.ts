// "Which collector?": which ones are set side by side on the ducts of the shop, and the answer.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { exampleCurves } from '../../shop/example-curves.ts';
import { usualStates } from '../../shop/gate-state.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { type Candidate, candidatesFor } from '../../state/decisions/candidates.ts';
import { collectorDoubtWords } from '../../state/decisions/collector-doubt-words.ts';
import { stateName } from '../../state/decisions/collector-tables.ts';
import type { CollectorQuestion } from '../../state/decisions/question.ts';
import { usuallyOpen } from '../../state/usually-open.ts';
import type { TakeEvent } from '../answer-table/take-event.ts';
import { DoubtController } from '../doubt-part/doubt-controller.ts';
import { SessionController } from '../session-controller.ts';
import '../study-status/study-status.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { type Answered, StudyController } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { TakeOver } from '../take-over/take-over.ts';
import type { CandidatesEvent } from './candidates-event.ts';
import './collector-fields.ts';
import './collectors-answer.ts';

/**
 * @element dc-collectors-panel
 * @fires dc-shelf - a variant is to be kept beside the shop
 */
@customElement('dc-collectors-panel')
export class CollectorsPanel extends LitElement {
  static override styles = [baseStyles, answerStyles];

  /** Names of collectors that are left out. */
  @state() private left: readonly string[] = [];
  /** Place of the state in the picture, among the usual ones. */
  @state() private open: string | undefined;

  readonly #session = new SessionController(this, (session) => ({
    session,
    shop: session.shop.value,
    units: session.units.value,
  }));
  readonly #study = new StudyController(this, 'collectors');
  readonly #doubting = new DoubtController(this, 'collector doubt');
  readonly #taking = new TakeOver(this);
  readonly #examples = exampleCurves();
  #candidates: readonly Candidate[] = [];
  #question: CollectorQuestion | undefined;
  #asked: readonly unknown[] = [];

  protected override willUpdate(): void {
    const read = this.#session.value;
    if (!read) return;
    const { answered } = this.#study;
    this.#doubting.follow(answered, (doubt) => ({ ...answered!.question, doubt }));
    const { shop } = read;
    const asked = [shop, this.left, this.open];
    if (asked.every((each, i) => each === this.#asked[i])) return;
    this.#asked = asked;
    this.#candidates = candidatesFor(shop, this.#examples);
    const wanted = this.#candidates.filter(({ name }) => !this.left.includes(name));
    this.#question = {
      shop,
      candidates: wanted.map(({ collector }) => collector),
      open: this.#state(shop).open,
    };
    if (wanted.length > 0) this.#study.wish(this.#question);
    else this.#study.forget();
  }

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { shop } = read;
    const states = usualStates(shop);
    const { answered, state: asking } = this.#study;
    return html`<dc-collector-fields
        .candidates=${this.#candidates}
        .left=${this.left}
        .states=${states.map((each, i) => ({ value: String(i), words: stateName({ state: each }) }))}
        .state=${String(states.findIndex(({ open }) => open === this.#state(shop).open))}
        @dc-candidates=${(event: CandidatesEvent) => this.#onCandidates(event)}
      ></dc-collector-fields>
      <dc-study-status
        label="all collectors"
        .state=${asking}
        @dc-study-wish=${({ wish }: StudyWishEvent) => this.#onWish(wish)}
      ></dc-study-status>
      ${answered ? this.#answer(answered) : html`${this.#none()}`}`;
  }

  #none(): TemplateResult {
    const isNone = this.#question?.candidates.length === 0;
    return html`${isNone ? html`<p class="sentence">No collector is chosen.</p>` : nothing}`;
  }

  #answer(answered: Answered<'collectors'>): TemplateResult {
    const { session, units } = this.#session.value!;
    const { question, answer } = answered;
    const doubt = this.#doubting.doubtOf(answered);
    const sure = doubt ? collectorDoubtWords(answer.rows, doubt) : '';
    const opened = question.open
      .map((id) => question.shop.drops.find((drop) => drop.id === id)?.name ?? id)
      .join(', ');
    return html`<dc-collectors-answer
      .question=${question}
      .answer=${answer}
      .units=${units}
      .opened=${opened}
      @dc-take=${({ key, how }: TakeEvent) => {
        const row = answer.rows.find(({ name }) => name === key);
        const words = `collector: ${key}`;
        if (row) this.#taking[how](session, { choice: row.choice, words });
      }}
    >
      <div slot="said">${this.#taking.line}</div>
      <div slot="doubt">${this.#doubting.part('the collectors', sure, units)}</div>
    </dc-collectors-answer>`;
  }

  /** The chosen state; at first the gate set that the shop opens with. */
  #state(shop: Shop) {
    const states = usualStates(shop);
    const usual = usuallyOpen(shop).join();
    const chosen = this.open === undefined ? undefined : states[Number(this.open)];
    return chosen ?? states.findLast(({ open }) => open.join() === usual) ?? states[0]!;
  }

  #onCandidates({ left, state: open }: CandidatesEvent): void {
    this.left = left;
    this.open = open;
  }

  #onWish(wish: 'cancel' | 'again'): void {
    if (wish === 'cancel') this.#study.cancel();
    else if (this.#question) void this.#study.ask(this.#question);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collectors-panel': CollectorsPanel;
  }
}
