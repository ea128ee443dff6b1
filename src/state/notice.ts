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
  full: 'There is no room left on the device for what this browser keeps. Free some space.',
  lost: 'The browser has closed the place where it keeps shops and does not open it again.',
  aborted: 'The browser broke off in the midst of saving.',
  blocked: 'Another tab of this page is in the way. Close the other tabs.',
  newer: 'Another tab runs a newer version of this page. Save a file, then load this tab again.',
  refused: 'This browser refuses to keep shops, as some do in private windows.',
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
    text: `Your last changes are not saved. ${TROUBLES[failure.trouble]} Your changes stay here as long as this page is open, and saving is tried again by itself. To be safe, save a file. (${failure.message})`,
    action: { words: 'Try again', act: retry },
    save: open,
  };
}

/**
 * Says that the browser keeps nothing, from the start.
 *
 * @param failure - how opening the store failed
 * @param open - id of the open shop
 * @returns the line
 */
export function refusedNotice({ trouble, message }: StoreFailure, open: string): Notice {
  return {
    text: `${TROUBLES[trouble]} What you enter lasts only as long as this page is open: save a file to keep it. Nothing that was kept before is lost. (${message})`,
    save: open,
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
    text: `What other tabs have changed can’t be read now, so this one may be behind them. ${TROUBLES[trouble]} (${message})`,
  };
}

/** Says that what could not be written is written now. */
export const savedAgainNotice: Notice = { text: 'Saved: everything is kept again.' };

/** Says that the database was opened anew. */
export const reopenedNotice: Notice = {
  text: 'The browser had closed the place where it keeps shops. It is open again, and everything is kept.',
};

/**
 * Says that the database opens after all.
 *
 * @param show - shows all shops
 * @returns the line
 */
export function unblockedNotice(show: () => void): Notice {
  return {
    text: 'The shops that this browser keeps can be read now. What you have entered here was put with them.',
    action: { words: 'Show my shops', act: show },
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
  const what =
    count === 1
      ? 'One kept shop could not be opened and stayed as it was.'
      : `${count} kept shops could not be opened and stayed as they were.`;
  return { text: `${what} See Shops for the reason.` };
}

/** Where a file is at fault that was never one of this page's, or lost something on the way. */
const FOREIGN = /^line \d|^the file$|^format$/;

/**
 * Says that a file was not opened.
 *
 * @param name - of the file
 * @param problems - what is wrong with it
 * @returns the line
 */
export function refusedFileNotice(name: string, problems: readonly Problem[]): Notice {
  return {
    text: `“${name}” was not opened.${whyRefused(problems)} What was open stays open.`,
    problems,
  };
}

function whyRefused(problems: readonly Problem[]): string {
  if (problems.some(({ place }) => FOREIGN.test(place))) {
    return ' It is not a file that this page saved, or it was damaged on the way.';
  }
  if (problems.some(({ message }) => message.includes('newer version'))) {
    return ' It needs a newer version of this page: load the page again where there is a network.';
  }
  return '';
}

/**
 * Says that a file could not even be read.
 *
 * @param name - of the file
 * @param error - what the browser says of it
 * @returns the line
 */
export function unreadFileNotice(name: string, error: unknown): Notice {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    text: `“${name}” can’t be read: it may have been moved, or be on a device that is gone. What was open stays open. (${reason})`,
  };
}
