import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import { suctionView } from '../../src/state/suction-view.ts';
import type { SuctionPlot } from '../../src/ui/suction-plot/suction-plot.ts';
import '../../src/ui/suction-plot/suction-plot.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, html, place, text } from './harness.ts';

const session = new Session(demoShop(), ['planer'], 'us');
const { steps, unit } = suctionView(
  session.shop.value,
  session.model.value,
  session.report.value,
  { kind: 'drop', id: 'planer' },
  'us',
);

async function placePlot(width = 600) {
  const box = await place<HTMLElement>(html`<div>
    <dc-suction-plot
      label="Suction from the hood to the collector"
      .units=${'us'}
      .unit=${unit}
      .steps=${steps}
      .end=${3000}
    ></dc-suction-plot>
  </div>`);
  box.style.setProperty('inline-size', `${width}px`);
  await drawn();
  return box.firstElementChild as SuctionPlot;
}
const loss = (plot: SuctionPlot) => plot.picture!.querySelectorAll('.loss').length;

describe('the plot of suction', () => {
  it('is accessible', async () => {
    await expectAccessible(await placePlot());
  });

  it('has a row for each part, from the hood down, with its loss and share', async () => {
    const plot = await placePlot();
    expect(loss(plot)).toBe(steps.length);
    expect(plot.picture!.querySelectorAll('.share')).toHaveLength(steps.length);
    const last = steps.at(-1)!;
    expect(text(`total ${last.totalText}`).elements()).toHaveLength(1);
    expect(text(`static ${last.staticText}`).elements()).toHaveLength(1);
  });

  it('draws its lines at once, and writes its figures as they were told last', async () => {
    const plot = await placePlot();
    const figures = () =>
      [...plot.picture!.querySelectorAll('.loss')].map(({ textContent }) => textContent);
    const line = () => plot.picture!.querySelector('.total')!.getAttribute('d');
    const before = line();
    plot.written = steps;
    plot.steps = steps.map((step) => ({ ...step, total: step.total / 2, loss: '9.99' }));
    await drawn();
    expect(line()).not.toBe(before);
    expect(figures()).toEqual(steps.map(({ loss }) => loss));
    // Figures of another way are not written on this one.
    plot.written = steps.slice(1);
    await drawn();
    expect(new Set(figures())).toEqual(new Set(['9.99']));
  });

  it('leaves the losses out on a phone, and lets no name meet the plot', async () => {
    const plot = await placePlot(340);
    expect(loss(plot)).toBe(0);
    const axis = plot.picture!.querySelector('.room')!.getBoundingClientRect().left;
    const names = [...plot.picture!.querySelectorAll('text[x="0"]')].filter(
      (each) => !each.classList.contains('title'),
    );
    expect(names.length).toBeGreaterThan(steps.length - 1);
    for (const name of names) {
      expect(name.getBoundingClientRect().right, name.textContent ?? '').toBeLessThan(axis);
    }
  });

  it('reads along both lines by keys', async () => {
    await placePlot();
    const reader = page.getByRole('slider', { name: /where the suction goes/ });
    (reader.element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    const said = () => reader.element().getAttribute('aria-valuetext');
    const last = steps.at(-1)!;
    await expect.poll(said).toContain(`${last.totalText}\u2009${unit} after the ${last.words}`);
    await userEvent.keyboard('{ArrowDown}{End}');
    await expect.poll(said).toContain(`${last.staticText}\u2009${unit} after the ${last.words}`);
  });

  it('draws nothing where nothing is lost', async () => {
    const plot = await placePlot();
    plot.steps = [];
    await plot.updateComplete;
    expect(plot.picture).toBeNull();
  });
});
