import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { SectionView } from '../../src/state/run-view.ts';
import type { Part } from '../../src/state/selected-part.ts';
import '../../src/ui/run-drawing/run-drawing.ts';
import type { RunDrawing } from '../../src/ui/run-drawing/run-drawing.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const section = (part: Partial<SectionView>): SectionView => ({
  id: '',
  name: '',
  into: 0,
  straight: false,
  diameter: 0.15,
  size: '150 mm',
  length: '3 m',
  state: 'still',
  speed: '',
  drop: undefined,
  ...part,
});
const sections = [
  section({ id: 'main', name: 'main', into: -1, state: 'tight', speed: '25.1' }),
  section({
    id: 'lathe-run',
    name: 'lathe run',
    straight: true,
    state: 'settles',
    speed: '11.2',
    drop: { id: 'lathe', name: 'Lathe', verdict: 'settles' },
  }),
  section({
    id: 'planer-run',
    name: 'planer run',
    drop: { id: 'planer', name: 'Planer', verdict: 'shut' },
  }),
];
const read = ({ kind, id }: Part) => ({ name: `the ${id}`, figures: [`read of ${kind}`] });
const placeDrawing = (selection?: Part, width = 700) =>
  place<RunDrawing>(
    html`<dc-run-drawing
      style="inline-size: ${width}px; block-size: 320px"
      label="Line drawing of the ducts"
      speed-unit="m/s"
      widest-speed="40.0"
      .sections=${sections}
      .selection=${selection}
      .read=${read}
    ></dc-run-drawing>`,
  );
const option = (name: string | RegExp) => page.getByRole('option', { name });
const focus = (name: string | RegExp) => (option(name).element() as SVGElement).focus();
const list = () => page.getByRole('listbox', { name: 'Line drawing of the ducts' }).element();

describe('the drawing of the run', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeDrawing());
  });

  it('is accessible when it is narrow, zoomed, and something is selected', async () => {
    const drawing = await placeDrawing({ kind: 'section', id: 'main' }, 340);
    await button('Zoom in').click();
    await expectAccessible(drawing);
  });

  it('has a key in words, and speeds, lengths and the drops’ names on it', async () => {
    await placeDrawing();
    for (const words of ['Lathe', 'Planer', 'm/s', /25\.1 tight/, /11\.2 settles/, /3 m/]) {
      expect(text(words).elements().length, `${words}`).toBeGreaterThanOrEqual(1);
    }
    for (const word of ['carries', 'settles', 'tight', 'still']) {
      expect(page.getByText(word, { exact: true }).elements(), word).toHaveLength(1);
    }
  });

  it('draws nothing of an empty run', async () => {
    await place(html`<dc-run-drawing .sections=${[]}></dc-run-drawing>`);
    expect(page.getByRole('listbox').elements()).toHaveLength(0);
  });

  it('tells every duct and drop with its state, the one with the focus in full', async () => {
    await placeDrawing();
    const names = page
      .getByRole('option')
      .elements()
      .map((each) => each.getAttribute('aria-label'));
    expect(names).toEqual([
      'main, tight',
      'lathe run, chips settle',
      'Lathe, settles',
      'planer run, still',
      'Planer, shut',
    ]);
    focus('main, tight');
    await drawn();
    expect(option('the main, read of section').elements()).toHaveLength(1);
    expect(text('read of section').elements()).toHaveLength(1);
  });

  it('is one stop of the tab key, and the arrows go along the ducts', async () => {
    await placeDrawing();
    const stops = () =>
      page
        .getByRole('option')
        .elements()
        .filter((each) => each.getAttribute('tabindex') === '0');
    expect(stops()).toEqual([option('main, tight').element()]);
    focus('main, tight');
    const at = async (key: string) => {
      await userEvent.keyboard(`{${key}}`);
      await drawn();
      return stops().map((each) => each.getAttribute('data-stop'));
    };
    expect(await at('ArrowRight')).toEqual(['section 1']);
    expect(await at('ArrowRight')).toEqual(['drop 1']);
    expect(await at('ArrowUp')).toEqual(['drop 2']);
    expect(await at('ArrowLeft')).toEqual(['section 2']);
    expect(await at('Home')).toEqual(['section 0']);
  });

  it('selects by click and by key, and lets go by Escape', async () => {
    const drawing = await placeDrawing();
    const parts = heard(drawing, 'dc-part');
    await option('Planer, shut').click();
    focus('main, tight');
    await userEvent.keyboard('{Enter}');
    drawing.selection = { kind: 'section', id: 'main' };
    await drawn();
    expect(
      option(/the main/)
        .element()
        .getAttribute('aria-selected'),
    ).toBe('true');
    await userEvent.keyboard('{Enter}{Escape}');
    expect(parts.map(({ part }) => part)).toEqual([
      { kind: 'drop', id: 'planer' },
      { kind: 'section', id: 'main' },
      undefined,
      undefined,
    ]);
  });

  it('zooms by buttons and keys, about what has the focus, and shows the whole again', async () => {
    await placeDrawing();
    const width = () => list().getBoundingClientRect().width;
    const whole = width();
    await button('Zoom in').click();
    expect(width()).toBeCloseTo(1.5 * whole, -1);
    focus('main, tight');
    await userEvent.keyboard('+');
    await drawn();
    expect(width()).toBeCloseTo(2.25 * whole, -1);
    await userEvent.keyboard('-');
    await drawn();
    expect(width()).toBeCloseTo(1.5 * whole, -1);
    await userEvent.keyboard('0');
    await drawn();
    expect(width()).toBe(whole);
    expect(button('Zoom out').element().getAttribute('aria-disabled')).toBe('true');
  });

  it('moves under its window by Shift and the arrows, only when zoomed', async () => {
    await placeDrawing();
    const pan = async () => {
      const { left } = list().getBoundingClientRect();
      focus('main, tight');
      await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
      await drawn();
      return list().getBoundingClientRect().left - left;
    };
    expect(await pan()).toBe(0);
    await button('Zoom in').click();
    await button('Zoom in').click();
    expect(await pan()).toBeLessThan(0);
  });

  it('keeps its buttons at 44 px', async () => {
    await placeDrawing(undefined, 340);
    for (const name of ['Zoom in', 'Zoom out', 'Show the whole run']) {
      const { width, height } = button(name).element().getBoundingClientRect();
      expect(Math.min(width, height), name).toBeGreaterThanOrEqual(44);
    }
  });
});
