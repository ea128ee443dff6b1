// Lays the sheet of a session beside the page, out of sight and drawn at once, so that it can be done
// while the browser is about to print. It is taken away with the next press of a key or a button, not
// when the browser says that it has printed, since some say so before they do.

import type { Session } from '../../state/session.ts';
import { pagePrintStyles } from './page-print.styles.ts';
import { readSheet } from './read-sheet.ts';
import { ShopSheet } from './shop-sheet.ts';

/** Whatever comes first of these means that the reader is back on the page. */
const BACK = ['pointerdown', 'keydown', 'click'] as const;
/** What stands at the foot of each page of paper, for the page's styles. */
const FOOT = '--dc-sheet-foot';

/**
 * Lays the sheet out. On paper there is nothing else from then on.
 *
 * @param session - the session
 * @param printed - when it is printed
 * @returns takes the sheet away, if the reader's next press has not done so
 */
export function layAside(session: Session, printed: Date): () => void {
  const { title, documentElement: root } = document;
  const sheet = new ShopSheet();
  const read = readSheet(session, printed);
  sheet.sheet = read;
  const styles = pagePrintStyles.styleSheet;
  if (styles) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styles];
  document.title = `${read.name}, shop sheet`;
  root.style.setProperty(FOOT, cssText(read.name));
  document.body.append(sheet);
  sheet.drawAtOnce();
  const takeAway = () => {
    if (!sheet.isConnected) return;
    for (const event of BACK) removeEventListener(event, takeAway, true);
    sheet.remove();
    document.title = title;
    root.style.removeProperty(FOOT);
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== styles);
  };
  for (const event of BACK) addEventListener(event, takeAway, true);
  return takeAway;
}

/** Words as a text of a style sheet: nothing in them ends it. */
function cssText(words: string): string {
  return `"${words.replace(/[\\"]/g, '\\$&')}"`;
}
