import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Readable } from '../../src/plot/reading.ts';
import type { PlotReader } from '../../src/ui/plot-figure/plot-reader.ts';
import '../../src/ui/plot-figure/plot-reader.ts';
import { drawn, expect, expectAccessible, html, place, slider, text } from './harness.ts';

const stops = Array.from({ length: 30 }, (_, i) => i);
const readable = (by = 1): Readable => ({
  lines: [
    {
      name: 'cyclone',
      places: stops.map((i) => ({ x: 10 * i, y: 200 - 5 * i })),
      read: (stop) => ({
        figures: [`${100 * stop * by} cfm`],
        ...(stop > 25 ? { remark: 'only continued, beyond the entered points' } : {}),
      }),
    },
    {
      name: 'ducts',
      places: stops.slice(0, 20).map((i) => ({ x: 10 * i, y: 20 + 3 * i })),
      read: (stop) => ({ figures: [`${stop} in. w.g.`] }),
    },
  ],
  page: { left: 0, top: 0, right: 320, bottom: 240 },
  obstacles: { strokes: [], boxes: [] },
  start: { line: 0, stop: 5 },
});
const placeReader = async (read = readable) => {
  const box =
    await place<HTMLElement>(html`<div style="position: relative; height: 240px; width: 320px">
    <dc-plot-reader label="operating plot" .readable=${() => read()}></dc-plot-reader>
  </div>`);
  return box.querySelector<PlotReader>('dc-plot-reader')!;
};
const reader = () => slider('Read along the lines: operating plot').element();
const spoken = () => reader().getAttribute('aria-valuetext');
const focus = async () => {
  (reader() as HTMLElement).focus();
  await drawn();
};

describe('the reader of a plot', () => {
  it('is accessible, while it reads too', async () => {
    const element = await placeReader();
    await expectAccessible(element);
    await focus();
    await expectAccessible(element);
  });

  it('begins where the plot says, and writes what it speaks', async () => {
    await placeReader();
    expect(text('500 cfm').elements()).toHaveLength(0);
    await focus();
    expect(spoken()).toBe('cyclone: 500 cfm');
    expect(text('500 cfm').elements()).toHaveLength(1);
  });

  it('steps by arrows, ten by Shift, and to the ends', async () => {
    await placeReader();
    await focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{ArrowLeft}');
    expect(spoken()).toBe('cyclone: 600 cfm');
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
    expect(spoken()).toBe('cyclone: 1600 cfm');
    await userEvent.keyboard('{Home}');
    expect(spoken()).toBe('cyclone: 0 cfm');
    await userEvent.keyboard('{End}');
    expect(spoken()).toBe('cyclone: 2900 cfm, only continued, beyond the entered points');
    expect(text('only continued,').elements()).toHaveLength(1);
  });

  it('goes over to the other line at the same place, and back', async () => {
    await placeReader();
    await focus();
    await userEvent.keyboard('{ArrowDown}');
    expect(spoken()).toBe('ducts: 5 in. w.g.');
    expect(reader().getAttribute('aria-valuemax')).toBe('20');
    await userEvent.keyboard('{ArrowUp}');
    expect(spoken()).toBe('cyclone: 500 cfm');
  });

  it('leaves by Escape, and goes on from there when a key comes again', async () => {
    await placeReader();
    await focus();
    await userEvent.keyboard('{ArrowRight}{Escape}');
    expect(text('600 cfm').elements()).toHaveLength(0);
    await userEvent.keyboard('{ArrowRight}');
    expect(spoken()).toBe('cyclone: 700 cfm');
  });

  it('reads at the stop nearest to the pointer, and not after it has left', async () => {
    await placeReader();
    const { left, top } = reader().getBoundingClientRect();
    const at = (type: string, x: number, y: number) =>
      new PointerEvent(type, { clientX: left + x, clientY: top + y, pointerType: 'mouse' });
    reader().dispatchEvent(at('pointermove', 101, 55));
    await drawn();
    expect(spoken()).toBe('ducts: 10 in. w.g.');
    reader().dispatchEvent(at('pointermove', 101, 140));
    await drawn();
    expect(spoken()).toBe('cyclone: 1000 cfm');
    reader().dispatchEvent(at('pointerleave', 400, 140));
    await drawn();
    expect(text('1000 cfm').elements()).toHaveLength(0);
  });

  it('reads the plot as it is now, when it changes under the reading', async () => {
    const element = await placeReader();
    await focus();
    element.readable = () => readable(2);
    await drawn();
    expect(spoken()).toBe('cyclone: 1000 cfm');
  });

  it('asks nothing of the plot while nobody reads', async () => {
    let asked = 0;
    const count = () => {
      asked += 1;
      return readable();
    };
    const element = await placeReader(count);
    element.readable = () => count();
    await drawn();
    expect(asked).toBe(0);
  });
});
