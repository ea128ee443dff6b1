// A line to the reader above the page, and the ones that tell of shops that are not kept.

import type { Problem } from '../shop/opening/problem.ts';

/** A line to the reader above the page. */
export interface Notice {
  readonly text: string;
  /** What is wrong with a file that was refused. */
  readonly problems?: readonly Problem[];
  /** Takes back what the line tells of. */
  readonly undo?: () => void;
}

/**
 * Says that the browser keeps nothing.
 *
 * @param reason - in the browser's words
 * @returns the line
 */
export function refusedNotice(reason: string): Notice {
  return {
    text: `This browser refuses to keep shops (${reason}). What you enter lasts while the page is open: download the file under Shops to keep it.`,
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
