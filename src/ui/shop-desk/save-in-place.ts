// A file that keeps saving in place: the open shop is written to it after each edit, for as long as
// the page is open. Only where the browser hands out files to be written again.

import type { Notice } from '../../state/notice.ts';
import type { OpenShop } from '../../state/open-shop.ts';
import { follow } from '../../state/follow.ts';
import { shopFile } from '../../shop/shop-file.ts';

/** What the browser offers where it can do this; TypeScript's own types know no picker. */
interface Picker {
  showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

/** A file that is being saved to. */
export interface SavedFile {
  readonly name: string;
  /** Ends it. The file stays as it is. */
  readonly stop: () => void;
}

/**
 * Lets the reader choose a file and keeps the shop in it from now on.
 *
 * @param open - the open shop
 * @param say - is told what to say when it can't go on
 * @returns the file, or undefined where none was chosen
 */
export async function saveInPlace(
  open: OpenShop,
  say: (notice: Notice) => void,
): Promise<SavedFile | undefined> {
  const { session } = open;
  const { showSaveFilePicker } = globalThis as Picker;
  const handle = await showSaveFilePicker?.({
    suggestedName: shopFile(session.shop.peek().name, {}).name,
    types: [{ description: 'Shop', accept: { 'application/json': ['.json'] } }],
  }).catch(() => undefined); // no file was chosen
  if (!handle) return undefined;

  let isBusy = false;
  let isStopped = false;
  let lastWritten: number | undefined;
  const write = async (): Promise<void> => {
    if (isBusy || isStopped) return;
    isBusy = true;
    const shop = session.shop.peek();
    try {
      const found = await handle.getFile();
      if (lastWritten !== undefined && found.lastModified !== lastWritten) {
        stop();
        say(changedNotice(handle.name, open.id));
        return;
      }
      const stream = await handle.createWritable();
      await stream.write(shopFile(shop.name, shop).text);
      await stream.close();
      lastWritten = (await handle.getFile()).lastModified;
    } catch (error) {
      stop();
      say(brokenNotice(handle.name, open.id, error));
    } finally {
      isBusy = false;
    }
    if (session.shop.peek() !== shop) await write();
  };
  const unfollow = follow(
    () => session.shop.value,
    () => void write(),
  );
  const stop = () => {
    isStopped = true;
    unfollow();
  };
  return { name: handle.name, stop };
}

function changedNotice(name: string, id: string): Notice {
  return {
    text: `“${name}” was changed by another program and is saved to no longer. The shop is still kept in this browser.`,
    save: id,
  };
}

function brokenNotice(name: string, id: string, error: unknown): Notice {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    text: `“${name}” can’t be written and is saved to no longer. The shop is still kept in this browser. (${reason})`,
    save: id,
  };
}
