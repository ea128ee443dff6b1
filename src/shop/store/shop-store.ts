// Where shops are kept between visits, behind the few calls that the page needs of it.

/** A shop as it is kept. What the document holds is not looked at here, so that nothing is lost. */
export interface ShopRecord {
  readonly id: string;
  /** The shop document, or whatever else was found in its place. */
  readonly document: unknown;
  /** When it was last written [ms since 1970-01-01]. */
  readonly written: number;
  /** How often it was written; left out: never since this is counted. */
  readonly revision?: number;
}

/** Why a document was set aside as a version. */
export type VersionCause = 'edit' | 'migration' | 'other tab';

/** A document that another one took the place of. */
export interface ShopVersion {
  /** When it was set aside [ms since 1970-01-01]. */
  readonly aside: number;
  readonly cause: VersionCause;
  readonly document: unknown;
}

/** One write: what is to be kept, and what it takes the place of. */
export interface Writing {
  /** With the revision that it was made from, not its own. */
  readonly record: ShopRecord;
  /** Documents to be set aside. */
  readonly versions: readonly ShopVersion[];
  /** Whether no other tab can have written since: then nothing is looked for in its place. */
  readonly isSure?: boolean;
}

/** How a write ended. */
export interface Written {
  /** Of what is kept now. */
  readonly revision: number;
  /** What another tab had kept there meanwhile. It was set aside as a version. */
  readonly over?: ShopRecord;
}

/** A place for shops. Every call may fail, with a StoreFailure. */
export interface ShopStore {
  /** Every record, in no particular order. */
  readAll(): Promise<readonly ShopRecord[]>;
  /** One record. */
  read(id: string): Promise<ShopRecord | undefined>;
  /** Keeps a record in the place of the one with its id, and what it replaces as versions. */
  write(writing: Writing): Promise<Written>;
  /** Begins to write before it returns, unseen what lies there: for a page that is about to go. */
  writeAtOnce(writings: readonly Writing[]): void;
  /** Takes a record out; nothing happens if there is none. Its versions stay while the page is open. */
  remove(id: string): Promise<void>;
  /** What was set aside of a shop, the latest first. */
  versions(id: string): Promise<readonly ShopVersion[]>;
}
