// The page and its panels on the demo, worked as a reader would work it.
import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import { formatQuantity } from '../../src/units/format.ts';
import type { ShopPage } from '../../src/ui/shop-page/shop-page.ts';
import '../../src/ui/shop-page/shop-page.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import {
  button,
  drawn,
  expect,
  html,
  picture,
  expectAccessible,
  placeWhole,
  radio,
  slider,
  text,
} from './harness.ts';

async function placePage(open = ['planer']): Promise<{ element: ShopPage; session: Session }> {
  const session = new Session(demoShop(), open, 'us');
  const element = await placeWhole<ShopPage>(
    html`<dc-shop-page .session=${session}></dc-shop-page>`,
  );
  return { element, session };
}
const still = () => new Promise((resolve) => setTimeout(resolve, 350));

describe('the page of a shop', () => {
  it('is accessible', async () => {
    const { element } = await placePage();
    await expectAccessible(element);
  });

  it('says first what is happening', async () => {
    const { session } = await placePage();
    expect(text(session.sentence.value).elements().length).toBeGreaterThanOrEqual(1);
  });

  it('moves point, flow and sentence when a gate is drawn by keys', async () => {
    const { session } = await placePage();
    const before = session.report.value.operatingPoint!.flow;
    (slider('Gate, Floor sweep').element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    await drawn();
    expect(session.report.value.operatingPoint!.flow).toBeGreaterThan(before);
    expect(session.shownReport.value).toBe(session.report.value);
    expect(picture(/Floor sweep open/).elements().length).toBeGreaterThanOrEqual(1);
    expect(slider('Gate, Floor sweep').element().getAttribute('aria-valuetext')).toBe('fully open');
  });

  it('slides over after a press, and is there within a moment', async () => {
    const { session } = await placePage();
    await button('Only Lathe').click();
    expect(session.report.value.open).toEqual(['lathe']);
    await still();
    expect(session.shownReport.value).toBe(session.report.value);
    expect(slider('Gate, Thickness planer').element().getAttribute('aria-valuetext')).toBe('shut');
    expect(session.trail.value.map(({ name }) => name)).toContain('Lathe');
  });

  it('opens a saved set, shuts all, and says so', async () => {
    const { session } = await placePage();
    await button('Planing, with the floor sweep').click();
    expect(session.report.value.open).toEqual(['planer', 'floor-sweep']);
    await button('Shut all').click();
    await still();
    expect(session.report.value.open).toEqual([]);
    expect(text(/^Nothing open/).elements().length).toBeGreaterThanOrEqual(1);
  });

  it('changes units everywhere, in parts out of sight a moment later', async () => {
    await placePage();
    expect(text(/cfm/).elements().length).toBeGreaterThan(3);
    await radio('metric').click();
    await expect.poll(() => text(/cfm|ft\/min/).elements()).toHaveLength(0);
    expect(text(/m³\/h/).elements().length).toBeGreaterThan(3);
  });

  it('unfolds what was assumed', async () => {
    await placePage();
    await page.getByText('What was assumed, and where each figure comes from').click();
    expect(text(/Colebrook–White/).elements().length).toBeGreaterThanOrEqual(1);
    expect(text(/common practice, no source/).elements().length).toBeGreaterThanOrEqual(1);
  });

  it('saves what is open as a set, takes it out, and gives it back by Undo', async () => {
    const { session } = await placePage(['lathe', 'jointer']);
    const names = () => session.shop.value.gateSets.map(({ name }) => name);
    const before = names();
    await button('Save as a set').click();
    await page.getByRole('textbox', { name: 'Name of the set' }).fill('Turning and jointing');
    await button('Save').click();
    expect(names()).toEqual([...before, 'Turning and jointing']);
    expect(session.shop.value.gateSets.at(-1)!.open.toSorted()).toEqual(['jointer', 'lathe']);
    await button('Remove set Turning and jointing').click();
    expect(names()).toEqual(before);
    await button('Undo').click();
    expect(names()).toHaveLength(before.length + 1);
  });

  it('plays the gates step by step, lists what was tried, and forgets it', async () => {
    const { session } = await placePage();
    for (let step = 0; step < 3; step++) {
      await button('Next step of the play').click();
      await still();
    }
    expect(session.report.value.open).toHaveLength(2);
    await text('Tried so far: 3').click();
    await drawn();
    await button('Clear what was tried').click();
    expect(session.trail.value).toHaveLength(1);
    await button('Put back the gates').click();
    expect(session.report.value.open).toEqual(['planer']);
  });

  it('reads the operating point from the plot', async () => {
    const { session } = await placePage();
    (slider(/Read along the lines: operating plot/).element() as HTMLElement).focus();
    await drawn();
    const { flow } = session.report.value.operatingPoint!;
    const spoken = slider(/Read along the lines: operating plot/)
      .element()
      .getAttribute('aria-valuetext');
    expect(spoken).toContain(formatQuantity('flow', 'us', flow).text);
    expect(spoken).toContain('here they meet');
  });
});
