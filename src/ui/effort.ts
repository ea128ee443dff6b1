// Whether the processor has trouble following the gates. Where it has, pictures, marks and figures have
// a frame each.

/** A change that takes so long to solve and to read leaves too little of its frame to draw everything [ms]. */
const GREAT = 1;
/** Trouble is over only well below, so that nothing goes to and fro between two rhythms [ms]. */
const LITTLE = 0.5;
/** How much of the mean is of the last change [-]. */
const SHARE = 1 / 16;

class Effort {
  #mean = 0;
  #isGreat = false;

  /** Whether changes take long, on the mean of the last ones. */
  get isGreat(): boolean {
    return this.#isGreat;
  }

  /** Makes a change, and notes how long whoever reads it takes. */
  measure(change: () => void): void {
    const begin = performance.now();
    change();
    this.#mean += SHARE * (performance.now() - begin - this.#mean);
    this.#isGreat = this.#mean > (this.#isGreat ? LITTLE : GREAT);
  }
}

/** The page's. */
export const effort = new Effort();
