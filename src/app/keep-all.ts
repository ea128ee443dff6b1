// Sees to it that nothing is left unwritten when the page goes, comes back, or a drag ends, and asks
// the browser not to clear away what it keeps once there is something of the reader's own.

import { follow } from '../state/follow.ts';
import type { Shelf } from '../state/shelf.ts';

/**
 * Watches over a shelf for as long as the page is open.
 *
 * @param shelf - whose every edit is to be kept
 */
export function keepAll(shelf: Shelf): void {
  addEventListener('pagehide', () => shelf.flush());
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) void shelf.catchUp();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') shelf.settle();
    else void shelf.catchUp();
  });
  // A drag has ended, by whatever it was done.
  for (const end of ['pointerup', 'keyup'] as const) addEventListener(end, () => shelf.settle());
}

/**
 * Asks for lasting storage after the first edit of a shop of one's own.
 *
 * @param shelf - to watch for it
 */
export function askToPersist(shelf: Shelf): void {
  const atFirst = shelf.shops.peek();
  let isAsked = false;
  follow(
    () => shelf.shops.value,
    (shops) => {
      if (isAsked || shops === atFirst) return;
      isAsked = true;
      void (navigator as { readonly storage?: StorageManager }).storage?.persist?.();
    },
  );
}
