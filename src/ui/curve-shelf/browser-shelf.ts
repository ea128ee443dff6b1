// The shelf of the reader's own curves, as this browser keeps it.

import { BrowserCurveStore } from '../../shop/store/browser-curve-store.ts';
import { randomId } from '../../shop/store/random-id.ts';
import { CurveShelf } from '../../state/curve-shelf.ts';

/**
 * Makes a shelf over what this browser keeps; several of them see the same curves.
 *
 * @returns the shelf, not read yet
 */
export function browserShelf(): CurveShelf {
  return new CurveShelf({
    store: new BrowserCurveStore(),
    newId: randomId,
    now: () => Date.now(),
  });
}
