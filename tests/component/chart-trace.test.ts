import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { pchip } from '../../src/math/pchip.ts';
import { valueAt } from '../../src/math/hermite.ts';
import '../../src/ui/chart-trace/chart-trace.ts';
import { type DrawnChart, drawnChart } from '../setup/drawn-chart.ts';
import { smallPdf } from '../setup/small-pdf.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

/** An invented curve, drawn and then traced. */
const CURVE = pchip([0.05, 0.2, 0.35, 0.5, 0.65], [2300, 2150, 1750, 1050, 300]);
const FLOWS = [0.06, 0.15, 0.24, 0.33, 0.42, 0.51, 0.6];

/** The chart as a picture: axes, ticks at the marks, and the curve. */
async function pictureOf(chart: DrawnChart): Promise<File> {
  const canvas = new OffscreenCanvas(chart.width, chart.height);
  const context = canvas.getContext('2d')!;
  context.fillStyle = 'white';
  context.fillRect(0, 0, chart.width, chart.height);
  const line = (places: readonly { readonly x: number; readonly y: number }[]) => {
    context.beginPath();
    for (const { x, y } of places) context.lineTo(x, y);
    context.stroke();
  };
  const { flow, pressure } = chart;
  line([flow.from, flow.to].map((at) => chart.place({ flow: at, pressure: pressure.from })));
  line([pressure.from, pressure.to].map((at) => chart.place({ flow: flow.from, pressure: at })));
  line(
    Array.from({ length: 121 }, (_, i) => 0.05 + i * 0.005).map((at) =>
      chart.place({ flow: at, pressure: valueAt(CURVE, at) }),
    ),
  );
  return new File([await canvas.convertToBlob()], 'chart.png', { type: 'image/png' });
}

const surface = () => page.getByRole('application', { name: /Picture of the chart/ });
const status = () => page.getByRole('status').first();

async function placeTrace(chart: DrawnChart) {
  const element = await place<HTMLElement>(
    html`<dc-chart-trace .units=${'metric'}></dc-chart-trace>`,
  );
  await userEvent.upload(page.getByLabelText('Picture of the chart'), await pictureOf(chart));
  await expect.element(surface()).toBeVisible();
  await drawn();
  return element;
}

/** Presses the picture where a pair of values lies, on a whole pixel of the page. */
async function press(
  chart: DrawnChart,
  value: { readonly flow: number; readonly pressure: number },
): Promise<void> {
  await drawn();
  const element = surface().element();
  const { width } = element.getBoundingClientRect();
  const at = chart.place(value);
  const scale = width / chart.width;
  const position = { x: Math.round(at.x * scale), y: Math.round(at.y * scale) };
  // A larger picture scrolls in its window, and the mouse only goes where there is something to see.
  element.parentElement!.scrollTo(position.x - 200, position.y - 200);
  element.parentElement!.scrollIntoView({ block: 'center' });
  await userEvent.click(surface(), { position });
}

async function type(axis: string, mark: string, words: string): Promise<void> {
  const field = page.getByRole('group', { name: axis }).getByRole('textbox', { name: mark });
  await userEvent.fill(field, words);
  await userEvent.keyboard('{Tab}');
}

const choice = (axis: string, name: string) =>
  page.getByRole('group', { name: axis }).getByRole('combobox', { name });

/** Marks both axes by pointer and keyboard, in the units of the chart. */
async function markAxes(chart: DrawnChart): Promise<void> {
  await userEvent.selectOptions(choice('Flow axis', 'Its numbers are in'), 'L/s');
  await userEvent.selectOptions(choice('Pressure axis', 'Its numbers are in'), 'kPa');
  await press(chart, { flow: 0.1, pressure: 100 });
  await type('Flow axis', 'First mark', '100');
  await press(chart, { flow: 0.7, pressure: 100 });
  await type('Flow axis', 'Second mark', '700');
  await press(chart, { flow: 0.05, pressure: 200 });
  await type('Pressure axis', 'First mark', '0.2');
  await press(chart, { flow: 0.05, pressure: 2000 });
  await type('Pressure axis', 'Second mark', '2');
}

const pdf = (bytes: Uint8Array<ArrayBuffer>) =>
  new File([bytes], 'leaflet.pdf', { type: 'application/pdf' });

function dropOn(element: Element, file: File): void {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(file);
  element
    .shadowRoot!.querySelector('div')!
    .dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
}

/** How bright a picture is at some of its pixels: 0 for ink, 255 for paper. */
async function inkAt(
  address: string,
  places: readonly { readonly x: number; readonly y: number }[],
): Promise<readonly number[]> {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
  const context = canvas.getContext('2d')!;
  context.drawImage(image, 0, 0);
  return places.map(({ x, y }) => context.getImageData(x, y, 1, 1).data[0]!);
}

/** Presses Tab until a control of that name, or of such a one, has the focus. */
async function tabTo(name: string | RegExp): Promise<void> {
  const seen: string[] = [];
  for (let i = 0; i < 60; i++) {
    await userEvent.keyboard('{Tab}');
    const here = nameOfFocus();
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    seen.push(here);
  }
  throw new Error(`no ${name} among ${seen.join(', ')}`);
}

/** What the control that has the focus is called. */
function nameOfFocus(): string {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
  const field = active as HTMLInputElement | null;
  const label = field?.labels?.[0]?.textContent;
  return (active?.getAttribute('aria-label') ?? label ?? active?.textContent ?? '').trim();
}

describe('tracing the picture of a chart', () => {
  it('is accessible, before and after a picture was chosen', async () => {
    const element = await place(html`<dc-chart-trace></dc-chart-trace>`);
    await expectAccessible(element);
    element.remove();
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    const traced = await placeTrace(chart);
    await press(chart, { flow: 0.1, pressure: 100 });
    await expectAccessible(traced);
  });

  it.each([
    { flow: 'linear', pressure: 'linear', turn: 0, skew: 0 },
    { flow: 'linear', pressure: 'logarithmic', turn: 6, skew: 4 },
    { flow: 'logarithmic', pressure: 'linear', turn: -9, skew: -3 },
  ] as const)(
    'gives flow and pressure back within 0.5 % of full scale: $flow, $pressure, turned $turn°',
    async (how) => {
      const chart = drawnChart(how);
      const element = await placeTrace(chart);
      const taken = heard(element, 'dc-traced');
      // A pixel near the top of the logarithmic axis is worth 0.8 % of it: it takes the largest picture.
      for (let i = 0; i < 2; i++) await userEvent.click(button('Larger picture'));
      await markAxes(chart);
      for (const axis of ['flow', 'pressure'] as const) {
        const field = choice(axis === 'flow' ? 'Flow axis' : 'Pressure axis', 'Its values are');
        await userEvent.selectOptions(field, how[axis]);
      }
      for (const flow of FLOWS) await press(chart, { flow, pressure: valueAt(CURVE, flow) });
      await userEvent.click(button('Put them in the place of the curve’s points'));
      const { points, how: wanted } = taken[0]!;
      expect(wanted).toBe('replace');
      expect(points).toHaveLength(FLOWS.length);
      points.forEach(({ flow, pressure }, i) => {
        expect(Math.abs(flow - FLOWS[i]!)).toBeLessThan(0.005 * chart.flow.to);
        const drawnPressure = valueAt(CURVE, FLOWS[i]!);
        expect(Math.abs(pressure - drawnPressure)).toBeLessThan(0.005 * chart.pressure.to);
      });
    },
  );

  it('says at each step what comes next, and takes a step back', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    await placeTrace(chart);
    await expect.element(status()).toHaveTextContent(/first mark of the flow axis/);
    await press(chart, { flow: 0.1, pressure: 100 });
    await expect
      .element(status())
      .toHaveTextContent(
        /^Type the flow that the chart shows at the first mark of the flow axis, in m³\/h\.$/,
      );
    await userEvent.click(button('Take the last step back'));
    await expect.element(status()).toHaveTextContent(/Set the first mark of the flow axis/);
  });

  it('says what is wrong with marks that fix no chart, and what would do', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    await placeTrace(chart);
    await markAxes(chart);
    await type('Flow axis', 'Second mark', '100');
    await expect.element(status()).toHaveTextContent(/stand for the same flow/);
    await expect
      .element(text(/^100.L\/s is what the first mark stands for already\./))
      .toBeVisible();
    await type('Flow axis', 'Second mark', '0');
    await userEvent.selectOptions(choice('Flow axis', 'Its values are'), 'logarithmic');
    await expect.element(status()).toHaveTextContent(/has no zero/);
    await expect.element(text(/^0.L\/s has no place on a logarithmic axis\./)).toBeVisible();
    const second = page.getByRole('group', { name: 'Flow axis' }).getByLabelText('Second mark');
    await expect.element(second).toHaveAttribute('aria-invalid', 'true');
    await userEvent.selectOptions(choice('Flow axis', 'Its values are'), 'evenly spaced');
    await expect.element(status()).toHaveTextContent(/^Press along the curve/);
  });

  it('takes an amount typed with another unit, and says it in both', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    await placeTrace(chart);
    await press(chart, { flow: 0.1, pressure: 100 });
    await type('Flow axis', 'First mark', '100 L/s');
    await expect.element(text(/^understood: 100.L\/s \(360.m³\/h\)$/)).toBeVisible();
  });

  it('moves the mark that was set last by buttons, a run of them as one step', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    await placeTrace(chart);
    await press(chart, { flow: 0.1, pressure: 100 });
    const mark = page.getByRole('button', { name: 'Move the first mark of the flow axis left' });
    const before = surface().element().querySelector('.handle')!.getAttribute('cx');
    for (let i = 0; i < 3; i++) await userEvent.click(mark);
    const after = surface().element().querySelector('.handle')!.getAttribute('cx');
    expect(Number(before) - Number(after)).toBeCloseTo(3, 9);
    await userEvent.click(button('Take the last step back'));
    expect(surface().element().querySelector('.handle')!.getAttribute('cx')).toBe(before);
  });

  it('is worked by keys alone: a cross is moved and set, and a mark is nudged', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    const element = await placeTrace(chart);
    const taken = heard(element, 'dc-traced');
    let cross = { x: chart.width / 2, y: chart.height / 2 };
    const go = async (step: number, key: string, back: string) => {
      const way = step < 0 ? back : key;
      const [tens, ones] = [Math.floor(Math.abs(step) / 10), Math.abs(step) % 10];
      if (tens > 0) await userEvent.keyboard(`{Shift>}{${way}>${tens}/}{/Shift}`);
      if (ones > 0) await userEvent.keyboard(`{${way}>${ones}/}`);
    };
    const setAt = async (value: { readonly flow: number; readonly pressure: number }) => {
      await tabTo(/^Picture of the chart\. /);
      const wanted = chart.place(value);
      const step = { x: Math.round(wanted.x - cross.x), y: Math.round(wanted.y - cross.y) };
      await go(step.x, 'ArrowRight', 'ArrowLeft');
      await go(step.y, 'ArrowDown', 'ArrowUp');
      await userEvent.keyboard('{Enter}');
      cross = { x: cross.x + step.x, y: cross.y + step.y };
      await userEvent.keyboard('{Escape}');
    };
    /** The fields of both axes follow one another, each mark's after its unit and its scale. */
    const typeAt = async (label: string, nth: number, words: string) => {
      await tabTo(/^Picture of the chart\. /);
      for (let i = 0; i < nth; i++) await tabTo(label);
      await userEvent.keyboard(`${words}{Enter}`);
    };
    await setAt({ flow: 0.1, pressure: 100 });
    await typeAt('First mark', 1, '360');
    await setAt({ flow: 0.7, pressure: 100 });
    await typeAt('Second mark', 1, '2520');
    await setAt({ flow: 0.05, pressure: 200 });
    await typeAt('First mark', 2, '200');
    await setAt({ flow: 0.05, pressure: 2000 });
    await typeAt('Second mark', 2, '2000');
    await setAt({ flow: 0.2, pressure: 2100 });
    await setAt({ flow: 0.6, pressure: 500 });
    await tabTo('Move point 2');
    await userEvent.keyboard('{Enter}');
    await tabTo(/^Picture of the chart\. /);
    await userEvent.keyboard('{ArrowRight>4/}');
    await tabTo('Add them to the curve’s points');
    await userEvent.keyboard('{Enter}');
    const { points, how } = taken[0]!;
    expect(how).toBe('add');
    // A pixel is worth 0.75 / 560 m³/s and 2400 / 380 Pa, and the cross goes by whole ones.
    const [worthFlow, worthPressure] = [0.75 / 560, 2400 / 380];
    expect(Math.abs(points[0]!.flow - 0.2)).toBeLessThan(worthFlow);
    expect(Math.abs(points[0]!.pressure - 2100)).toBeLessThan(worthPressure);
    expect(Math.abs(points[1]!.flow - (0.6 + 4 * worthFlow))).toBeLessThan(worthFlow);
    expect(Math.abs(points[1]!.pressure - 500)).toBeLessThan(worthPressure);
  });

  it('refuses what is no picture, by name and with what would do', async () => {
    const element = await place(html`<dc-chart-trace></dc-chart-trace>`);
    const choose = page.getByLabelText('Picture of the chart');
    const input = choose.element() as HTMLInputElement;
    const files = new DataTransfer();
    files.items.add(new File(['not a picture'], 'chart.png', { type: 'image/png' }));
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await expect.element(text(/“chart\.png” can’t be read as a picture/)).toBeVisible();
    dropOn(element, new File(['curve'], 'chart.svg', { type: 'image/svg+xml' }));
    await expect.element(text(/“chart\.svg” is image\/svg\+xml\. Choose a PNG/)).toBeVisible();
  });

  it('draws the page of a PDF that is dropped, as large as a picture may be', async () => {
    const element = await place(html`<dc-chart-trace></dc-chart-trace>`);
    const line = [
      [60, 260],
      [340, 40],
    ] as const;
    dropOn(element, pdf(smallPdf([line], { width: 400, height: 300 })));
    await expect.element(surface()).toBeVisible();
    const picture = surface().element().querySelector('image')!;
    expect(picture.getAttribute('width')).toBe('3000');
    expect(picture.getAttribute('height')).toBe('2250');
    // In the middle of the line, and above it: 7.5 pixels to a point, from the upper left.
    const ink = await inkAt(picture.getAttribute('href')!, [
      { x: 200 * 7.5, y: 150 * 7.5 },
      { x: 200 * 7.5, y: 120 * 7.5 },
    ]);
    expect(ink).toEqual([0, 255]);
    expect(page.getByLabelText(/^Page, of/).query()).toBeNull();
    await expectAccessible(element);
  });

  it('draws a scanned page, which holds nothing but a photograph', async () => {
    const element = await place(html`<dc-chart-trace></dc-chart-trace>`);
    const size = { width: 200, height: 100 };
    const canvas = new OffscreenCanvas(size.width, size.height);
    const context = canvas.getContext('2d')!;
    context.fillStyle = 'white';
    context.fillRect(0, 0, 200, 100);
    context.fillStyle = 'black';
    context.fillRect(0, 0, 100, 50);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 1 });
    const scan = { bytes: new Uint8Array(await blob.arrayBuffer()), ...size };
    dropOn(element, pdf(smallPdf([], size, { scan })));
    await expect.element(surface()).toBeVisible();
    const picture = surface().element().querySelector('image')!;
    const [width, height] = ['width', 'height'].map((side) => Number(picture.getAttribute(side)));
    const ink = await inkAt(picture.getAttribute('href')!, [
      { x: width! / 4, y: height! / 4 },
      { x: (3 * width!) / 4, y: height! / 4 },
      { x: width! / 4, y: (3 * height!) / 4 },
    ]);
    expect(ink[0]).toBeLessThan(10);
    expect(Math.min(ink[1]!, ink[2]!)).toBeGreaterThan(245);
  });

  it('opens a PDF of a thousand pages, and refuses one of more', async () => {
    const element = await place(html`<dc-chart-trace></dc-chart-trace>`);
    const size = { width: 400, height: 300 };
    dropOn(element, pdf(smallPdf([], size, { pages: 1001 })));
    await expect
      .element(text(/“leaflet\.pdf” has 1001 pages; at most 1000 can be opened\./))
      .toBeVisible();
    expect(surface().query()).toBeNull();
    dropOn(element, pdf(smallPdf([], size, { pages: 1000 })));
    await expect.element(page.getByLabelText('Page, of 1000')).toBeVisible();
  });

  it('refuses a locked and a broken PDF in words, and keeps the picture that was there', async () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'linear', turn: 0, skew: 0 });
    const element = await placeTrace(chart);
    await press(chart, { flow: 0.1, pressure: 100 });
    const before = surface().element().querySelector('image')!.getAttribute('href');
    const size = { width: 400, height: 300 };
    dropOn(element, pdf(smallPdf([], size, { fault: 'locked' })));
    await expect.element(text(/“leaflet\.pdf” is locked with a password\./)).toBeVisible();
    dropOn(element, pdf(smallPdf([], size, { fault: 'broken' })));
    await expect.element(text(/“leaflet\.pdf” can’t be read as a PDF\./)).toBeVisible();
    expect(surface().element().querySelector('image')!.getAttribute('href')).toBe(before);
    expect(surface().element().querySelectorAll('.handle')).toHaveLength(1);
  });
});
