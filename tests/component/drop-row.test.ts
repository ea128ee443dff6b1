import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { formatQuantity } from '../../src/units/format.ts';
import type { DropView } from '../../src/state/drop-views.ts';
import '../../src/ui/drop-row/drop-row.ts';
import {
  button,
  expect,
  expectAccessible,
  heard,
  html,
  picture,
  place,
  slider,
  text,
} from './harness.ts';

const speed = (velocity: number) => ({
  velocity,
  shown: formatQuantity('velocity', 'us', velocity),
});
const planer: DropView = {
  id: 'planer',
  name: 'Thickness planer',
  travel: 0.62,
  flow: formatQuantity('flow', 'us', 0.35),
  need: formatQuantity('flow', 'us', 0.236),
  speed: speed(20.5),
  slowest: { ...speed(11.7), name: 'main by the wall' },
  range: { low: 17.78, high: 22.86 },
  verdict: 'settles',
};
const placeRow = (drop: DropView) => place(html`<dc-drop-row .drop=${drop}></dc-drop-row>`);

describe('a drop’s row', () => {
  it('is accessible, open and shut', async () => {
    await expectAccessible(await placeRow(planer));
    const shut = {
      ...planer,
      travel: 0,
      speed: undefined,
      slowest: undefined,
      verdict: 'shut',
    } as const;
    await expectAccessible(await placeRow(shut));
  });

  it('tells the flow, the need, the speed, the slowest section and the verdict', async () => {
    await placeRow(planer);
    for (const words of [
      /^742$/,
      /needs 500/,
      /^4,040$/,
      /main by the wall/,
      /^settles$/,
      /62 % open/,
    ]) {
      expect(text(words).elements().length, `${words}`).toBeGreaterThanOrEqual(1);
    }
    const scale =
      'Thickness planer: 4,040\u2009ft/min, settles; slowest in main by the wall, 2,300\u2009ft/min';
    expect(picture(scale).elements()).toHaveLength(1);
  });

  it('shuts an open gate and opens a shut one with one press', async () => {
    const wishes = heard(await placeRow(planer), 'dc-drop-gate');
    await button('Shut Thickness planer').click();
    await button('Only Thickness planer').click();
    await placeRow({ ...planer, travel: 0 });
    expect(button('Open Thickness planer').elements()).toHaveLength(1);
    expect(wishes.map(({ drop, wish }) => [drop, wish.kind])).toEqual([
      ['planer', 'shut'],
      ['planer', 'only'],
    ]);
  });

  it('takes a tap on the gate for a press', async () => {
    const wishes = heard(await placeRow(planer), 'dc-drop-gate');
    await slider('Gate, Thickness planer').click();
    expect(wishes.map(({ wish }) => wish)).toEqual([{ kind: 'shut' }]);
  });

  it('passes the gate’s moves on with the drop they belong to', async () => {
    const wishes = heard(await placeRow(planer), 'dc-drop-gate');
    (slider('Gate, Thickness planer').element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    expect(wishes.map(({ wish }) => wish)).toEqual([{ kind: 'travel', travel: 1, move: 'step' }]);
  });

  it('has no gate to move where there is none, and says so', async () => {
    await placeRow({ ...planer, travel: undefined });
    expect(slider(/./).elements()).toHaveLength(0);
    expect(text(/no gate, always open/).elements()).toHaveLength(1);
  });

  it.each([1000, 340])('keeps targets of 44 px and cuts nothing off at %d px', async (width) => {
    const row = await placeRow(planer);
    const main = row.parentElement as HTMLElement;
    main.style.setProperty('width', `${width}px`);
    main.style.setProperty('container-type', 'inline-size');
    await new Promise((resolve) => requestAnimationFrame(resolve));
    for (const each of [button('Shut Thickness planer'), button('Only Thickness planer')]) {
      const box = each.element().getBoundingClientRect();
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
    }
    expect(main.scrollWidth).toBeLessThanOrEqual(width);
  });
});
