import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import { speedsView } from '../../src/state/speeds-view.ts';
import type { SpeedsPlot } from '../../src/ui/speeds-plot/speeds-plot.ts';
import '../../src/ui/speeds-plot/speeds-plot.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, html, place, text } from './harness.ts';

const session = new Session(demoShop(), ['planer'], 'us');
const report = session.report.value;
const view = speedsView(session.shop.value, report, report, undefined, 'us');

async function placePlot(width = 600) {
  const box = await place<HTMLElement>(html`<div>
    <dc-speeds-plot label="Speed at each drop" .units=${'us'} .view=${view}></dc-speeds-plot>
  </div>`);
  box.style.setProperty('inline-size', `${width}px`);
  await drawn();
  return box.firstElementChild as SpeedsPlot;
}

describe('the plot of speeds', () => {
  it('is accessible', async () => {
    await expectAccessible(await placePlot());
  });

  it('has a row for each drop, and writes speed and verdict of open ones', async () => {
    await placePlot();
    for (const { name } of session.shop.value.drops) {
      expect(text(name).elements(), name).toHaveLength(1);
    }
    const [planer] = view.rows.filter(({ drop }) => drop.id === 'planer');
    expect(text(planer!.drop.speed!.shown.number).elements()).toHaveLength(1);
  });

  it('stays inside a phone’s width, where the verdict’s word gives way to its shape', async () => {
    const wide = await placePlot();
    const words = (plot: SpeedsPlot) => plot.picture?.querySelectorAll('.where').length;
    expect(words(wide)).toBe(1);
    const narrow = await placePlot(320);
    expect(words(narrow)).toBe(0);
    const right = Math.max(
      ...[...narrow.picture!.querySelectorAll('text')].map(
        (each) => each.getBoundingClientRect().right,
      ),
    );
    expect(right).toBeLessThanOrEqual(narrow.getBoundingClientRect().right + 1);
  });

  it('reads from speed to speed by keys', async () => {
    await placePlot();
    const reader = page.getByRole('slider', { name: /speed at each drop/ });
    (reader.element() as HTMLElement).focus();
    await userEvent.keyboard('{Home}');
    await expect
      .poll(() => reader.element().getAttribute('aria-valuetext'))
      .toMatch(/^Thickness planer: .*ft\/min in its own pipe/);
  });

  it('writes figures that come later than the marks, of the same drops alone', async () => {
    const plot = await placePlot();
    const figures = () =>
      [...plot.picture!.querySelectorAll('.speed')].map(({ textContent }) => textContent);
    const mark = () => plot.picture!.querySelector('.own')!.getAttribute('transform');
    const [before, place] = [figures(), mark()];
    session.openOnly(session.shop.value.drops.map(({ id }) => id));
    const opened = session.report.value;
    const later = speedsView(session.shop.value, opened, opened, undefined, 'us');
    session.openOnly(['planer']);
    plot.written = view.rows;
    plot.view = later;
    await drawn();
    expect(mark()).not.toBe(place);
    expect(figures()).toEqual(before);
    plot.written = view.rows.toReversed();
    await drawn();
    expect(figures()).not.toEqual(before);
  });

  it('draws nothing where there is no room', async () => {
    expect((await placePlot(200)).picture).toBeNull();
  });
});
