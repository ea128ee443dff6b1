// Asks a worker on behalf of the page. One question is out at a time: a new one takes the place of
// the old. What is cancelled ends at once for whoever asked; a worker that doesn't hear of it soon is
// ended and another one begun when it is needed.

import { withRows } from './answer-pieces.ts';
import type { Progress } from '../../study/progress.ts';
import type { AnswerOn, QuestionOn, Subject } from './question.ts';
import type { Asking, FromWorker, ToWorker } from './study-messages.ts';

/** As much of a worker as is needed. */
export interface StudyPort {
  readonly post: (message: ToWorker) => void;
  readonly end: () => void;
}

/** What is heard of a worker. */
export interface StudyEars {
  readonly message: (message: FromWorker) => void;
  /** It broke down, and why. */
  readonly broken: (reason: string) => void;
}

/** How asking ended. */
export type Outcome<Answer> =
  | { readonly kind: 'answer'; readonly answer: Answer }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'cancelled' };

/** How long a worker may take to hear that it is to leave off [ms]. */
const PATIENCE = 250;

interface Open {
  readonly asking: Asking;
  readonly progress: (progress: Progress) => void;
  readonly end: (outcome: Outcome<AnswerOn<Subject>>) => void;
  /** Rows of the answer that have come. */
  readonly rows: unknown[];
}

export class StudyClient {
  readonly #begin: (ears: StudyEars) => StudyPort;
  #port: StudyPort | undefined;
  #count = 0;
  #open: Open | undefined;
  /** Number of a question that the worker has been told to leave. */
  #left: number | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param begin - begins a worker */
  constructor(begin: (ears: StudyEars) => StudyPort) {
    this.#begin = begin;
  }

  /**
   * Asks. What was asked before is cancelled.
   *
   * @param subject - what the question is about
   * @param question - the question
   * @param progress - is told how far the answer is
   * @returns how it ended; never rejected
   */
  ask<S extends Subject>(
    subject: S,
    question: QuestionOn<S>,
    progress: (progress: Progress) => void,
  ): Promise<Outcome<AnswerOn<S>>> {
    this.cancel();
    this.#count += 1;
    const number = this.#count;
    return new Promise<Outcome<AnswerOn<Subject>>>((end) => {
      this.#open = { asking: { kind: 'ask', number, subject, question }, progress, end, rows: [] };
      this.#post(this.#open.asking);
    });
  }

  /** Leaves off at once; nothing happens where nothing is asked. */
  cancel(): void {
    const open = this.#open;
    if (!open) return;
    this.#open = undefined;
    this.#left = open.asking.number;
    this.#port?.post({ kind: 'cancel', number: open.asking.number });
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#restart(), PATIENCE);
    open.end({ kind: 'cancelled' });
  }

  /** Ends the worker. It may be asked again; then another one begins. */
  end(): void {
    this.cancel();
    this.#endPort();
  }

  #post(message: ToWorker): void {
    this.#port ??= this.#begin({
      message: (answer) => this.#onMessage(answer),
      broken: (reason) => this.#onBroken(reason),
    });
    this.#port.post(message);
  }

  #onMessage(message: FromWorker): void {
    const isLast = message.kind !== 'progress' && message.kind !== 'rows';
    if (message.number === this.#left && isLast) this.#heard();
    const open = this.#open;
    if (message.number !== open?.asking.number) return;
    if (message.kind === 'progress') {
      open.progress(message.progress);
      return;
    }
    if (message.kind === 'rows') {
      open.rows.push(...message.rows);
      return;
    }
    this.#open = undefined;
    const { number: _number, ...outcome } = message;
    open.end(
      outcome.kind === 'answer' && open.rows.length > 0
        ? { ...outcome, answer: withRows(outcome.answer, open.rows) }
        : outcome,
    );
  }

  /** The worker is free again. */
  #heard(): void {
    clearTimeout(this.#timer);
    this.#left = undefined;
  }

  /** The worker does not hear: what was asked meanwhile is asked of another one. */
  #restart(): void {
    this.#endPort();
    if (this.#open) this.#post(this.#open.asking);
  }

  #onBroken(reason: string): void {
    const open = this.#open;
    this.#open = undefined;
    this.#endPort();
    open?.end({ kind: 'refused', reason });
  }

  #endPort(): void {
    this.#heard();
    this.#port?.end();
    this.#port = undefined;
  }
}
