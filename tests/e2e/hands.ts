// Hands that work the page: by keys alone, or by a finger. Both find what they want as a reader does,
// by its role and its label.
import type { Page } from 'playwright-core';
import { describeFocus, type Focus, placeInList, rowNames } from './describe-focus.ts';

export interface Hands {
  press(button: string): Promise<void>;
  /** Unfolds a part of the page. */
  unfold(heading: string): Promise<void>;
  /** Puts words in the place of those in a field. */
  type(label: string, words: string): Promise<void>;
  /** Chooses an entry of a list. */
  choose(label: string, words: string): Promise<void>;
  /** Picks one of several round buttons. */
  pick(label: string): Promise<void>;
  /** Opens the row of the outline that begins with a name. */
  openRow(name: string): Promise<void>;
}

/** More stops than any page of these tests has. */
const MOST_STOPS = 400;

/** Hands on the keyboard: Tab walks to everything, and nothing is ever clicked. */
export function keyboardHands(page: Page): Hands {
  const { keyboard } = page;

  async function walkTo(what: string, fits: (focus: Focus) => boolean): Promise<Focus> {
    for (let stop = 0; stop < MOST_STOPS; stop++) {
      const focus = await describeFocus(page);
      if (fits(focus)) return focus;
      await keyboard.press('Tab');
    }
    throw new Error(`no way by Tab to ${what}`);
  }

  /** Figures under a plot unfold by a button too, and are no row. */
  const isRow = ({ role, name, expanded }: Focus) =>
    role === 'button' && expanded !== '' && !name.startsWith('Figures of');

  /** Down by a number of entries, or up where it is below 0. */
  async function step(entries: number): Promise<void> {
    const key = entries < 0 ? 'ArrowUp' : 'ArrowDown';
    for (let at = 0; at < Math.abs(entries); at++) await keyboard.press(key);
  }

  return {
    async press(name) {
      await walkTo(name, ({ role, name: own }) => role === 'button' && own === name);
      await keyboard.press('Enter');
    },
    async unfold(heading) {
      await walkTo(heading, ({ role, name }) => role === 'summary' && name.startsWith(heading));
      await keyboard.press('Enter');
    },
    async type(label, words) {
      await walkTo(label, ({ role, name }) => role === 'input' && name === label);
      await keyboard.press('Control+a');
      await keyboard.type(words);
      await keyboard.press('Enter');
    },
    async choose(label, words) {
      await walkTo(label, ({ role, name }) => role === 'select' && name === label);
      const { at, last } = await placeInList(page, words);
      const isNearEnd = last - at < at;
      await keyboard.press(isNearEnd ? 'End' : 'Home');
      await step(isNearEnd ? at - last : at);
    },
    async pick(label) {
      await walkTo('a round button', ({ role }) => role === 'radio');
      for (let at = 0; (await describeFocus(page)).name !== label; at++) {
        if (at === 10) throw new Error(`no round button ${label}`);
        await keyboard.press('ArrowDown');
      }
    },
    async openRow(name) {
      await keyboard.press('Escape');
      const { name: from } = await walkTo('the outline', isRow);
      const rows = await rowNames(page);
      const to = rows.findIndex((row) => rowOf(name).test(row));
      await step(to - rows.indexOf(from));
      const focus = await describeFocus(page);
      if (!rowOf(name).test(focus.name)) throw new Error(`no way by arrow keys to ${name}`);
      if (focus.expanded === 'false') await keyboard.press('Enter');
    },
  };
}

/** A finger on the glass; what the browser's own keyboard and lists would do is done for them. */
export function touchHands(page: Page): Hands {
  return {
    async press(name) {
      await page.getByRole('button', { name, exact: true }).first().tap();
    },
    async unfold(heading) {
      await page.getByRole('heading', { name: heading, exact: true }).tap();
    },
    async type(label, words) {
      const field = page.getByRole('textbox', { name: label, exact: true }).first();
      await field.tap();
      await field.fill(words);
      await field.press('Enter');
    },
    async choose(label, words) {
      const list = page.getByRole('combobox', { name: label, exact: true }).first();
      await list.selectOption({ label: words });
    },
    async pick(label) {
      await page.getByRole('radio', { name: label, exact: true }).tap();
    },
    async openRow(name) {
      const row = page.getByRole('button', { name: rowOf(name) });
      if ((await row.getAttribute('aria-expanded')) === 'false') await row.tap();
    },
  };
}

/** The row of a drop says so next, that of a section begins with its size. */
function rowOf(name: string): RegExp {
  return new RegExp(`^${name} (drop, |[\\d.]+\\s?in\\.)`);
}
