import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { dropIn } from '../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/collectors-panel/collectors-panel.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, picture, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const TIME = { timeout: 15_000 };
const THREE = '3 hp cyclone, 14 in. wheel';
const begin = () => new Session(demoShop(), ['lathe'], 'metric');
const placePanel = async (session: Session) => {
  const panel = await placeUnder(session, 'dc-collectors-panel');
  await expect.poll(() => picture(/^Collectors’ curves/).elements().length, TIME).toBe(1);
  return panel;
};
const all = () => page.getByRole('table', { name: 'Collectors on these ducts, in the same air' });
const names = () =>
  all()
    .getByRole('rowheader')
    .elements()
    .map((each) => each.textContent?.trim() ?? '');

describe('which collector', () => {
  it('is accessible, says which serves the most, and how sure that is', async () => {
    const panel = await placePanel(begin());
    expect(
      text(/ serve 11 of 12 drops, each alone; the others serve fewer\.$/).elements(),
    ).toHaveLength(1);
    await expect
      .poll(
        () => text(/^With everything a little off, .* in 9 of 10 cases/).elements().length,
        TIME,
      )
      .toBe(1);
    await expectAccessible(panel);
  });

  it('sorts by what a served drop costs, those without a price last', async () => {
    await placePanel(begin());
    await all()
      .getByRole('button', { name: /^per drop served/ })
      .click();
    await drawn();
    expect(names()[0]).toMatch(/^2\.2 kW filter unit/);
    expect(names().at(-1)).toMatch(/^2 hp canister unit/);
  });

  it('says why each fails, drop by drop, with the figures of the shop as it would be', async () => {
    const session = begin();
    await placePanel(session);
    await page.getByRole('combobox', { name: 'Look closely at' }).selectOptions(THREE);
    const close = page.getByRole('table', { name: `Every drop and gate set on ${THREE}` });
    const row = close.getByRole('row', { name: /^Blade guard alone/ });
    expect(row.element().textContent).toMatch(/settles: [\d.]+.m\/s in the main by the table saw/);
    const air = close
      .getByRole('row', { name: /^Lathe alone/ })
      .getByRole('cell')
      .elements()[1]
      ?.textContent?.trim();
    await button(`Make it so: collector: ${THREE}`).click();
    const { shop } = session;
    expect(shop.peek().collector.curve.name).toBe(THREE);
    const report = stateReport(modelOf(shop.peek()), travelsWhenOpen(shop.peek().drops, ['lathe']));
    expect(air).toBe(formatQuantity('flow', 'metric', dropIn(report, 'lathe').flow).number);
    session.undo();
    expect(session.shop.peek().collector).toEqual(demoShop().collector);
  });

  it('says how the curves were brought to one footing', async () => {
    await placePanel(begin());
    await text('How the curves were brought to one footing').click();
    expect(text(/^Carried from air of 1\.2.* of this shop\./).elements().length).toBeGreaterThan(3);
  });

  it('leaves out what is not ticked', async () => {
    await placePanel(begin());
    await page.getByRole('checkbox', { name: /^1 hp wall bag unit/ }).click();
    await expect.poll(() => names().length, TIME).toBe(6);
    expect(names().some((name) => name.startsWith('1 hp wall'))).toBe(false);
  });
});
