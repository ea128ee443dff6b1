// What a reader may wish of the shelf itself: one of its shops opened, named, copied, deleted, put back as
// it was, or saved as a file.

import type { Shelf } from '../../state/shelf.ts';
import { versionFile } from '../../state/shelved.ts';
import type { ShelfWish } from '../shop-list/shelf-event.ts';
import { saveFile } from './save-file.ts';

/** What the desk sees to by itself. */
type DeskWish = 'list' | 'start' | 'back' | 'file' | 'link' | 'save in place' | 'stop saving';
/** What the shelf can do alone. */
export type PlainWish = Exclude<ShelfWish, { readonly kind: DeskWish }>;

/**
 * Does what is wished.
 *
 * @param shelf - the shelf
 * @param wish - what is wished of it
 * @returns whether the shop that is open now is to be shown
 */
export function grantWish(shelf: Shelf, wish: PlainWish): 'show the shop' | 'stay' {
  switch (wish.kind) {
    case 'demo':
      shelf.openDemo();
      return 'show the shop';
    case 'open':
      shelf.openKept(wish.id);
      return 'show the shop';
    case 'rename':
      shelf.rename(wish.id, wish.name);
      return 'stay';
    case 'variant':
      shelf.keepVariant(wish.shop, wish.words);
      return 'stay';
    case 'duplicate':
      shelf.duplicate(wish.id);
      return 'stay';
    case 'remove':
      shelf.remove(wish.id);
      return 'stay';
    case 'restore':
      shelf.restore(wish.id, wish.version);
      return shelf.open.peek().id === wish.id ? 'show the shop' : 'stay';
    case 'download all':
      void saveAll(shelf);
      return 'stay';
    case 'download version':
      saveFile(versionFile(wish.version));
      return 'stay';
    case 'download': {
      const file = shelf.file(wish.id);
      if (file) saveFile(file);
      return 'stay';
    }
    default:
      return wish satisfies never;
  }
}

async function saveAll(shelf: Shelf): Promise<void> {
  const { allInOneFile } = await import('../../state/take-in.ts');
  for (const file of allInOneFile(shelf.shops.peek(), Date.now())) saveFile(file);
}
