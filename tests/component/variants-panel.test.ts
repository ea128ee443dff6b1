import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { editOf } from '../../src/shop/decisions/choice.ts';
import { mainPipes } from '../../src/shop/decisions/main-sizes.ts';
import { suggestedMain } from '../../src/shop/decisions/main-sections.ts';
import { dropIn } from '../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { asVariant } from '../../src/state/decisions/variants.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/variants-panel/variants-panel.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawnWhole, expect, expectAccessible, heard, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const TIME = { timeout: 15_000 };
const NAME = 'Heron: main of 8 in.';

/** The demo with a main of 8 in., as "Keep beside" keeps it. */
function wider(demo: Shop): Shop {
  const pipes = mainPipes(demo, suggestedMain(demo), 'galvanised-spiral', '8in');
  const built = editOf({ kind: 'pipes', pipes })(demo);
  return asVariant(built, { id: 'demo', name: demo.name }, NAME, 'main of 8 in.');
}

async function placePanel() {
  const demo = demoShop();
  const variant = wider(demo);
  const session = new Session(demo, ['lathe'], 'us');
  const panel = await placeUnder(session, 'dc-variants-panel', (each) => {
    each.variants = [
      { id: 'demo', shop: demo, isOpen: true, isFirst: true },
      { id: 'wider', shop: variant, isOpen: false, isFirst: false },
    ];
  });
  await expect.poll(() => table().elements().length, TIME).toBe(1);
  await drawnWhole();
  return { demo, variant, session, panel };
}
const table = () => page.getByRole('table', { name: /^Each drop alone, in each variant/ });
const cellsOf = (name: RegExp) =>
  table()
    .getByRole('row', { name })
    .getByRole('cell')
    .elements()
    .map((each) => each.textContent?.trim());

describe('the variants of a shop', () => {
  it('are accessible, and say where they come from while there are none', async () => {
    const { panel } = await placePanel();
    await expectAccessible(panel);
    panel.variants = [];
    await expect.poll(() => text(/^\s*“Keep beside” in an answer above/).elements().length).toBe(1);
    await expectAccessible(panel);
  });

  it('are compared in one table: air and slowest speed of each drop, and pipe to be bought', async () => {
    const { demo, variant } = await placePanel();
    const figures = [demo, variant].flatMap((shop) => {
      const report = stateReport(modelOf(shop), travelsWhenOpen(shop.drops, ['lathe']));
      const { flow, slowest } = dropIn(report, 'lathe');
      return [
        formatQuantity('flow', 'us', flow).number,
        formatQuantity('velocity', 'us', slowest.velocity).number,
      ];
    });
    expect(cellsOf(/^Lathe/)).toEqual(figures);
    expect(table().getByText('main of 8 in.', { exact: true }).elements()).toHaveLength(1);
    const [none, bought] = cellsOf(/^to be bought/);
    expect(none).toBe('–');
    expect(bought).toMatch(/^\d+'.* of 8 in\. pipe$/);
    expect(cellsOf(/^drops served/)[0]).toBe('11 of 12');
  });

  it('keep what is to be bought below the drops when these are sorted', async () => {
    await placePanel();
    await table()
      .getByRole('button', { name: /^slowest/ })
      .first()
      .click();
    const rows = table().getByRole('rowheader').elements();
    expect(rows.at(-1)?.textContent?.trim()).toBe('to be bought');
  });

  it('become the shop by one edit that can be undone', async () => {
    const { demo, session, variant } = await placePanel();
    await button(`Make it so: ${NAME}`).click();
    expect(session.shop.peek().sections).toEqual(variant.sections);
    expect(session.shop.peek().name).toBe(demo.name);
    expect(session.shop.peek().variantOf).toBeUndefined();
    await expect
      .poll(() => text(/^Done: .* is as “Heron: main of 8 in\.” now/).elements().length)
      .toBe(1);
    session.undo();
    expect(session.shop.peek()).toEqual(demo);
  });

  it('are opened, renamed and deleted by the shelf', async () => {
    const { panel } = await placePanel();
    const wishes = heard(panel, 'dc-shelf');
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Wide');
    await userEvent.keyboard('{Enter}');
    await button(`Open: ${NAME}`).click();
    await button(`Delete: ${NAME}`).click();
    expect(wishes.map(({ wish }) => wish)).toEqual([
      { kind: 'rename', id: 'wider', name: 'Wide' },
      { kind: 'open', id: 'wider' },
      { kind: 'remove', id: 'wider' },
    ]);
  });
});
