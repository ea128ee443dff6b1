// Several shops in one browser, on the built page: kept from visit to visit, saved as a file that the
// command line reads to the same figures, and opened from one.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { runSolve } from '../../src/cli/run-solve.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { resizeWhole } from '../setup/open-whole.ts';
import { sidewaysScroll } from './text-faults.ts';

const address = inject('pageAddress');

describe('shops in the browser', () => {
  let browser: Browser;
  let folder: string;
  beforeAll(async () => {
    browser = await launchChromium();
    folder = mkdtempSync(join(tmpdir(), 'dropcurve-files-'));
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function visit(
    options: BrowserContextOptions = {},
    prepare: (context: BrowserContext) => Promise<unknown> = async () => {},
  ): Promise<{ page: Page; complaints: string[] }> {
    const context = await browser.newContext({
      locale: 'en-US',
      acceptDownloads: true,
      ...options,
    });
    await prepare(context);
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    return { page, complaints };
  }

  const press = (page: Page, name: string) =>
    page.getByRole('button', { name, exact: true }).click();
  const title = (page: Page) => page.getByRole('heading', { level: 1 }).textContent();
  const type = async (page: Page, name: string, words: string) => {
    await page.getByRole('textbox', { name, exact: true }).fill(words);
    await page.keyboard.press('Enter');
  };
  const flow = (page: Page) => page.locator('text.flow-number').textContent();

  /** A shop with a machine, lengths and a name of its own. */
  async function start(page: Page, name: string): Promise<void> {
    await press(page, 'Start my own');
    await type(page, 'Length of the main', '31\' 6"');
    await page.getByRole('combobox', { name: 'Machine' }).selectOption({ label: 'drum sander' });
    await type(page, 'Name of the shop', name);
    await press(page, 'Open the shop');
    await page.getByRole('slider').first().waitFor();
  }

  async function save(page: Page, name: string): Promise<string> {
    await press(page, 'Shops');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, `Save as a file: ${name}`),
    ]);
    const file = join(folder, download.suggestedFilename());
    await download.saveAs(file);
    return file;
  }

  it('starts one, keeps it over a reload, and saves a file that the command line solves alike', async () => {
    const { page, complaints } = await visit();
    await start(page, 'Shed by the lane');
    await page.getByRole('heading', { level: 2, name: 'Air, filter and range' }).click();
    await type(page, 'Height above the sea', '900 m');
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    expect(await title(page)).toBe('Shed by the lane');
    const shown = await flow(page);

    const file = await save(page, 'Shed by the lane');
    expect(file).toMatch(/shed-by-the-lane\.json$/);
    const solved = runSolve([file, '--json', '--open', 'drum-sander']);
    expect(solved.errors).toBe('');
    const answer = JSON.parse(solved.out) as {
      states: { operatingPoint: { flow: number }; outcome: string }[];
    };
    const point = formatQuantity('flow', 'us', answer.states[0]!.operatingPoint.flow);
    expect(shown).toBe(`${point.number} ${point.unit}`);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('holds several, deletes one and brings it back, and opens one from its file', async () => {
    const { page, complaints } = await visit();
    await start(page, 'First');
    await start(page, 'Second');
    const file = await save(page, 'First');
    await press(page, 'Duplicate: Second');
    await press(page, 'Delete: First');
    await press(page, 'Undo');
    await press(page, 'Delete: Second');
    await page.getByText('“Second” was deleted').waitFor();
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    await press(page, 'Shops');
    await page.getByRole('heading', { level: 1, name: 'Shops' }).waitFor();
    const names = await page.getByRole('textbox', { name: 'Name' }).all();
    const values = await Promise.all(names.map((box) => box.inputValue()));
    expect(values.toSorted()).toEqual(['First', 'Second, copy']);
    await page.getByLabel('Open a file').setInputFiles(file);
    await page.getByRole('slider').first().waitFor();
    expect(await title(page)).toBe('First');
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('refuses a file in words and leaves open what was open', async () => {
    const { page } = await visit();
    await press(page, 'Shops');
    await page.getByLabel('Open a file').setInputFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{ "format": "dropcurve-shop", "version": 1, }'),
    });
    await page.getByText('“broken.json” was not opened').waitFor();
    expect(await page.getByText(/line 1, column 45/).count()).toBe(1);
    await press(page, 'Back to Heron Lane paddle works');
    expect(await title(page)).toBe('Heron Lane paddle works');
    await page.context().close();
  });

  it('goes on without a store, and says that nothing will be kept', async () => {
    const { page } = await visit({}, (context) =>
      context.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('The operation is insecure.', 'SecurityError');
        };
      }),
    );
    expect(await page.getByText(/This browser refuses to keep shops/).count()).toBe(1);
    const [file] = await Promise.all([page.waitForEvent('download'), press(page, 'Save a file')]);
    expect(file.suggestedFilename()).toBe('heron-lane-paddle-works.json');
    await start(page, 'For now');
    expect(await title(page)).toBe('For now');
    await page.context().close();
  });

  it('goes on without its shops where the database does not answer, and brings them when it does', async () => {
    const { page } = await visit({}, (context) =>
      context.addInitScript(() => {
        // The first look at all shops is answered late, before the page is loaded again.
        // oxlint-disable-next-line typescript/unbound-method -- called on what it belongs to
        const { getAll } = IDBObjectStore.prototype;
        let isFirst = sessionStorage.getItem('answered late') === null;
        sessionStorage.setItem('answered late', 'yes');
        IDBObjectStore.prototype.getAll = function (this: IDBObjectStore, ...query) {
          const request = getAll.apply(this, query);
          if (!isFirst) return request;
          isFirst = false;
          const until = Date.now() + 10_000;
          const keepBusy = () => {
            if (Date.now() < until) this.count().addEventListener('success', keepBusy);
          };
          keepBusy();
          return request;
        };
      }),
    );
    expect(await page.getByText(/Another tab of this page is in the way/).count()).toBe(1);
    await start(page, 'Meanwhile');
    await page
      .getByText(/can be read now\. What you have entered here was put with them/)
      .waitFor();
    await Promise.all([page.waitForEvent('load'), press(page, 'Show my shops')]);
    await page.getByRole('heading', { level: 1, name: 'Meanwhile' }).waitFor();
    expect(await page.getByText(/Another tab of this page is in the way/).count()).toBe(0);
    await page.context().close();
  });

  it('remembers the units', async () => {
    const { page } = await visit();
    await page.getByRole('radio', { name: 'metric' }).check();
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    expect(await flow(page)).toContain('m³/h');
    await page.context().close();
  });

  it('scrolls in one direction only in every view, however narrow the window', async () => {
    const { page } = await visit();
    const expectOneWay = async () => {
      for (const width of [820, 390, 320]) {
        await resizeWhole(page, width);
        expect(await sidewaysScroll(page), `${width} px`).toBeLessThanOrEqual(0);
      }
    };
    for (const name of ['Collector', 'Air, filter and range']) {
      await page.getByRole('heading', { level: 2, name, exact: true }).click();
    }
    await page.getByRole('slider', { name: 'How blind the filter is' }).waitFor();
    await expectOneWay();
    await press(page, 'Shops');
    await page.getByRole('heading', { level: 1, name: 'Shops' }).waitFor();
    await expectOneWay();
    await press(page, 'Start my own');
    await page.getByRole('radio', { name: 'Points of my own' }).check();
    await expectOneWay();
    await page.context().close();
  });
});
