// A main of several sizes: searched when it is wanted, for there are many.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { MainQuestion } from '../../state/decisions/question.ts';
import { rowOfSizes } from '../../state/decisions/pipe-words.ts';
import { taperedSentence, taperedTable } from '../../state/decisions/tapered-words.ts';
import type { Session } from '../../state/session.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../answer-table/answer-table.ts';
import type { TakeEvent } from '../answer-table/take-event.ts';
import '../study-status/study-status.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { StudyController } from '../study-worker/study-controller.ts';
import { answerStyles } from '../styles/answer.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { TakeOver } from '../take-over/take-over.ts';

/** @element dc-tapered-part */
@customElement('dc-tapered-part')
export class TaperedPart extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    answerStyles,
    css`
      .ask {
        margin-inline-start: -6px;
      }
    `,
  ];

  @property({ attribute: false }) question: MainQuestion | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) taking: TakeOver | undefined;
  @property({ attribute: false }) session: Session | undefined;

  readonly #study = new StudyController(this, 'tapered main');

  protected override render(): TemplateResult {
    const { state } = this.#study;
    const isAsking = state.kind === 'asking';
    return html`${
      isAsking
        ? nothing
        : html`<button class="ask" type="button" @click=${() => this.#ask()}>
            <span>Search mains that widen toward the collector</span>
          </button>`
    }
      <dc-study-status
        label="mains of several sizes"
        .state=${state}
        @dc-study-wish=${({ wish }: StudyWishEvent) => (wish === 'cancel' ? this.#study.cancel() : this.#ask())}
      ></dc-study-status>
      ${this.#answer()}`;
  }

  #answer(): TemplateResult {
    const { answered } = this.#study;
    if (!answered || answered.question.shop !== this.question?.shop) return html`${nothing}`;
    const { question, answer } = answered;
    const speech = { shop: question.shop, system: this.units };
    const { columns, rows } = taperedTable(answer, question.family, speech);
    return html`<p class="note">${taperedSentence(answer)}</p>
      <dc-answer-table
        caption="The best main of several sizes, and of one"
        .columns=${columns}
        .rows=${rows}
        @dc-take=${({ key, how }: TakeEvent) => {
          const main = key === 'tapered' ? answer.best : answer.bestUniform;
          const words = rows.find((row) => row.key === key)?.take ?? '';
          if (this.session) this.taking?.[how](this.session, { choice: main.choice, words });
        }}
      ></dc-answer-table>`;
  }

  #ask(): void {
    if (!this.question) return;
    const { shop, sections, family } = this.question;
    const sizes = rowOfSizes(shop, sections, family, this.units);
    void this.#study.ask({ ...this.question, sizes });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-tapered-part': TaperedPart;
  }
}
