// A chart as a file, drawn by the browser, and the hands that trace it on the built page.
import type { Page } from 'playwright-core';
import { valueAt } from '../../src/math/hermite.ts';
import { pchip } from '../../src/math/pchip.ts';
import type { ChartValue } from '../../src/plot/chart-trace/chart-mapping.ts';
import type { DrawnChart } from './drawn-chart.ts';

/** An invented curve: flow [m³/s] to pressure [Pa]. */
const CURVE = pchip([0.05, 0.2, 0.35, 0.5, 0.65], [2300, 2150, 1750, 1050, 300]);

/** Pressure [Pa] of the drawn curve at a flow [m³/s]. */
export function drawnPressure(flow: number): number {
  return valueAt(CURVE, flow);
}

/** The curve and its axes with ticks on a white page, as PNG. */
export async function chartPicture(page: Page, chart: DrawnChart): Promise<Buffer> {
  const { flow, pressure, width, height, place } = chart;
  const across = (at: number) => [flow.from, flow.to].map((x) => place({ flow: x, pressure: at }));
  const up = (at: number) =>
    [pressure.from, pressure.to].map((y) => place({ flow: at, pressure: y }));
  const thin = [
    ...[100, 200, 500, 1000, 2000].map(across),
    ...[0.1, 0.3, 0.5, 0.7].map(up),
    ...[flow.from].map(up),
  ];
  const curve = Array.from({ length: 121 }, (_, i) => 0.05 + i * 0.005).map((at) =>
    place({ flow: at, pressure: drawnPressure(at) }),
  );
  const bytes = await page.evaluate(
    async ({ size, lines }) => {
      const canvas = new OffscreenCanvas(size.width, size.height);
      const context = canvas.getContext('2d')!;
      context.fillStyle = 'white';
      context.fillRect(0, 0, size.width, size.height);
      for (const { points, wide } of lines) {
        context.lineWidth = wide;
        context.beginPath();
        for (const { x, y } of points) context.lineTo(x, y);
        context.stroke();
      }
      return [...new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer())];
    },
    {
      size: { width, height },
      lines: [...thin.map((points) => ({ points, wide: 1 })), { points: curve, wide: 3 }],
    },
  );
  return Buffer.from(bytes);
}

/** A file for the chooser. */
export interface ChosenFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** Unfolds the way in under the curve, and chooses a picture there. */
export async function chooseChart(page: Page, picture: Buffer): Promise<void> {
  await unfoldTracing(page);
  await chooseFile(page, { name: 'leaflet.png', mimeType: 'image/png', buffer: picture });
  await page.getByRole('application').waitFor();
}

export async function unfoldTracing(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 2, name: 'Collector', exact: true }).click();
  await page.getByText('From a picture of a chart').click();
}

export async function chooseFile(page: Page, file: ChosenFile): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByLabel('Picture of the chart', { exact: true }).click(),
  ]);
  await chooser.setFiles(file);
}

/** Says in which units the chart is written, and how its pressures run. */
export async function sayAxes(page: Page, chart: DrawnChart): Promise<void> {
  const choose = (axis: string, name: string, value: string) =>
    page.getByRole('group', { name: axis }).getByRole('combobox', { name }).selectOption(value);
  await choose('Flow axis', 'Its numbers are in', 'L/s');
  await choose('Pressure axis', 'Its numbers are in', 'kPa');
  await choose('Flow axis', 'Its values are', chart.flow.scale);
  await choose('Pressure axis', 'Its values are', chart.pressure.scale);
}

/** A place on the shown picture, on a whole pixel of the page, from its corner. */
export async function placeOnPicture(page: Page, chart: DrawnChart, value: ChartValue) {
  const surface = page.getByRole('application');
  const { width } = (await surface.boundingBox())!;
  const { x, y } = chart.place(value);
  return { x: Math.round((x * width) / chart.width), y: Math.round((y * width) / chart.width) };
}

/** Marks two values on each axis and types them, each press by a hand that is handed in. */
export async function markChart(
  page: Page,
  press: (value: ChartValue) => Promise<void>,
): Promise<void> {
  const type = async (axis: string, name: string, words: string) => {
    const field = page.getByRole('group', { name: axis }).getByRole('textbox', { name });
    await field.fill(words);
    await field.press('Enter');
  };
  await press({ flow: 0.1, pressure: 100 });
  await type('Flow axis', 'First mark', '100');
  await press({ flow: 0.7, pressure: 100 });
  await type('Flow axis', 'Second mark', '700');
  await press({ flow: 0.05, pressure: 200 });
  await type('Pressure axis', 'First mark', '0.2');
  await press({ flow: 0.05, pressure: 2000 });
  await type('Pressure axis', 'Second mark', '2');
}
