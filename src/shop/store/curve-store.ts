// Where the user's own curves are kept between visits.

/** A curve as it is kept. What the document holds is not looked at here, so that nothing is lost. */
export interface CurveRecord {
  readonly id: string;
  /** The curve document, or whatever else was found in its place. */
  readonly document: unknown;
  /** When it was last written [ms since 1970-01-01]. */
  readonly written: number;
}

/** A place for curves. Every call may fail, with an Error whose message is for the reader. */
export interface CurveStore {
  /** Every record, in no particular order. */
  readAll(): Promise<readonly CurveRecord[]>;
  /** Keeps a record in the place of the one with its id. */
  write(record: CurveRecord): Promise<void>;
  /** Takes a record out; nothing happens if there is none. */
  remove(id: string): Promise<void>;
  /**
   * Hears of changes that others made in the same place, in this page or in another tab.
   *
   * @param take - is called after each
   * @returns ends the listening
   */
  listen(take: () => void): () => void;
}
