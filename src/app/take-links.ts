// Opens the shop that the address of the page carries, if it carries one, now and whenever it changes.

import type { Shelf } from '../state/shelf.ts';

const CARRIES_SHOP = /^#shop=/;

/**
 * Watches the address.
 *
 * @param shelf - where the shop of a link is kept, as a copy
 */
export async function takeLinks(shelf: Shelf): Promise<void> {
  addEventListener('hashchange', () => void take(shelf));
  await take(shelf);
}

async function take(shelf: Shelf): Promise<void> {
  const { hash } = location;
  if (!CARRIES_SHOP.test(hash)) return;
  // Taken out of the address first, so that loading the page again makes no second copy.
  history.replaceState(null, '', location.pathname + location.search);
  const { takeLink } = await import('../state/take-in.ts');
  await takeLink(shelf, hash);
}
