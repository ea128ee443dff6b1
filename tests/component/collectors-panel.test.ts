import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { candidateOf } from '../../src/shop/decisions/collectors.ts';
import { dropIn } from '../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { exampleCurves } from '../../src/shop/example-curves.ts';
import { MemoryCurveStore } from '../../src/shop/store/memory-curve-store.ts';
import { CurveShelf } from '../../src/state/curve-shelf.ts';
import { DOUBTED } from '../../src/state/decisions/doubt-form.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/collectors-panel/collectors-panel.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, drawnWhole, expect, expectAccessible, picture, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const TIME = { timeout: 15_000 };
const THREE = '3 hp cyclone, 14 in. wheel';
const begin = () => new Session(demoShop(), ['lathe'], 'metric');
const emptyShelf = () => {
  let count = 0;
  const newId = () => `new ${++count}`;
  return new CurveShelf({ store: new MemoryCurveStore(), newId, now: () => count });
};
const placePanel = async (session: Session, shelf = emptyShelf()) => {
  const panel = await placeUnder(session, 'dc-collectors-panel', (each) => {
    each.shelf = shelf;
  });
  await expect.poll(() => picture(/^Collectors’ curves/).elements().length, TIME).toBe(1);
  await drawnWhole();
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
    await drawnWhole();
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
    await drawnWhole();
    expect(names().some((name) => name.startsWith('1 hp wall'))).toBe(false);
  });

  it('sets curves of the reader’s own beside them as they are kept, told apart and with the price', async () => {
    const shelf = emptyShelf();
    await placePanel(begin(), shelf);
    const wallBag = exampleCurves()[0]!;
    await shelf.keep({ ...wallBag, price: { amount: 12_345, currency: 'EUR' } });
    await expect.poll(() => names().length, TIME).toBe(8);
    const rowOf = (name: RegExp) => all().getByRole('row', { name }).element().textContent ?? '';
    expect(rowOf(/^1 hp wall bag unit/)).toMatch(/12.345.EUR[^]*yours/);
    expect(rowOf(/^example 1 hp wall bag unit/)).toMatch(/example, invented/);
    await shelf.change(shelf.curves.value[0]!.id, { ...wallBag, name: 'Ours' });
    await expect.poll(() => names().some((name) => name.startsWith('Ours')), TIME).toBe(true);
    await page.getByRole('checkbox', { name: 'Ours yours' }).click();
    await expect.poll(() => names().length, TIME).toBe(7);
  });

  it('draws the gates as they are open now, or others, with bands that can be made narrower', async () => {
    const session = begin();
    await placePanel(session);
    await expect.poll(() => text(/^\s*Open: Lathe\./).elements().length, TIME).toBe(1);
    const figures = () =>
      page
        .getByRole('table', { name: /^Where each collector meets the ducts/ })
        .getByRole('row', { name: new RegExp(`^${THREE}`) })
        .getByRole('cell')
        .elements()
        .map((each) => each.textContent?.trim() ?? '');
    await button(/^Figures of the collectors on the ducts/).click();
    await drawn();
    const report = (open: readonly string[]) => {
      const shop = { ...demoShop(), collector: candidateOf(demoShop(), curveNamed(THREE)) };
      return stateReport(modelOf(shop), travelsWhenOpen(shop.drops, open)).operatingPoint!.flow;
    };
    const written = (flow: number) => formatQuantity('flow', 'metric', flow).number;
    expect(figures()[1]).toBe(written(report(['lathe'])));

    session.openOnly(['planer', 'jointer']);
    await expect.poll(() => figures()[1], TIME).toBe(written(report(['planer', 'jointer'])));
    const planer = session.shop.peek().drops.find(({ id }) => id === 'planer')!;
    const gates = page.getByRole('combobox', { name: 'Open in the picture' });
    await gates.selectOptions(`${planer.name} alone`);
    await expect.poll(() => figures()[1], TIME).toBe(written(report(['planer'])));

    // A figure of four digits has a space in it.
    const digits = (text = '') => Number(text.replace(/\D/g, ''));
    const width = () => digits(figures()[3]) - digits(figures()[2]);
    const wide = width();
    expect(wide).toBeGreaterThan(0);
    await text(/^What may be off, and by how much/).click();
    for (const label of DOUBTED.map((each) => each.label)) {
      await page.getByRole('textbox', { name: label }).fill('0');
      await userEvent.keyboard('{Enter}');
    }
    await expect.poll(width, TIME).toBe(0);
  }, 30_000);
});

function curveNamed(name: string) {
  return exampleCurves().find((curve) => curve.name === name)!;
}
