// What comes in by a file, and what goes out by a link.

import { isArchive } from '../../shop/is-archive.ts';
import { unreadFileNotice } from '../../state/notice.ts';
import type { Shelf } from '../../state/shelf.ts';

/**
 * Opens a file of one shop or of many; where it is refused, what is open stays open.
 *
 * @param shelf - where its shops are kept, and which says what became of it
 * @param file - the file
 */
export async function openFile(shelf: Shelf, file: File): Promise<void> {
  const { name } = file;
  const text = await file.text().catch((error: unknown) => {
    shelf.say(unreadFileNotice(name, error));
  });
  if (text === undefined) return;
  if (isArchive(text)) (await takeIn()).takeArchive(shelf, { name, text });
  else shelf.addFile({ name, text });
}

/**
 * Copies a link that carries a shop.
 *
 * @param shelf - which says what became of it
 * @param id - of the shop
 */
export async function copyLink(shelf: Shelf, id: string): Promise<void> {
  const shop = shelf.shop(id);
  if (!shop) return;
  const { linkNotice } = await takeIn();
  const [page = ''] = location.href.split('#');
  shelf.say(await linkNotice(shop, id, page, (text) => navigator.clipboard.writeText(text)));
}

/** What is rarely wanted. */
function takeIn() {
  return import('../../state/take-in.ts');
}
