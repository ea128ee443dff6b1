// A page whose open shop is edited without a pause: each edit gives it a new name with a number, and
// those that the browser's database has acknowledged are noted as they are.
import type { BrowserContext, Page } from 'playwright-core';

/** The numbers of edits, the highest of each kind. */
export interface EditCount {
  /** Edits that were made. */
  made: number;
  /** Edits whose writing the database has acknowledged. */
  kept: number;
}

/** Opens the page and notes what is acknowledged on it. */
export async function openBusyPage(
  context: BrowserContext,
  address: string,
  count: EditCount,
): Promise<Page> {
  const page = await context.newPage();
  await page.exposeFunction('noteMade', (edit: number) => {
    count.made = Math.max(count.made, edit);
  });
  await page.exposeFunction('noteKept', (edit: number) => {
    count.kept = Math.max(count.kept, edit);
  });
  await page.addInitScript(listenToDatabase);
  await page.goto(address);
  await page.getByRole('slider').first().waitFor();
  return page;
}

/** Runs in the page: tells of each edit that a finished transaction has written. */
function listenToDatabase(): void {
  const page = globalThis as unknown as { noteKept: (edit: number) => Promise<void> };
  // oxlint-disable-next-line typescript/unbound-method -- called on what it belongs to
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (
    this: IDBObjectStore,
    value: unknown,
    key?: IDBValidKey,
  ) {
    const name = (value as { document?: { name?: string } }).document?.name ?? '';
    const edit = Number(/^Edit (\d+)$/.exec(name)?.[1]);
    if (this.name === 'shops' && edit > 0) {
      this.transaction.addEventListener('complete', () => void page.noteKept(edit));
    }
    return key === undefined ? put.call(this, value) : put.call(this, value, key);
  };
}

/** Begins to edit: by steps of their own and by runs that count as one, as a drag's do. */
export async function beginEditing(page: Page, from: number): Promise<void> {
  await page
    .locator('dc-shop-desk')
    .evaluate((desk: HTMLElementTagNameMap['dc-shop-desk'], from) => {
      const window = globalThis as unknown as { noteMade: (edit: number) => Promise<void> };
      let edit = from;
      const step = () => {
        const isDrag = Math.floor(edit / 8) % 2 === 1;
        const name = `Edit ${edit}`;
        desk.shelf?.open.value.session.edit(
          (shop) => ({ ...shop, name }),
          isDrag ? 'drag' : undefined,
        );
        void window.noteMade(edit);
        edit += 1;
        setTimeout(step, Math.random() * 12);
      };
      step();
    }, from);
}

/** The number of the edit that the page shows after it was opened again. */
export async function editShown(page: Page): Promise<number> {
  // On a busy machine a database that was killed may take long to recover; the page says so meanwhile.
  if ((await page.getByText(/holds the browser’s database/).count()) > 0) {
    await page.getByRole('button', { name: 'Show my shops' }).click();
    await page
      .getByText(/holds the browser’s database|can be opened now/)
      .waitFor({ state: 'detached' });
    await page.getByRole('slider').first().waitFor();
  }
  const title = await page.getByRole('heading', { level: 1 }).textContent();
  return Number(/^Edit (\d+)$/.exec(title ?? '')?.[1] ?? 0);
}
