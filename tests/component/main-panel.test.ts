import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { dropIn } from '../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/main-panel/main-panel.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import {
  button,
  drawn,
  drawnWhole,
  expect,
  expectAccessible,
  heard,
  picture,
  text,
} from './harness.ts';
import { placeUnder } from './with-session.ts';

const TIME = { timeout: 15_000 };
const begin = () => new Session(demoShop(), ['lathe'], 'us');
const placePanel = async (session: Session) => {
  const panel = await placeUnder(session, 'dc-main-panel');
  await expect.poll(() => picture(/^Air and speed in the main/).elements().length, TIME).toBe(1);
  return panel;
};
const sizeRow = (name: RegExp) =>
  page.getByRole('table', { name: 'The main in every size' }).getByRole('row', { name });

describe('whether a larger main would help', () => {
  it('is accessible, says what it turns on, and how sure that is', async () => {
    const panel = await placePanel(begin());
    expect(
      text(/^A main of 7 in\. serves 11 of 12 drops.*below the 3,500.ft\/min/).elements(),
    ).toHaveLength(1);
    await expect
      .poll(
        () => text(/^With everything a little off, what a main of 7 in/).elements().length,
        TIME,
      )
      .toBe(1);
    await expectAccessible(panel);
    // Every drop's picture has a band around its air.
    const picture = page.getByRole('img', { name: /^Air and speed in the main/ }).element();
    const bands = () =>
      [...picture.querySelectorAll<SVGPathElement>('.doubt-flow')].map((band) =>
        Math.round(band.getBBox().height),
      );
    await expect.poll(() => bands().filter((height) => height > 0).length).toBe(12);
  });

  it('shows one size closely, with the figures of the shop as it would be', async () => {
    const session = begin();
    await placePanel(session);
    await page.getByRole('combobox', { name: 'Look closely at a main of' }).selectOptions('8 in.');
    await drawnWhole();
    const row = page
      .getByRole('table', { name: 'A main of 8 in., each drop alone' })
      .getByRole('row', { name: /^Lathe/ });
    const air = row.getByRole('cell').elements()[1]?.textContent?.trim();
    await button('Make it so: main of 8 in.').click();
    const { shop } = session;
    const report = stateReport(modelOf(shop.peek()), travelsWhenOpen(shop.peek().drops, ['lathe']));
    expect(air).toBe(formatQuantity('flow', 'us', dropIn(report, 'lathe').flow).number);
    session.undo();
    expect(session.shop.peek().sections).toEqual(demoShop().sections);
  });

  it('counts other sections as the main when they are ticked, and none when none is', async () => {
    await placePanel(begin());
    const box = page.getByRole('checkbox', { name: /^The band saw line/ });
    await box.click();
    await expect.poll(() => sizeRow(/^6 in\. ?today/).elements().length, TIME).toBe(1);
    expect(page.getByRole('button', { name: 'Make it so: main of 6 in.' }).elements()).toHaveLength(
      0,
    );
    for (const each of page.getByRole('checkbox').elements()) {
      if ((each as HTMLInputElement).checked) (each as HTMLElement).click();
      await drawn();
    }
    await expect.poll(() => text('No section is counted as the main.').elements().length).toBe(1);
    await button('Back to the trunk').click();
    await expect.poll(() => text(/^A main of 7 in\. serves/).elements().length, TIME).toBe(1);
  });

  it('searches mains of several sizes when asked, and can be left', async () => {
    const panel = await placePanel(begin());
    await button('Search mains that widen toward the collector').click();
    await button('Leave off: mains of several sizes').click();
    await expect.poll(() => text('Left off.').elements().length).toBe(1);
    await button('Search mains that widen toward the collector').click();
    const wishes = heard(panel, 'dc-shelf');
    await button('Keep beside: main of several sizes').click({ timeout: 14_000 });
    expect(wishes[0]?.wish).toMatchObject({ kind: 'variant', words: 'main of several sizes' });
  }, 30_000);
});
