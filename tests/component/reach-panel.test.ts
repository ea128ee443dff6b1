import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { dropIn } from '../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/reach-panel/reach-panel.ts';
import { formatQuantity } from '../../src/units/format.ts';
import type { UnitSystem } from '../../src/units/quantity.ts';
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

/** What a worker may take on a busy machine. */
const TIME = { timeout: 15_000 };

const begin = (units: UnitSystem = 'us') => new Session(demoShop(), ['lathe'], units);
const placePanel = async (session: Session) => {
  const panel = await placeUnder(session, 'dc-reach-panel');
  await expect.poll(() => picture(/^Air and slowest speed/).elements().length, TIME).toBe(1);
  return panel;
};
const type = async (label: string, words: string) => {
  await page.getByRole('textbox', { name: label, exact: true }).fill(words);
  await userEvent.keyboard('{Enter}');
};
const sentence = () => text(/^(Lathe|New drop|Planer bench)/).elements()[0]?.textContent ?? '';
const settled = async (change: () => Promise<unknown>) => {
  const before = sentence();
  await change();
  await expect.poll(sentence, TIME).not.toBe(before);
};

describe('whether a drop can reach further', () => {
  it('is accessible, and says first what it comes to', async () => {
    const panel = await placePanel(begin());
    expect(sentence()).toMatch(/^Lathe .*At the 10'.0" wanted it gets \d/);
    await expectAccessible(panel);
  });

  it('draws bands around its lines, for coefficients and curve a little off', async () => {
    await placePanel(begin());
    const picture = page.getByRole('img', { name: /^Air and slowest speed/ });
    const heights = () =>
      [...picture.element().querySelectorAll<SVGPathElement>('.doubt-flow, .doubt-speed')].map(
        (band) => band.getBBox().height,
      );
    await expect.poll(() => heights().filter((height) => height > 2).length, TIME).toBe(2);
  });

  it('speaks in metric units too', async () => {
    await placePanel(begin('metric'));
    expect(sentence()).toMatch(/At the 3\.00.m wanted it gets \d.\d+.m³\/h/);
  });

  it('makes a row so by one edit, with the figures that stood there', async () => {
    const session = begin();
    await placePanel(session);
    const before = session.shop.peek();
    await settled(() => type('Length to add', '20 ft'));
    await drawnWhole();
    const row = page.getByRole('row', { name: /^4 in/ });
    const air = row.getByRole('cell').elements()[1]?.textContent?.trim();
    await button(/^Make it so: Lathe 20' 0" further in 4 in\. (pipe|hose)/).click();
    const { shop } = session;
    const report = stateReport(modelOf(shop.peek()), travelsWhenOpen(shop.peek().drops, ['lathe']));
    expect(formatQuantity('flow', 'us', dropIn(report, 'lathe').flow).number).toBe(air);
    await expect.poll(() => text(/^Done: Lathe 20' 0" further/).elements().length).toBe(1);
    session.undo();
    expect(session.shop.peek()).toBe(before);
  });

  it('keeps a row beside the shop, which stays as it is', async () => {
    const session = begin();
    const panel = await placePanel(session);
    const before = session.shop.peek();
    const wishes = heard(panel, 'dc-shelf');
    await button(/^Keep beside: Lathe 10' 0" further in 5 in\. /).click();
    expect(wishes[0]?.wish).toMatchObject({
      kind: 'variant',
      words: expect.stringContaining('Lathe 10\' 0" further in 5 in.'),
    });
    expect(session.shop.peek()).toBe(before);
  });

  it('asks about a new drop too, and what it takes from the others', async () => {
    const session = begin();
    await placePanel(session);
    await settled(() =>
      userEvent.selectOptions(
        page.getByRole('combobox', { name: 'Which drop is to reach further' }),
        'a new drop',
      ),
    );
    await settled(() => type('Name of the new drop', 'Planer bench'));
    expect(sentence()).toMatch(/^Planer bench/);
    await settled(() => type('Air it needs', '5000'));
    expect(sentence()).toMatch(/can reach no further: it is short of the 5,000.cfm it needs/);
    const costs = page.getByRole('table', { name: /^What the length to add costs/ });
    expect(costs.getByRole('row').elements().length).toBe(7);
  });

  it('is read along its lines by the keys', async () => {
    await placePanel(begin());
    const reader = page.getByRole('slider', { name: /how far it reaches/ });
    (reader.element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    await drawn();
    expect(reader.element().getAttribute('aria-valuetext')).toMatch(
      /^air at the machine: \d+.cfm, 100' 0" added$/,
    );
  });
});
