// A study is a generator: it works until its next step is done, says how far it is, and goes on when
// it is asked again. So whoever runs it can report, wait or leave off at any step, and holds the clock.

/** How far a study is, in steps of its own. */
export interface Progress {
  /** Steps that are done [-] */
  readonly done: number;
  /** Steps in all, as far as known by now [-] */
  readonly total: number;
}

/** A study under way: yields its progress, returns its result. */
export type Study<Result> = Generator<Progress, Result, void>;

/**
 * Runs a study to its end at once.
 *
 * @param study - the study; it is used up
 * @returns its result
 */
export function finish<Result>(study: Study<Result>): Result {
  for (;;) {
    const step = study.next();
    if (step.done === true) return step.value;
  }
}

/**
 * Runs a study as a part of a larger one: its steps count as one step of that, in parts.
 *
 * @param study - the study; it is used up
 * @param done - steps of the larger one that are done [-]
 * @param total - steps of the larger one [-]
 * @returns a study with the same result that tells the progress of the larger one
 */
export function* within<Result>(study: Study<Result>, done: number, total: number): Study<Result> {
  for (;;) {
    const step = study.next();
    if (step.done === true) return step.value;
    yield { done: done + step.value.done / step.value.total, total };
  }
}
