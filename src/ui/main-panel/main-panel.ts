// "Would a larger main help?": what counts as the main, and the answer for every size of it.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { doubtedMains } from '../../shop/decisions/doubted-mains.ts';
import { mainFamily, suggestedMain } from '../../shop/decisions/main-sections.ts';
import type { MainSizes } from '../../shop/decisions/main-sizes.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { mainDoubtWords } from '../../state/decisions/main-doubt-words.ts';
import { mainWords, shownRows } from '../../state/decisions/main-tables.ts';
import { bestMain } from '../../state/decisions/main-words.ts';
import type { MainQuestion } from '../../state/decisions/question.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { TakeEvent } from '../answer-table/take-event.ts';
import { DoubtController } from '../doubt-part/doubt-controller.ts';
import { SessionController } from '../session-controller.ts';
import '../study-status/study-status.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { StudyController } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { TakeOver } from '../take-over/take-over.ts';
import './main-answer.ts';
import './main-fields.ts';
import type { MainForm, MainFormEvent } from './main-form-event.ts';
import './tapered-part.ts';

/**
 * @element dc-main-panel
 * @fires dc-shelf - a variant is to be kept beside the shop
 */
@customElement('dc-main-panel')
export class MainPanel extends LitElement {
  static override styles = [baseStyles, answerStyles];

  @state() private form: MainForm | undefined;

  readonly #session = new SessionController(this, (session) => ({
    session,
    shop: session.shop.value,
    units: session.units.value,
  }));
  readonly #study = new StudyController(this, 'main');
  readonly #doubting = new DoubtController(this, 'main doubt');
  readonly #taking = new TakeOver(this);
  #question: MainQuestion | undefined;
  #shown:
    | { readonly sizes: MainSizes; readonly units: UnitSystem; readonly shown: MainSizes }
    | undefined;

  protected override willUpdate(): void {
    const read = this.#session.value;
    if (!read) return;
    const { shop } = read;
    const form = heldForm(this.form, shop);
    if (form !== this.form || shop !== this.#question?.shop) {
      this.form = form;
      this.#question = { shop, ...form };
      if (form.sections.length > 0) this.#study.wish(this.#question);
    }
    const { answered } = this.#study;
    const shown = answered && this.#shownOf(answered.question.shop, answered.answer, read.units);
    this.#doubting.follow(shown, (doubt) => ({
      shop: answered!.question.shop,
      sizes: doubtedMains(shown!),
      doubt,
    }));
  }

  protected override render(): TemplateResult {
    const read = this.#session.value;
    if (!read) return html`${nothing}`;
    const { answered, state: asked } = this.#study;
    return html`<dc-main-fields
        .shop=${read.shop}
        .form=${this.form}
        .units=${read.units}
        @dc-main-form=${({ form }: MainFormEvent) => this.#onForm(form)}
      ></dc-main-fields>
      <dc-study-status
        label="the main in every size"
        .state=${asked}
        @dc-study-wish=${({ wish }: StudyWishEvent) => this.#onWish(wish)}
      ></dc-study-status>
      ${
        this.form?.sections.length === 0
          ? html`<p class="sentence">No section is counted as the main.</p>`
          : answered
            ? this.#answer(answered.question.shop, answered.answer)
            : nothing
      }`;
  }

  #answer(shop: Shop, sizes: MainSizes): TemplateResult {
    const { session, units } = this.#session.value!;
    const shown = this.#shownOf(shop, sizes, units);
    const doubts = this.#doubting.doubtOf(shown);
    const best = bestMain(shown.rows, shop);
    const doubt = best && doubts?.rows[shown.rows.indexOf(best)];
    return html`<dc-main-answer
        .shop=${shop}
        .sizes=${shown}
        .doubts=${doubts}
        .units=${units}
        @dc-take=${({ key, how }: TakeEvent) => {
          const row = shown.rows.find(({ size }) => size.id === key);
          if (row) this.#taking[how](session, { choice: row.choice, words: mainWords(row) });
        }}
      >
        <div slot="said">${this.#taking.line}</div>
        <div slot="doubt">
          ${this.#doubting.part('the main', best && doubt ? mainDoubtWords(best, doubt) : '', units)}
        </div>
      </dc-main-answer>
      <dc-tapered-part
        .question=${this.#question}
        .units=${units}
        .taking=${this.#taking}
        .session=${session}
      ></dc-tapered-part>`;
  }

  /** The sizes that are shown, which are those to be doubted; the same as long as they are. */
  #shownOf(shop: Shop, sizes: MainSizes, units: UnitSystem): MainSizes {
    const kept = this.#shown;
    if (kept?.sizes === sizes && kept.units === units) return kept.shown;
    const shown = { ...sizes, rows: shownRows(sizes, { shop, system: units }) };
    this.#shown = { sizes, units, shown };
    return shown;
  }

  #onForm(form: MainForm): void {
    const read = this.#session.value;
    this.form = form;
    if (!read) return;
    this.#question = { shop: read.shop, ...form };
    if (form.sections.length > 0) this.#study.wish(this.#question);
    else this.#study.forget();
  }

  #onWish(wish: 'cancel' | 'again'): void {
    if (wish === 'cancel') this.#study.cancel();
    else if (this.#question) void this.#study.ask(this.#question);
  }
}

/** The trunk and its family at first; what is there no more counts no longer. */
function heldForm(form: MainForm | undefined, shop: Shop): MainForm {
  if (form === undefined) {
    const sections = suggestedMain(shop);
    return { sections, family: mainFamily(shop, sections) };
  }
  const sections = form.sections.filter((id) => shop.sections.some((each) => each.id === id));
  return sections.length === form.sections.length ? form : { ...form, sections };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-main-panel': MainPanel;
  }
}
