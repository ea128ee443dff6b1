// "Which collector?": which ones are set side by side on the ducts of the shop, and the answer. The
// picture is worked out by itself, so that other gates in it don't have everything worked out again.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { exampleCurves } from '../../shop/example-curves.ts';
import { type Travels, travelsWhenOpen, usualStates } from '../../shop/gate-state.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { CurveShelf } from '../../state/curve-shelf.ts';
import { type Candidate, candidatesFor } from '../../state/decisions/candidates.ts';
import { collectorDoubtWords } from '../../state/decisions/collector-doubt-words.ts';
import { stateName } from '../../state/decisions/collector-tables.ts';
import type { CollectorQuestion } from '../../state/decisions/question.ts';
import { travelsOf } from '../../state/gate-positions.ts';
import type { TakeEvent } from '../answer-table/take-event.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import { ShelfController } from '../curve-shelf/shelf-controller.ts';
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

/** Among the gates in the picture: as they are now. The others are places among the usual states. */
const NOW = 'now';

/**
 * @element dc-collectors-panel
 * @fires dc-shelf - a variant is to be kept beside the shop
 */
@customElement('dc-collectors-panel')
export class CollectorsPanel extends LitElement {
  static override styles = [baseStyles, answerStyles];

  /** Where the reader's own curves are; in this browser unless another is given. */
  @property({ attribute: false }) shelf: CurveShelf | undefined;

  /** Keys of collectors that are left out. */
  @state() private left: readonly string[] = [];
  /** Which gates are open in the picture. */
  @state() private gates = NOW;

  readonly #session = new SessionController(
    this,
    (session) => ({
      session,
      shop: session.shop.value,
      units: session.units.value,
      gates: session.gates.value,
    }),
    'when seen',
  );
  readonly #shelved = new ShelfController(this);
  readonly #study = new StudyController(this, 'collectors');
  readonly #picturing = new StudyController(this, 'collector picture');
  readonly #doubting = new DoubtController(this, 'collector doubt');
  readonly #taking = new TakeOver(this);
  readonly #examples = exampleCurves();
  #candidates: readonly Candidate[] = [];
  #question: CollectorQuestion | undefined;
  #asked: readonly unknown[] = [];
  #pictured: readonly unknown[] = [];

  protected override willUpdate(): void {
    const read = this.#session.value;
    if (!read) return;
    const { answered } = this.#study;
    this.#doubting.follow(answered, (doubt) => ({ ...answered!.question, doubt }));
    const { shop } = read;
    const { curves } = this.#shelved;
    if (differ(this.#asked, (this.#asked = [shop, curves, this.left]))) {
      this.#candidates = candidatesFor(shop, curves, this.#examples);
      const candidates = this.#candidates.filter(({ key }) => !this.left.includes(key));
      this.#question = { shop, candidates };
      if (candidates.length > 0) this.#study.wish(this.#question);
      else this.#study.forget();
    }
    this.#wishPicture();
  }

  protected override render(): TemplateResult {
    if (!this.#session.value) return html`${nothing}`;
    const { answered, state: asking } = this.#study;
    return html`<dc-collector-fields
        .candidates=${this.#candidates}
        .left=${this.left}
        .missing=${this.#shelved.notice?.text ?? ''}
        @dc-candidates=${({ left }: CandidatesEvent) => this.#onCandidates(left)}
      ></dc-collector-fields>
      <dc-study-status
        label="all collectors"
        .state=${asking}
        @dc-study-wish=${({ wish }: StudyWishEvent) => this.#onWish(wish)}
      ></dc-study-status>
      ${answered ? this.#answer(answered) : this.#none()}`;
  }

  #none(): TemplateResult {
    const isNone = this.#question?.candidates.length === 0;
    return html`${isNone ? html`<p class="sentence">No collector is chosen.</p>` : nothing}`;
  }

  #answer(answered: Answered<'collectors'>): TemplateResult {
    const { session, units, shop } = this.#session.value!;
    const { question, answer } = answered;
    const doubt = this.#doubting.doubtOf(answered);
    const sure = doubt ? collectorDoubtWords(answer.rows, doubt) : '';
    const states = usualStates(shop).map((each, i) => ({
      value: String(i),
      words: stateName({ state: each }),
    }));
    return html`<dc-collectors-answer
      .question=${question}
      .answer=${answer}
      .units=${units}
      .picture=${this.#picturing.answered}
      @dc-take=${({ key, how }: TakeEvent) => {
        const row = answer.rows.find(({ name }) => name === key);
        const words = `collector: ${key}`;
        if (row) this.#taking[how](session, { choice: row.choice, words });
      }}
    >
      <div slot="said">${this.#taking.line}</div>
      <div slot="doubt">${this.#doubting.part('the collectors', sure, units)}</div>
      <dc-choice-field
        slot="gates"
        label="Open in the picture"
        .choices=${[{ value: NOW, words: 'As the gates are open now' }, ...states]}
        .value=${states[Number(this.gates)] ? this.gates : NOW}
        @dc-choice=${({ value }: ChoiceEvent) => this.#onGates(value)}
      ></dc-choice-field>
    </dc-collectors-answer>`;
  }

  /** Another choice of gates, or of what may be off, asks for the picture alone. */
  #wishPicture(): void {
    const { shop, gates } = this.#session.value!;
    const question = this.#question;
    if (question === undefined || question.candidates.length === 0) return;
    const chosen = usualStates(shop)[Number(this.gates)];
    const doubt = this.#doubting.form;
    const wished = [question, chosen === undefined ? gates : this.gates, doubt];
    if (!differ(this.#pictured, wished)) return;
    this.#pictured = wished;
    const travels = chosen
      ? travelsWhenOpen(shop.drops, chosen.open)
      : travelsOf(shop.drops, gates);
    this.#picturing.wish({ ...question, travels, opened: openedWords(shop, travels), doubt });
  }

  #onCandidates(left: readonly string[]): void {
    this.left = left;
  }

  #onGates(value: string): void {
    this.gates = value;
  }

  #onWish(wish: 'cancel' | 'again'): void {
    if (wish === 'cancel') this.#study.cancel();
    else if (this.#question) void this.#study.ask(this.#question);
  }
}

function differ(before: readonly unknown[], after: readonly unknown[]): boolean {
  return after.some((each, i) => each !== before[i]);
}

function openedWords({ drops }: Shop, travels: Travels): string {
  const open = drops.filter((_, i) => travels[i]! > 0).map(({ name }) => name);
  return open.length === 0 ? 'none' : open.join(', ');
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collectors-panel': CollectorsPanel;
  }
}
