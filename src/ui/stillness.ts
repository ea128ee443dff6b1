// Tells when changes have stopped following one another. One timer serves all who wait: while a gate is
// dragged a panel asks in every frame.

/** A change that no other follows for so long is the last; a slow processor needs half of it for a frame [ms]. */
const LATEST = 150;

class Stillness {
  readonly #waiting = new Set<() => void>();
  #changedAt = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** Notes a change, and calls when none has followed it for a while; however often asked, once. */
  afterChange(call: () => void): void {
    this.#changedAt = performance.now();
    this.#waiting.add(call);
    this.#timer ??= setTimeout(() => this.#look(), LATEST);
  }

  /** Does not call after all. */
  forget(call: () => void): void {
    this.#waiting.delete(call);
  }

  #look(): void {
    const left = this.#changedAt + LATEST - performance.now();
    this.#timer = left > 0 ? setTimeout(() => this.#look(), left) : undefined;
    if (this.#timer !== undefined) return;
    const waiting = [...this.#waiting];
    this.#waiting.clear();
    for (const call of waiting) call();
  }
}

/** The page's. */
export const stillness = new Stillness();
