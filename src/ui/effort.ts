// Whether the processor has trouble following the gates. Where it has, pictures follow at every second
// change, so that there is a frame between for the figures.

/** A change that takes so long to solve and to read leaves too little of its frame to draw everything [ms]. */
const GREAT = 1;
/** How much of the mean is of the last change [-]. */
const SHARE = 1 / 16;

class Effort {
  #mean = 0;

  /** Whether changes take long, on the mean of the last ones. */
  get isGreat(): boolean {
    return this.#mean > GREAT;
  }

  /** Makes a change, and notes how long whoever reads it takes. */
  measure(change: () => void): void {
    const begin = performance.now();
    change();
    this.#mean += SHARE * (performance.now() - begin - this.#mean);
  }
}

/** The page's. */
export const effort = new Effort();
