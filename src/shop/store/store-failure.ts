// The ways in which a browser fails to keep something, told apart by what can be done about them.

/**
 * `full`: no room is left. `lost`: the connection to the database is gone and did not come back.
 * `aborted`: the browser gave a write up. `blocked`: another tab holds the database. `newer`: a newer
 * version of the program has taken the database over. `refused`: it may keep nothing, as in some
 * private windows, or says something else.
 */
export type StoreTrouble = 'full' | 'lost' | 'aborted' | 'blocked' | 'newer' | 'refused';

const TROUBLES: Readonly<Record<string, StoreTrouble>> = {
  QuotaExceededError: 'full',
  InvalidStateError: 'lost',
  UnknownError: 'lost',
  AbortError: 'aborted',
  VersionError: 'newer',
};

/** A store that could not do what it was asked for. The message is the browser's own. */
export class StoreFailure extends Error {
  readonly trouble: StoreTrouble;

  /**
   * @param trouble - what is wrong
   * @param message - in the browser's words
   */
  constructor(trouble: StoreTrouble, message: string) {
    super(message);
    this.trouble = trouble;
  }
}

/**
 * What went wrong, of whatever was thrown.
 *
 * @param error - anything
 * @returns the failure
 */
export function storeFailure(error: unknown): StoreFailure {
  if (error instanceof StoreFailure) return error;
  if (!(error instanceof Error)) return new StoreFailure('refused', String(error));
  return new StoreFailure(TROUBLES[error.name] ?? 'refused', error.message);
}
