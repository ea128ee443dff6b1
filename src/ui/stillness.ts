// Tells when changes have stopped following one another. One timer serves all who wait: while a gate is
// dragged a panel asks in every frame.

/** A change that no other follows for so long is the last; a slow processor needs half of it for a frame [ms]. */
const LATEST = 150;

class Stillness {
  /** Who waits, and for how long a rest [ms]. */
  readonly #waiting = new Map<() => void, number>();
  #changedAt = 0;
  /** Many hear of one change; the first of them looks at the clock. */
  #isNoted = false;
  #isLooking = false;

  /**
   * Notes a change, and calls when none has followed it for a while; however often asked, once.
   *
   * @param call - whoever waits
   * @param rest - for how long nothing is to have changed [ms]
   */
  afterChange(call: () => void, rest = LATEST): void {
    this.#waiting.set(call, rest);
    this.noteChange();
    if (!this.#isLooking) this.#lookIn(LATEST);
  }

  /** Something has changed, for all who wait. */
  noteChange(): void {
    if (this.#isNoted) return;
    this.#isNoted = true;
    queueMicrotask(() => {
      this.#isNoted = false;
    });
    this.#changedAt = performance.now();
  }

  /** Does not call after all. */
  forget(call: () => void): void {
    this.#waiting.delete(call);
  }

  #lookIn(time: number): void {
    this.#isLooking = true;
    setTimeout(() => this.#look(), time);
  }

  #look(): void {
    this.#isLooking = false;
    const still = performance.now() - this.#changedAt;
    const isDue = (rest: number) => rest <= still;
    const due = [...this.#waiting].filter(([, rest]) => isDue(rest)).map(([call]) => call);
    const later = [...this.#waiting.values()].filter((rest) => !isDue(rest));
    if (later.length > 0) this.#lookIn(Math.min(...later) - still);
    // One of them may make another forget that it waits.
    for (const call of due) {
      if (this.#waiting.delete(call)) call();
    }
  }
}

/** The page's. */
export const stillness = new Stillness();
