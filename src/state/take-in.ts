// Takes in what is rarely taken in, and gives out what is rarely given: an archive of many shops, a
// shop from a link. Loaded when it is wanted.

import { archiveFiles, openArchive } from '../shop/archive.ts';
import { LONGEST_LINK, openShopLink, shopLink } from '../shop/link/shop-link.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import type { TextFile } from '../shop/shop-file.ts';
import { type Notice, refusedFileNotice } from './notice.ts';
import type { Shelf } from './shelf.ts';
import type { Shelved } from './shelved.ts';

/** Keeps all shops of an archive that can be opened, and says what became of the others. */
export function takeArchive(shelf: Shelf, { name, text }: TextFile): void {
  const { shops, problems, count } = openArchive(text);
  shelf.add(...shops);
  if (shops.length === 0) {
    shelf.say(refusedFileNotice(name, problems));
    return;
  }
  const said = `${shops.length} of ${count} shops were opened from “${name}”.`;
  shelf.say({ text: said, ...(problems.length > 0 && { problems }) });
}

/** Opens the shop of a link as a copy of one's own; what was open stays on the shelf. */
export async function takeLink(shelf: Shelf, hash: string): Promise<void> {
  const opened = await openShopLink(hash);
  if (opened.kind === 'refused') {
    const { problems } = opened;
    shelf.say({ text: 'The link was not opened. What was open stays open.', problems });
    return;
  }
  shelf.add(opened.shop);
  shelf.say({ text: `“${opened.shop.name}” was opened from a link, as a copy of your own.` });
}

/** The files that hold all shops of a shelf. */
export function allInOneFile(shops: readonly Shelved[], now: number): TextFile[] {
  const day = new Date(now).toISOString().slice(0, 10);
  return archiveFiles(
    shops.map(({ record }) => record.document),
    day,
  );
}

/**
 * Makes a link and hands it on.
 *
 * @param shop - that it carries
 * @param id - of the shop, to offer its file instead
 * @param page - address of the page
 * @param copy - puts a text where it can be pasted from; fails where that is not allowed
 * @returns what to say of it
 */
export async function linkNotice(
  shop: Shop,
  id: string,
  page: string,
  copy: (text: string) => Promise<void>,
): Promise<Notice> {
  const link = await shopLink(shop, page);
  if (link.kind !== 'link') {
    const why =
      link.kind === 'too long'
        ? `would be ${link.length.toLocaleString('en-US')} characters long; many programs cut links off at ${LONGEST_LINK.toLocaleString('en-US')}`
        : 'can’t carry it unchanged';
    return { text: `A link to “${shop.name}” ${why}. Send its file instead.`, save: id };
  }
  const { address, leftOut } = link;
  const notes = leftOut === 'notes' ? ' The notes are left out: they made it too long.' : '';
  try {
    await copy(address);
    return {
      text: `A link that holds “${shop.name}” was copied: ${address.length.toLocaleString('en-US')} characters. Whoever opens it gets a copy; the shop itself is sent to no server.${notes}`,
    };
  } catch {
    return { text: `Copy this link by hand:${notes} ${address}` };
  }
}
