// Puts the sheet of a session on the page, out of sight, until drawing and plot are drawn; prints it;
// and takes it away with the next press of a key or a button, since some browsers print after they
// have said that they did.

import type { Session } from '../../state/session.ts';
import { pagePrintStyles } from './page-print.styles.ts';
import { readSheet } from './read-sheet.ts';
import { ShopSheet } from './shop-sheet.ts';

/** So many frames are waited for, at most, until everything is drawn. */
const MOST_FRAMES = 60;

/** Whatever comes first of these means that the reader is back on the page. */
const BACK = ['pointerdown', 'keydown', 'click'] as const;
/** What stands at the foot of each page of paper, for the page's styles. */
const FOOT = '--dc-sheet-foot';

/**
 * Prints the sheet.
 *
 * @param session - the session
 * @param printed - when
 */
export async function printSheet(session: Session, printed: Date): Promise<void> {
  const sheet = new ShopSheet();
  sheet.sheet = readSheet(session, printed);
  lay(sheet);
  for (let frame = 0; frame < MOST_FRAMES && !sheet.isDrawn; frame++) await nextFrame();
  await nextFrame();
  print();
}

/** Lays the sheet on the page until the reader is back. */
function lay(sheet: ShopSheet): void {
  const { title, documentElement: root } = document;
  const name = sheet.sheet?.name ?? '';
  const styles = pagePrintStyles.styleSheet;
  if (styles) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styles];
  document.title = `${name}, shop sheet`;
  root.style.setProperty(FOOT, cssText(name));
  document.body.append(sheet);
  const remove = () => {
    for (const event of BACK) removeEventListener(event, remove, true);
    sheet.remove();
    document.title = title;
    root.style.removeProperty(FOOT);
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== styles);
  };
  for (const event of BACK) addEventListener(event, remove, true);
}

/** Words as a text of a style sheet: nothing in them ends it. */
function cssText(words: string): string {
  return `"${words.replace(/[\\"]/g, '\\$&')}"`;
}

async function nextFrame(): Promise<void> {
  await new Promise((resolve) => requestAnimationFrame(resolve));
}
