// Puts off what the page can do without until it has come to rest: not in the first moments, when the
// rest of it is still being fetched, and not while the reader is at work.

/** The first moments, and how long the reader's work is waited for at most [ms]. */
const FIRST = 2_000;
const MOST = 5_000;

/**
 * Does something once the page has come to rest.
 *
 * @param act - what is done, once
 */
export function whenIdle(act: () => void): void {
  setTimeout(() => {
    // Not every browser tells when it is idle.
    const { requestIdleCallback } = globalThis as Partial<
      Pick<typeof globalThis, 'requestIdleCallback'>
    >;
    if (requestIdleCallback) requestIdleCallback(act, { timeout: MOST });
    else act();
  }, FIRST);
}
