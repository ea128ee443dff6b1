import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { setHood } from '../../src/shop/edits/edit-drop.ts';
import type { Hood } from '../../src/shop/schema/drop-schema.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { dropFormView } from '../../src/state/run-editor/drop-form-view.ts';
import type { HoodChoice } from '../../src/ui/run-editor/hood-choice.ts';
import '../../src/ui/run-editor/hood-choice.ts';
import { smallShop } from '../unit/shop/small-shop.ts';
import { drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const SUCTION = 'Suction behind the hood';
const SPEED = 'Speed there at the same time';
const list = () => page.getByRole('combobox', { name: 'Hood' });
const type = async (name: string, words: string) => {
  await page.getByRole('textbox', { name }).fill(words);
  await userEvent.keyboard('{Enter}');
  await drawn();
};
const placeChoice = (hood: Hood) => {
  const shop = setHood('saw', hood)(smallShop);
  const view = dropFormView(shop, modelOf(shop), 'saw', 'us');
  return place<HoodChoice>(html`<dc-hood-choice .view=${view}></dc-hood-choice>`);
};

describe('the choice of a hood', () => {
  it('is accessible, of the table, by a coefficient and by a reading', async () => {
    for (const hood of [
      { kind: 'table', id: 'plain-end' },
      { kind: 'coefficient', coefficient: 0.65 },
      { kind: 'measured', suction: 500, velocity: 20 },
    ] as const) {
      await expectAccessible(await placeChoice(hood));
    }
  });

  it('begins a coefficient of one’s own with that of the hood before', async () => {
    const choice = await placeChoice({ kind: 'measured', suction: 500, velocity: 20 });
    const hoods = heard(choice, 'dc-hood');
    await list().selectOptions('A coefficient of your own');
    // 500 Pa of suction at 20 m/s in air of 1.2 kg/m³: 240 Pa move the air, 260 Pa were lost.
    expect(hoods[0]?.hood).toEqual({ kind: 'coefficient', coefficient: 1.083 });
  });

  it('takes over a reading once both halves are there and fit', async () => {
    const choice = await placeChoice({ kind: 'table', id: 'plain-end' });
    const hoods = heard(choice, 'dc-hood');
    await list().selectOptions('Measured on the machine');
    await drawn();
    await type(SUCTION, '500 Pa');
    expect(hoods).toEqual([]);
    expect(text(/^The hood stays as it was until/).elements()).toHaveLength(1);
    await type(SPEED, '20 m/s');
    expect(hoods.map(({ hood }) => hood)).toEqual([
      { kind: 'measured', suction: 500, velocity: 20 },
    ]);
  });

  it('refuses a reading that can’t be, says the least that could, and keeps what was typed', async () => {
    const choice = await placeChoice({ kind: 'table', id: 'plain-end' });
    const hoods = heard(choice, 'dc-hood');
    await list().selectOptions('Measured on the machine');
    await drawn();
    await type(SUCTION, '100 Pa');
    await type(SPEED, '20 m/s');
    expect(hoods).toEqual([]);
    // 240 Pa are 0.96 in. of water.
    expect(text(/the moving air alone shows 0\.96\sin\. w\.g\./).elements()).toHaveLength(1);
    const typed = page.getByRole('textbox', { name: SUCTION }).element() as HTMLInputElement;
    expect(typed.value).toBe('0.40');
  });
});
