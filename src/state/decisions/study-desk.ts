// Answers questions one at a time, by slices: between two of them it hears whether it is to leave off.
// A new question takes the place of the one that is being answered. Clock and post come from outside,
// so this runs in a worker as in Node.

import type { Study } from '../../study/progress.ts';
import { rowPieces, withRows } from './answer-pieces.ts';
import { type AnswerOn, type Subject, studyOn } from './question.ts';
import type { FromWorker, ToWorker } from './study-messages.ts';

/** How long it works before it listens again [ms]. */
const SLICE = 12;
/** Progress is told no more often than this [ms]. */
const TELLING = 80;

/** What a desk needs from outside. */
export interface StudyDeskParts {
  /** The present time [ms]. */
  readonly now: () => number;
  /** Goes on after whatever waits to be heard. */
  readonly later: (goOn: () => void) => void;
  /** Goes on after the page has had time for a frame. */
  readonly pause: (goOn: () => void) => void;
  readonly post: (message: FromWorker) => void;
}

interface UnderWay {
  readonly number: number;
  readonly study: Study<AnswerOn<Subject>>;
  told: number;
}

export class StudyDesk {
  readonly #parts: StudyDeskParts;
  #underWay: UnderWay | undefined;

  /** @param parts - clock, turn and post */
  constructor(parts: StudyDeskParts) {
    this.#parts = parts;
  }

  /** Takes a message of the page. */
  hear(message: ToWorker): void {
    const { number } = message;
    if (message.kind === 'cancel') {
      if (this.#underWay?.number === number) this.#leaveOff(this.#underWay);
      return;
    }
    if (this.#underWay) this.#leaveOff(this.#underWay);
    const { now } = this.#parts;
    const study = studyOn(message.subject, message.question);
    this.#underWay = { number, study, told: now() };
    this.#goOn(this.#underWay);
  }

  #leaveOff({ number }: UnderWay): void {
    this.#underWay = undefined;
    this.#parts.post({ kind: 'cancelled', number });
  }

  #goOn(work: UnderWay): void {
    this.#parts.later(() => {
      if (this.#underWay !== work) return;
      try {
        this.#slice(work);
      } catch (error) {
        this.#underWay = undefined;
        const reason = error instanceof Error ? error.message : String(error);
        this.#parts.post({ kind: 'refused', number: work.number, reason });
      }
    });
  }

  #slice(work: UnderWay): void {
    const { now, post } = this.#parts;
    const { number, study } = work;
    const begin = now();
    for (;;) {
      const step = study.next();
      if (step.done === true) {
        this.#send(work, step.value, rowPieces(step.value));
        return;
      }
      const time = now();
      if (time - work.told >= TELLING) {
        work.told = time;
        post({ kind: 'progress', number, progress: step.value });
      }
      if (time - begin >= SLICE) break;
    }
    this.#goOn(work);
  }

  #send(
    work: UnderWay,
    answer: AnswerOn<Subject>,
    pieces: readonly (readonly unknown[])[],
    sent = 0,
  ): void {
    if (this.#underWay !== work) return;
    const { post, pause } = this.#parts;
    const { number } = work;
    const rows = pieces[sent];
    if (rows) {
      post({ kind: 'rows', number, rows });
      pause(() => this.#send(work, answer, pieces, sent + 1));
      return;
    }
    this.#underWay = undefined;
    post({ kind: 'answer', number, answer: sent > 0 ? withRows(answer, []) : answer });
  }
}
