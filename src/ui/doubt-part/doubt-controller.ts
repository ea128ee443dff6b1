// Asks how sure an answer is, as soon as there is one and again when something else may be off.

import { html, type LitElement, type ReactiveController, type TemplateResult } from 'lit';
import { type DoubtForm, USUAL_DOUBT_FORM } from '../../state/decisions/doubt-form.ts';
import type { AnswerOn, QuestionOn } from '../../state/decisions/question.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { StudyWishEvent } from '../study-status/study-wish-event.ts';
import { StudyController } from '../study-worker/study-controller.ts';
import type { DoubtEvent } from './doubt-event.ts';
import './doubt-part.ts';

/** What is doubted. */
export type DoubtSubject = 'reach doubt' | 'main doubt' | 'collector doubt';

export class DoubtController<S extends DoubtSubject> implements ReactiveController {
  readonly #host: LitElement;
  readonly #study: StudyController<S>;
  #form = USUAL_DOUBT_FORM;
  #answer: object | undefined;
  #ask: ((form: DoubtForm) => QuestionOn<S>) | undefined;
  #question: QuestionOn<S> | undefined;

  /**
   * @param host - the panel with the answer
   * @param subject - what is doubted
   */
  constructor(host: LitElement, subject: S) {
    this.#host = host;
    this.#study = new StudyController(host, subject);
    host.addController(this);
  }

  /** What may be off, and by how much, as the reader says. */
  get form(): DoubtForm {
    return this.#form;
  }

  hostConnected(): void {
    this.#answer = undefined;
  }

  /**
   * Follows an answer; to be called whenever the panel is updated.
   *
   * @param answer - the latest; one that was doubted already is not doubted again
   * @param ask - the question how sure it is, where this may be off
   */
  follow(answer: object | undefined, ask: (form: DoubtForm) => QuestionOn<S>): void {
    if (answer === undefined || answer === this.#answer) return;
    this.#answer = answer;
    this.#ask = ask;
    this.#wish();
  }

  /**
   * How sure an answer is.
   *
   * @param answer - the answer
   * @returns undefined until that is known
   */
  doubtOf(answer: object): AnswerOn<S> | undefined {
    const { answered } = this.#study;
    const isOf = answer === this.#answer && answered?.question === this.#question;
    return isOf ? answered?.answer : undefined;
  }

  /**
   * What is shown of it.
   *
   * @param label - what is doubted
   * @param words - how sure it is; empty until that is known
   * @param units - the units in use
   * @returns the part
   */
  part(label: string, words: string, units: UnitSystem): TemplateResult {
    return html`<dc-doubt-part
      class="whole"
      .label=${label}
      .words=${words}
      .form=${this.#form}
      .units=${units}
      .state=${this.#study.state}
      @dc-doubt=${({ form }: DoubtEvent) => {
        this.#form = form;
        this.#wish();
        this.#host.requestUpdate();
      }}
      @dc-study-wish=${({ wish }: StudyWishEvent) => {
        if (wish === 'cancel') this.#study.cancel();
        else if (this.#question) void this.#study.ask(this.#question);
      }}
    ></dc-doubt-part>`;
  }

  #wish(): void {
    const question = this.#ask?.(this.#form);
    if (question === undefined) return;
    this.#question = question;
    this.#study.wish(question);
  }
}
