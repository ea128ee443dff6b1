import { afterEach, describe, it, vi } from 'vitest';
import type { PlotTools } from '../../src/ui/plot-figure/plot-tools.ts';
import '../../src/ui/plot-figure/plot-tools.ts';
import { button, drawn, expect, expectAccessible, html, place, text } from './harness.ts';

const table = (flow = '600') => ({
  caption: 'Suction over flow',
  columns: [
    { name: 'air flow', unit: 'cfm' },
    { name: 'suction', unit: 'in. w.g.' },
    { name: 'remark' },
  ],
  rows: [
    [flow, '7.20', 'operating point'],
    ['700', '6.10', ''],
  ],
});
const placeTools = async () => {
  const box = await place<HTMLElement>(html`<div style="--dc-air: red">
    <svg width="120" height="80" role="img" aria-label="a plot">
      <path class="line" style="stroke: var(--dc-air)" d="M0,0L50,50"></path>
      <text x="4" y="20">12 &lt; 13</text>
    </svg>
    <dc-plot-tools
      label="operating plot"
      file="shop"
      .table=${() => table()}
      .picture=${() => document.querySelector<SVGSVGElement>('svg[aria-label="a plot"]')}
    ></dc-plot-tools>
  </div>`);
  return box.querySelector<PlotTools>('dc-plot-tools')!;
};

/** What is saved by a press, instead of a file on the disk. */
async function saved(press: () => Promise<void>): Promise<{ name: string; file: Blob }> {
  const files: Blob[] = [];
  const make = URL.createObjectURL.bind(URL);
  vi.spyOn(URL, 'createObjectURL').mockImplementation((file) => {
    files.push(file as Blob);
    return make(file);
  });
  const name = new Promise<string>((resolve) => {
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function click(
      this: HTMLAnchorElement,
    ) {
      resolve(this.download);
    });
  });
  await press();
  return { name: await name, file: files.at(-1)! };
}

describe('what stands under a plot', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('is accessible, folded and unfolded', async () => {
    const tools = await placeTools();
    await expectAccessible(tools);
    await text(/^Figures/).click();
    await drawn();
    await expectAccessible(tools);
  });

  it('shows the figures as a table with units in its head, and keeps them up to date', async () => {
    const tools = await placeTools();
    expect(text('operating point').elements()).toHaveLength(0);
    await text(/^Figures/).click();
    await drawn();
    expect(text('in. w.g.').elements()).toHaveLength(1);
    expect(text('operating point').elements()).toHaveLength(1);
    tools.table = () => table('650');
    await drawn();
    expect(text('650').elements()).toHaveLength(1);
    expect(text('600').elements()).toHaveLength(0);
  });

  it('saves an SVG that needs no page: colours of paper, no classes, no style', async () => {
    await placeTools();
    const { name, file } = await saved(() => button('Save the operating plot as SVG').click());
    expect(name).toBe('shop.svg');
    const svg = await file.text();
    expect(svg).toMatch(/^<\?xml/);
    expect(svg).toMatch(/stroke="rgb\(11, 74, 134\)"/);
    expect(svg).toMatch(/font-family="[^"]+"/);
    expect(svg).toContain('12 &lt; 13');
    expect(svg).not.toMatch(/class=|style=|var\(/);
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
    expect(parsed.querySelector('parsererror')).toBeNull();
    expect(parsed.querySelector('title')?.textContent).toBe('a plot');
  });

  it('saves a PNG of twice the size, and leaves the page its colours', async () => {
    await placeTools();
    const { name, file } = await saved(() => button('Save the operating plot as PNG').click());
    expect(name).toBe('shop.png');
    expect(file.type).toBe('image/png');
    const { width, height } = await createImageBitmap(file);
    expect([width, height]).toEqual([2 * (120 + 32), 2 * (80 + 32)]);
    const line = document.querySelector('path.line')!;
    expect(getComputedStyle(line).stroke).toBe('rgb(255, 0, 0)');
  });
});
