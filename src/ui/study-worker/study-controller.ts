// Holds what a panel has asked of a worker: how far the answer is, and the answer when it is there.
// The answer before it stays until then, so that nothing on the page jumps. A panel that is folded or
// out of sight asks when it is seen.

import type { LitElement, ReactiveController } from 'lit';
import type { AnswerOn, QuestionOn, Subject } from '../../state/decisions/question.ts';
import { StudyClient } from '../../state/decisions/study-client.ts';
import type { Progress } from '../../study/progress.ts';
import { forgetFrame, inOwnFrame } from '../one-a-frame.ts';
import { beginWorker } from './begin-worker.ts';

/** Where the asking is. */
export type Asked =
  | { readonly kind: 'not asked' }
  /** The question is out; no progress is known before the first word of it. */
  | { readonly kind: 'asking'; readonly progress: Progress | undefined }
  | { readonly kind: 'answered' }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'cancelled' };

/** An answer with its question. */
export interface Answered<S extends Subject> {
  readonly question: QuestionOn<S>;
  readonly answer: AnswerOn<S>;
}

/** A question waits so long for another that follows it at once, as in a drag [ms]. */
const PAUSE = 150;
/** A panel so near to the window counts as seen. */
const NEAR = '200px';

export class StudyController<S extends Subject> implements ReactiveController {
  state: Asked = { kind: 'not asked' };
  /** The latest answer, of whatever question. */
  answered: Answered<S> | undefined;

  readonly #host: LitElement;
  readonly #subject: S;
  readonly #client = new StudyClient(beginWorker);
  readonly #observer = new IntersectionObserver((entries) => this.#onSight(entries), {
    rootMargin: NEAR,
  });
  #count = 0;
  #isSeen = false;
  #wish: QuestionOn<S> | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param host - the panel
   * @param subject - what its questions are about
   */
  constructor(host: LitElement, subject: S) {
    this.#host = host;
    this.#subject = subject;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    this.#stopWaiting();
    this.#client.end();
  }

  /** Asks as soon as the panel is seen and no other wish follows. */
  wish(question: QuestionOn<S>): void {
    this.#wish = question;
    this.#awaitPause();
  }

  /** Asks; what was asked before is cancelled. */
  async ask(question: QuestionOn<S>): Promise<void> {
    this.#stopWaiting();
    this.#wish = undefined;
    this.#count += 1;
    const number = this.#count;
    this.#show({ kind: 'asking', progress: undefined });
    const outcome = await this.#client.ask(this.#subject, question, (progress) =>
      this.#show({ kind: 'asking', progress }),
    );
    if (number !== this.#count) return;
    if (outcome.kind === 'answer') this.answered = { question, answer: outcome.answer };
    this.#show(outcome.kind === 'answer' ? { kind: 'answered' } : outcome);
  }

  /** Leaves off; the answer before it stays. */
  cancel(): void {
    this.#client.cancel();
  }

  /** Forgets the answer. */
  forget(): void {
    this.#count += 1;
    this.#wish = undefined;
    this.#client.cancel();
    this.answered = undefined;
    this.#show({ kind: 'not asked' });
  }

  #onSight(entries: readonly IntersectionObserverEntry[]): void {
    this.#isSeen = entries.at(-1)?.isIntersecting ?? false;
    this.#awaitPause();
  }

  #awaitPause(): void {
    this.#stopWaiting();
    if (!this.#isSeen || this.#wish === undefined) return;
    // What a worker is handed is copied first, which takes a good part of a frame.
    this.#timer = setTimeout(() => inOwnFrame(this.#askWish), PAUSE);
  }

  readonly #askWish = (): void => {
    if (this.#wish !== undefined) void this.ask(this.#wish);
  };

  #stopWaiting(): void {
    clearTimeout(this.#timer);
    forgetFrame(this.#askWish);
  }

  #show(state: Asked): void {
    this.state = state;
    this.#host.requestUpdate();
  }
}
