// A leaflet as a PDF, opened in the built page under its content policy: its page is chosen, the chart
// on it traced. Likewise without a network, and in the page in one file.
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { SINGLE_FILE } from '../../src/app/build/single-file.ts';
import type { CurvePoint } from '../../src/curve/curve-data.ts';
import {
  chartPicture,
  chooseFile,
  drawnPressure,
  markChart,
  placeOnPicture,
  sayAxes,
  unfoldTracing,
} from '../setup/chart-picture.ts';
import { drawnChart } from '../setup/drawn-chart.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { smallPdf } from '../setup/small-pdf.ts';
import { watchPage } from '../setup/watch-page.ts';

const CHART = drawnChart({ flow: 'linear', pressure: 'linear', turn: 2, skew: 0 });
const FLOWS = [0.1, 0.25, 0.4, 0.55, 0.65];

describe('a chart in a PDF', () => {
  let browser: Browser;
  let leaflet: Buffer;
  let folder: string;
  beforeAll(async () => {
    browser = await launchChromium();
    leaflet = await printedLeaflet(browser);
    folder = mkdtempSync(join(tmpdir(), 'dropcurve-pdf-'));
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const pdf = (buffer: Buffer, name = 'leaflet.pdf') => ({
    name,
    mimeType: 'application/pdf',
    buffer,
  });

  async function visit(address: string): Promise<{ page: Page; complaints: string[] }> {
    const context = await browser.newContext({
      locale: 'en-US',
      viewport: { width: 1440, height: 900 },
    });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    return { page, complaints };
  }

  /** Opens the leaflet, turns to its second page, and traces the curve there. */
  async function trace(page: Page): Promise<readonly CurvePoint[]> {
    await unfoldTracing(page);
    await chooseFile(page, pdf(leaflet));
    const field = page.getByLabel('Page, of 2');
    await field.waitFor();
    expect(await shape(page)).toBeCloseTo(CHART.width / CHART.height, 2);
    await field.fill('3');
    await field.press('Enter');
    await page.getByText('There is no page “3”: type a number from 1 to 2.').waitFor();
    await field.fill('2');
    await field.press('Enter');
    await page.getByRole('button', { name: 'Page before' }).waitFor();
    await sayAxes(page, CHART);
    const press = async (value: { flow: number; pressure: number }) =>
      page.getByRole('application').click({ position: await placeOnPicture(page, CHART, value) });
    await markChart(page, press);
    for (const flow of FLOWS) await press({ flow, pressure: drawnPressure(flow) });
    await page.getByRole('button', { name: 'Put them in the place of the curve’s points' }).click();
    await page.getByText(/^5 points were taken\./).waitFor();
    return page
      .locator('dc-shop-desk')
      .evaluate(
        (desk: HTMLElementTagNameMap['dc-shop-desk']) =>
          desk.shelf?.open.value.session.shop.value.collector.curve.points ?? [],
      );
  }

  /** Where the leaflet's second page is what it should be, the curve comes back from it. */
  function expectCurve(points: readonly CurvePoint[]): void {
    expect(points).toHaveLength(FLOWS.length);
    points.forEach(({ flow, pressure }, i) => {
      expect(Math.abs(flow - FLOWS[i]!)).toBeLessThan(0.005 * CHART.flow.to);
      expect(Math.abs(pressure - drawnPressure(FLOWS[i]!))).toBeLessThan(0.005 * CHART.pressure.to);
    });
  }

  it('is traced on the built page, and nothing is refused, logged or asked elsewhere', async () => {
    const { page, complaints } = await visit(inject('pageAddress'));
    expectCurve(await trace(page));
    expect(await isInked(page, CHART.place({ flow: 0.4, pressure: drawnPressure(0.4) }))).toBe(
      true,
    );
    expect(await isInked(page, CHART.place({ flow: 0.2, pressure: 1500 }))).toBe(false);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is not read where it is locked, broken or none: in words, and the picture stays', async () => {
    const { page, complaints } = await visit(inject('pageAddress'));
    await unfoldTracing(page);
    await chooseFile(page, pdf(leaflet));
    await page.getByLabel('Page, of 2').waitFor();
    const before = await page.getByRole('application').locator('image').getAttribute('href');
    const size = { width: 300, height: 200 };
    const bad = [
      { kind: 'locked', words: /“locked\.pdf” is locked with a password\./ },
      { kind: 'broken', words: /“broken\.pdf” can’t be read as a PDF\./ },
    ] as const;
    for (const { kind, words } of bad) {
      await chooseFile(page, pdf(Buffer.from(smallPdf([], size, { fault: kind })), `${kind}.pdf`));
      await page.getByText(words).waitFor();
    }
    const now = await page.getByRole('application').locator('image').getAttribute('href');
    expect(now).toBe(before);
    await page.getByRole('button', { name: 'Next page' }).click();
    await page.getByRole('button', { name: 'Page before' }).waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is traced without a network', async () => {
    const { page, complaints } = await visit(inject('pageAddress'));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.context().setOffline(true);
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    expectCurve(await trace(page));
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is traced in the page in one file, opened from the disk', async () => {
    const file = join(folder, 'on a stick.html');
    copyFileSync(join(inject('pageFolder'), SINGLE_FILE), file);
    const { page, complaints } = await visit(pathToFileURL(file).href);
    expectCurve(await trace(page));
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});

/** Two pages of the chart's size in pixels: words, then the chart. */
async function printedLeaflet(browser: Browser): Promise<Buffer> {
  const page = await browser.newPage();
  const picture = `data:image/png;base64,${(await chartPicture(page, CHART)).toString('base64')}`;
  await page.setContent(`<style>
      body { margin: 0; font: 20px sans-serif }
      img { display: block; break-before: page; width: ${CHART.width}px }
    </style>
    <h1>A collector</h1><p>Invented; its curve is overleaf.</p><img src="${picture}" alt="">`);
  const printed = await page.pdf({
    width: `${CHART.width}px`,
    height: `${CHART.height}px`,
    printBackground: true,
  });
  await page.close();
  return printed;
}

/** Width over height of the picture that is shown. */
function shape(page: Page): Promise<number> {
  return page
    .getByRole('application')
    .locator('image')
    .evaluate(
      (image) => Number(image.getAttribute('width')) / Number(image.getAttribute('height')),
    );
}

/** Whether the picture that is shown is dark at a place of the chart. */
function isInked(page: Page, at: { readonly x: number; readonly y: number }): Promise<boolean> {
  return page
    .getByRole('application')
    .locator('image')
    .evaluate(
      async (shown, { x, y, width }) => {
        const image = new Image();
        image.src = shown.getAttribute('href')!;
        await image.decode();
        const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
        const context = canvas.getContext('2d')!;
        context.drawImage(image, 0, 0);
        const scale = image.naturalWidth / width;
        return context.getImageData(x * scale, y * scale, 1, 1).data[0]! < 128;
      },
      { ...at, width: CHART.width },
    );
}
