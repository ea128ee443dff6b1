// Where shops are kept between visits, behind the few calls that the page needs of it.

/** A shop as it is kept. What the document holds is not looked at here, so that nothing is lost. */
export interface ShopRecord {
  readonly id: string;
  /** The shop document, or whatever else was found in its place. */
  readonly document: unknown;
  /** When it was last written [ms since 1970-01-01]. */
  readonly written: number;
}

/** A place for shops. Every call may fail, with an Error whose message is for the reader. */
export interface ShopStore {
  /** Every record, in no particular order. */
  readAll(): Promise<readonly ShopRecord[]>;
  /** Keeps a record in the place of the one with its id. */
  write(record: ShopRecord): Promise<void>;
  /** Takes a record out; nothing happens if there is none. */
  remove(id: string): Promise<void>;
}
