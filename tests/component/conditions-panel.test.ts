import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { setCollector } from '../../src/shop/edits/edit-shop.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/conditions-panel/conditions-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, slider, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const box = (name: string) => page.getByRole('textbox', { name, exact: true });
const list = (name: string) => page.getByRole('combobox', { name, exact: true });
const type = async (name: string, words: string) => {
  await box(name).fill(words);
  await userEvent.keyboard('{Enter}');
  await drawn();
};

async function placePanel() {
  const session = new Session(demoShop(), ['planer'], 'us');
  const panel = await placeUnder(session, 'dc-conditions-panel');
  return { session, panel };
}

describe('the conditions', () => {
  it('are accessible, by the weather and by density', async () => {
    const { panel } = await placePanel();
    await expectAccessible(panel);
    await list('Density and viscosity are').selectOptions('entered as numbers');
    await drawn();
    await expectAccessible(panel);
  });

  it('take the weather, tell the density, and go back to the usual air', async () => {
    const { session } = await placePanel();
    await type('Height above the sea', '0 ft');
    await type('Temperature', '20 °C');
    await type('Relative humidity', '50 %');
    expect(session.shop.value.air).toEqual({
      kind: 'room',
      altitude: 0,
      temperature: 20,
      humidity: 0.5,
    });
    expect(text(/^Its density is 0\.0748\slb\/ft³/).elements()).toHaveLength(1);
    const back = button(/^Back to sea level/).element() as HTMLButtonElement;
    expect(back.disabled).toBe(true);
  });

  it('blind the filter by keys, and clean it by one press, each undone as one', async () => {
    const { session } = await placePanel();
    const blinding = () => {
      const { filter } = session.shop.value.collector;
      return filter.kind === 'none' ? undefined : filter.blinding;
    };
    const before = blinding();
    (slider('How blind the filter is').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{ArrowRight}');
    await drawn();
    expect(blinding()).toBeGreaterThan(before!);
    await button('Back to a clean filter').click();
    expect(blinding() ?? 1).toBe(1);
    session.undo();
    expect(blinding()).toBeGreaterThan(before!);
  });

  it('say so where there is no filter to blind', async () => {
    const { session } = await placePanel();
    session.edit(setCollector({ filter: { kind: 'none' } }));
    await drawn();
    expect(slider('How blind the filter is').elements()).toHaveLength(0);
    expect(text(/No filter is entered/).elements()).toHaveLength(1);
  });

  it('take another range, but none that is upside down', async () => {
    const { session } = await placePanel();
    await type('Slower and chips settle', '4000 ft/min');
    expect(session.shop.value.carryingRange.low).toBeCloseTo(20.32, 12);
    await type('Slower and chips settle', '5000 ft/min');
    expect(session.shop.value.carryingRange.low).toBeCloseTo(20.32, 12);
    expect(text(/^The low end must lie below the high end/).elements()).toHaveLength(1);
    await button('Back to the usual range').click();
    expect(session.shop.value.carryingRange.low).toBeCloseTo(17.78, 12);
  });
});
