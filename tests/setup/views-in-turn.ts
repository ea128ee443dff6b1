// Which views a long check goes through: all of them by its own command, a part of them in `npm test`,
// so that this stays a matter of minutes.

import { type PageView, pageViews } from './page-views.ts';

/** These are different enough to stand for the others. */
const SOME = ['first', 'run-wye', 'shops', 'error-notice'];

/** The views to go through now. */
export const viewsInTurn: readonly PageView[] =
  process.env['ENDURE'] === 'whole'
    ? pageViews
    : pageViews.filter(({ name }) => SOME.includes(name));
