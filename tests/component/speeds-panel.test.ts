import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/speeds-panel/speeds-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, picture, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const begin = () => new Session(demoShop(), ['planer'], 'us');
const placePanel = async (session: Session) => {
  const panel = await placeUnder(session, 'dc-speeds-panel');
  await drawn();
  return panel;
};
const open = async (session: Session, id: string) => {
  session.dragGate(id, 1);
  session.rest();
  await drawn();
};
const CLEAR = 'Clear the former speeds';

describe('the speed at each drop', () => {
  it('is accessible before a change', async () => {
    await expectAccessible(await placePanel(begin()));
  });

  it('is accessible after one', async () => {
    const session = begin();
    const panel = await placePanel(session);
    await open(session, 'floor-sweep');
    await expectAccessible(panel);
  });

  it('names every drop, and gives a speed to open ones only', async () => {
    await placePanel(begin());
    for (const { name } of demoShop().drops) expect(text(name).elements(), name).toHaveLength(1);
    expect(text('4,340').elements()).toHaveLength(1);
    expect(picture(/^Speed at each drop/).elements()).toHaveLength(1);
  });

  it('tells in words what opening a gate did, and keeps the former speeds until dismissed', async () => {
    const session = begin();
    await placePanel(session);
    expect(button(CLEAR).elements()).toHaveLength(0);
    await open(session, 'floor-sweep');
    const words =
      'Opening Floor sweep slows Thickness planer from 4,340 to 2,870\u2009ft/min. Chips now settle on the way of Thickness planer.';
    expect(text(words).elements()).toHaveLength(1);
    await button(CLEAR).click();
    await expect.poll(() => text(words).elements().length).toBe(0);
    expect(text(/^Chips keep moving between 3,500 and 4,500/).elements()).toHaveLength(1);
  });

  it('speaks a drop’s speeds, now and before, to the keys', async () => {
    const session = begin();
    await placePanel(session);
    await open(session, 'floor-sweep');
    const reader = page.getByRole('slider', { name: /speed at each drop/ });
    (reader.element() as HTMLElement).focus();
    const said = () => reader.element().getAttribute('aria-valuetext');
    await expect.poll(said).toMatch(/^Thickness planer: 2,870.*in its own pipe, settles$/);
    await userEvent.keyboard('{ArrowRight}{ArrowRight}');
    await expect.poll(said).toMatch(/before: 4,340/);
    await userEvent.keyboard('{ArrowDown}');
    await expect.poll(said).toMatch(/^Floor sweep: 2,810/);
  });

  it('has its figures in a table, with those before', async () => {
    const session = begin();
    await placePanel(session);
    await open(session, 'floor-sweep');
    await text(/^Figures/).click();
    const row = page.getByRole('row', { name: /^Thickness planer/ }).element();
    const cells = [...row.children].map((cell) => cell.textContent?.trim());
    expect(cells.slice(1)).toEqual(['2,870', '4,340', '2,800', 'planer drop', 'settles']);
  });
});
