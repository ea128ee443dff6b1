// Every view that the page has, and the steps of a reader that lead to it from the first one. Pictures,
// axe, the walk by keys and the check of large text all go through this list.
import type { Page } from 'playwright-core';
import {
  chartPicture,
  chooseChart,
  drawnPressure,
  markChart,
  placeOnPicture,
  sayAxes,
} from './chart-picture.ts';
import { drawnChart } from './drawn-chart.ts';
import { openWhole, untilWhole } from './open-whole.ts';

export interface PageView {
  /** For file names and test names. */
  readonly name: string;
  /** From the freshly opened page; done when everything of the view is there. */
  readonly reach: (page: Page) => Promise<void>;
}

const PARTS = {
  run: 'The run',
  collector: 'Collector',
  conditions: 'Air, filter and range',
  sheet: 'Shop sheet and cut list',
  reach: 'Can it reach further?',
  main: 'Would a larger main help?',
  collectors: 'Which collector?',
  variants: 'Variants',
  assumptions: 'What was assumed, and where each figure comes from',
} as const;

export const pageViews: readonly PageView[] = [
  { name: 'first', reach: async () => {} },
  {
    name: 'all-shut',
    reach: async (page) => {
      await press(page, 'Shut all');
      await page
        .getByText(/^Nothing open: /)
        .first()
        .waitFor();
    },
  },
  {
    name: 'metric',
    reach: async (page) => {
      await page.getByRole('radio', { name: 'metric' }).check();
      await page.locator('text.flow-number', { hasText: 'm³/h' }).waitFor();
    },
  },
  {
    name: 'figures',
    reach: async (page) => {
      await pictures(page);
      for (const figures of await page.getByRole('button', { name: /^Figures of the / }).all())
        await figures.click();
      await page.getByRole('table', { name: 'Speed at each drop' }).waitFor();
    },
  },
  {
    name: 'tried',
    reach: async (page) => {
      await press(page, 'Only Lathe');
      await press(page, 'Open Drum sander');
      await page.getByText('Tried so far: 3').click();
      await page.getByRole('table', { name: /^Gates tried/ }).waitFor();
      await pictures(page);
      await page.getByRole('button', { name: 'Clear the former speeds' }).waitFor();
    },
  },
  {
    name: 'path-of-a-drop',
    reach: async (page) => {
      await pictures(page);
      await page.getByRole('combobox', { name: 'Drop' }).selectOption('Drum sander, shut');
    },
  },
  { name: 'run-outline', reach: (page) => editor(page) },
  { name: 'run-section', reach: (page) => editor(page, /^Floor sweep drop 6/) },
  { name: 'run-hose', reach: (page) => editor(page, /^Lathe hose /) },
  { name: 'run-wye', reach: (page) => editor(page, /^West leg 6/) },
  { name: 'run-drop', reach: (page) => editor(page, /^Lathe drop,/) },
  {
    name: 'collector',
    reach: async (page) => {
      await unfold(page, PARTS.collector);
      await page.getByRole('textbox', { name: 'Flow of point 1', exact: true }).waitFor();
    },
  },
  {
    name: 'chart-trace',
    reach: async (page) => {
      const chart = drawnChart({ flow: 'linear', pressure: 'logarithmic', turn: 5, skew: 3 });
      await chooseChart(page, await chartPicture(page, chart));
      await sayAxes(page, chart);
      const press = async (value: { flow: number; pressure: number }) =>
        page.getByRole('application').click({ position: await placeOnPicture(page, chart, value) });
      await markChart(page, press);
      for (const flow of [0.1, 0.25, 0.4, 0.55]) {
        await press({ flow, pressure: drawnPressure(flow) });
      }
      await page.getByRole('button', { name: 'Remove traced point 4' }).waitFor();
    },
  },
  {
    name: 'worksheet',
    reach: async (page) => {
      await unfold(page, PARTS.collector);
      await page.getByText('From a test of your own').click();
      const field = (name: RegExp, at = 0) => page.getByRole('textbox', { name }).nth(at);
      await field(/^Inside diameter of the pipe$/).fill('6');
      await field(/^Suction at the tap$/).fill('8.1');
      await field(/^Suction at the tap$/, 1).fill('6');
      await field(/^Speed at the centre$/).fill('2900');
      await field(/^Speed at the centre$/).press('Enter');
      await page.getByText('Every step of setting 2').click();
      await page.getByText('Where to hold the instrument').click();
      await page.getByText('How exact the instruments are').click();
      await page.getByRole('button', { name: 'Make these 2 points the curve' }).waitFor();
    },
  },
  {
    name: 'conditions',
    reach: async (page) => {
      await unfold(page, PARTS.conditions);
      await page.getByRole('slider', { name: 'How blind the filter is' }).waitFor();
    },
  },
  {
    name: 'sheet',
    reach: async (page) => {
      await unfold(page, PARTS.sheet);
      await page.getByRole('button', { name: 'Print the sheet' }).waitFor();
    },
  },
  { name: 'assumptions', reach: (page) => unfold(page, PARTS.assumptions) },
  {
    name: 'reach',
    reach: async (page) => {
      await unfold(page, PARTS.reach);
      await page
        .getByRole('combobox', { name: 'Which drop is to reach further' })
        .selectOption('Lathe');
      await page.getByRole('img', { name: /^Air and slowest speed .*Lathe/ }).waitFor();
      await page.getByText(/^With everything a little off/).waitFor();
    },
  },
  {
    name: 'main',
    reach: async (page) => {
      await unfold(page, PARTS.main);
      await page.getByRole('img', { name: /^Air and speed in the main/ }).waitFor();
      await page.getByText(/^With everything a little off/).waitFor();
    },
  },
  {
    name: 'which-collector',
    reach: async (page) => {
      await unfold(page, PARTS.collectors);
      await page.getByRole('img', { name: /^Collectors’ curves/ }).waitFor();
      await page.getByText(/^With everything a little off/).waitFor();
    },
  },
  {
    name: 'variants',
    reach: async (page) => {
      await unfold(page, PARTS.main);
      await page.getByText(/^With everything a little off/).waitFor();
      await press(page, 'Keep beside: main of 7 in.');
      await unfold(page, PARTS.variants);
      await page.getByRole('table', { name: /^Each drop alone, in each variant/ }).waitFor();
    },
  },
  { name: 'start', reach: (page) => start(page) },
  {
    name: 'start-own-points',
    reach: async (page) => {
      await start(page);
      await page.getByRole('radio', { name: 'Points of my own' }).check();
      await page.getByRole('textbox', { name: 'Flow of point 1', exact: true }).waitFor();
    },
  },
  {
    name: 'shops',
    reach: async (page) => {
      await start(page);
      await press(page, 'Open the shop');
      await page.getByRole('slider').first().waitFor();
      await shops(page);
      await press(page, /^Duplicate: /);
      await page.getByRole('listitem').nth(1).waitFor();
    },
  },
  {
    name: 'undo-notice',
    reach: async (page) => {
      await start(page);
      await press(page, 'Open the shop');
      await page.getByRole('slider').first().waitFor();
      await shops(page);
      await press(page, /^Delete: /);
      await page.getByText('was deleted').waitFor();
    },
  },
  {
    name: 'error-notice',
    reach: async (page) => {
      await shops(page);
      await page.getByLabel('Open a file').setInputFiles({
        name: 'old-shed.json',
        mimeType: 'application/json',
        buffer: Buffer.from('{ "format": "dropcurve-shop", "version": 1, "units": "SI" }'),
      });
      await page.getByText('“old-shed.json” was not opened').waitFor();
    },
  },
];

/** The view of a name. */
export function pageView(name: string): PageView {
  const view = pageViews.find((each) => each.name === name);
  if (!view) throw new RangeError(`no view ${name}`);
  return view;
}

/** Opens the page as a reader does who was never there before. */
export async function openPage(page: Page, address: string, view: PageView): Promise<void> {
  await openWhole(page, address);
  await view.reach(page);
  await untilWhole(page);
}

async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).first().click();
}

async function unfold(page: Page, heading: string): Promise<void> {
  await page.getByRole('heading', { level: 2, name: heading, exact: true }).click();
}

/** The pictures below the first screen draw themselves when they are seen. */
async function pictures(page: Page): Promise<void> {
  for (const name of ['Speed at each drop', 'Where the suction goes']) {
    await page.getByRole('heading', { level: 2, name }).scrollIntoViewIfNeeded();
    await page
      .getByRole('img', { name: name.startsWith('Speed') ? /^Speed at/ : /^Suction from/ })
      .waitFor();
  }
}

async function editor(page: Page, row?: RegExp): Promise<void> {
  await unfold(page, PARTS.run);
  await page.getByRole('button', { name: 'As the air flows' }).waitFor();
  if (!row) return;
  await page.getByRole('button', { name: row }).click();
  await page.getByRole('textbox', { name: 'Note' }).waitFor();
}

async function start(page: Page): Promise<void> {
  await press(page, 'Start my own');
  await page.getByRole('button', { name: 'Open the shop' }).waitFor();
}

async function shops(page: Page): Promise<void> {
  await press(page, 'Shops');
  await page.getByRole('heading', { level: 1, name: 'Shops' }).waitFor();
}
