// A line to the reader above the page, and the ones that tell of what is kept and what is not.

import type { Problem } from '../shop/opening/problem.ts';
import type { StoreFailure, StoreTrouble } from '../shop/store/store-failure.ts';

/** Something that the reader may do about a line. */
export interface NoticeAction {
  readonly words: string;
  readonly act: () => void;
}

/** A line to the reader above the page. */
export interface Notice {
  readonly text: string;
  /** What is wrong with a file that was refused. */
  readonly problems?: readonly Problem[];
  /** Takes back what the line tells of. */
  readonly undo?: () => void;
  readonly action?: NoticeAction;
  /** Id of a shop that should be saved as a file. */
  readonly save?: string;
}

/** Why, and what helps. */
const TROUBLES: Readonly<Record<StoreTrouble, string>> = {
  full: 'There is no room left for this browser’s data. Free some space on the device.',
  lost: 'The browser closed its database and would not open it again.',
  aborted: 'The browser gave up writing.',
  blocked: 'Another tab holds the browser’s database. Close the other tabs of this page.',
  newer: 'Another tab runs a newer version of this page. Save a file, then load this tab again.',
  refused: 'This browser refuses to keep shops, as private windows may.',
};

/**
 * Says that something could not be written, and what to do.
 *
 * @param failure - how the store failed
 * @param open - id of the open shop
 * @param retry - tries again
 * @returns the line
 */
export function unsavedNotice(failure: StoreFailure, open: string, retry: () => void): Notice {
  return {
    text: `Your last changes are not saved. ${TROUBLES[failure.trouble]} They last while the page is open, and saving is tried again by itself. (${failure.message})`,
    action: { words: 'Try again', act: retry },
    save: open,
  };
}

/**
 * Says that the browser keeps nothing, from the start.
 *
 * @param failure - how opening the store failed
 * @returns the line
 */
export function refusedNotice({ trouble, message }: StoreFailure): Notice {
  return {
    text: `${TROUBLES[trouble]} What you enter lasts while the page is open: save a file under Shops to keep it. What was kept before is left as it was. (${message})`,
  };
}

/**
 * Says that this tab may not show what another one has changed.
 *
 * @param failure - how reading failed
 * @returns the line
 */
export function unreadNotice({ trouble, message }: StoreFailure): Notice {
  return {
    text: `What other tabs have changed can’t be read now. ${TROUBLES[trouble]} (${message})`,
  };
}

/** Says that what could not be written is written now. */
export const savedAgainNotice: Notice = { text: 'Saved: everything is kept again.' };

/** Says that the database was opened anew. */
export const reopenedNotice: Notice = {
  text: 'The browser had closed its database. It is open again, and everything is kept.',
};

/**
 * Says that the database opens after all.
 *
 * @param move - moves there what was entered meanwhile, and shows all shops
 * @returns the line
 */
export function unblockedNotice(move: () => void): Notice {
  return {
    text: 'The browser’s database can be opened now.',
    action: { words: 'Show my shops', act: move },
  };
}

/**
 * Says that two tabs made edits at once.
 *
 * @param name - of the shop
 * @returns the line
 */
export function setAsideNotice(name: string): Notice {
  return {
    text: `“${name}” was edited in two tabs at once. The later edit stands; the shop as the other tab had it is under Shops, Earlier versions.`,
  };
}

/**
 * Says that another tab does not let go of a shop.
 *
 * @param takeOver - writes from here
 * @returns the line
 */
export function unansweredNotice(takeOver: () => void): Notice {
  return {
    text: 'Another tab has this shop open and does not answer. What you change here is not saved yet.',
    action: { words: 'Save from this tab', act: takeOver },
  };
}

/**
 * Says that some of what was kept can't be opened.
 *
 * @param count - how many shops
 * @returns the line
 */
export function unreadableNotice(count: number): Notice {
  const what = count === 1 ? 'One kept shop' : `${count} kept shops`;
  return { text: `${what} could not be opened and stayed as it was. See Shops for the reason.` };
}
