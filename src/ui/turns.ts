// What is laborious to draw takes turns while one change follows another: the first change is drawn, then
// every sixth or so, and the last. That is as often as numbers can be read.

import { stillness } from './stillness.ts';

/** What is laborious has a frame to itself. */
export type Turn = 0 | 1 | 2 | 3 | 4 | 5;

/** Frames from one turn to the next of the same. */
export const ROUND = 6;

export class Turns {
  readonly #every: number;
  readonly #at: number;
  readonly #atRest: () => void;
  /** Changes that have followed one another up to now; undefined at rest. */
  #changes: number | undefined;

  /**
   * @param every - which of the changes are drawn, besides the first
   * @param at - which of those it begins with
   * @param atRest - called when changes have stopped following one another
   */
  constructor(every: number, at: number, atRest: () => void) {
    this.#every = every;
    this.#at = at;
    this.#atRest = atRest;
  }

  /** Notes a change; whether it is to be drawn. */
  isTurn(): boolean {
    stillness.afterChange(this.#onStill);
    const isFirst = this.#changes === undefined;
    this.#changes = (this.#changes ?? -1) + 1;
    return isFirst || this.#changes % this.#every === this.#at;
  }

  /** The next change is a first one, and nobody waits for rest any more. */
  forget(): void {
    stillness.forget(this.#onStill);
    this.#changes = undefined;
  }

  readonly #onStill = (): void => {
    this.#changes = undefined;
    this.#atRest();
  };
}
