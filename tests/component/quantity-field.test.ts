import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { QuantityField } from '../../src/ui/quantity-field/quantity-field.ts';
import '../../src/ui/quantity-field/quantity-field.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const placeField = (value: number | undefined = 3.6576, problem = '') =>
  place<QuantityField>(html`<dc-quantity-field
    label="Length"
    quantity="length"
    .units=${'us'}
    .value=${value}
    .low=${0}
    .high=${100}
    .problem=${problem}
  ></dc-quantity-field>`);
const box = () => page.getByRole('textbox', { name: 'Length' });
const shown = () => (box().element() as HTMLInputElement).value;

async function type(words: string): Promise<void> {
  await box().fill(words);
  await userEvent.keyboard('{Enter}');
  await drawn();
}

describe('a quantity field', () => {
  it('is accessible, also with a problem', async () => {
    await expectAccessible(await placeField());
    await type('three elephants');
    await expectAccessible(document.querySelector('dc-quantity-field')!);
  });

  it('takes what people write and tells the amount in SI', async () => {
    const field = await placeField();
    const events = heard(field, 'dc-quantity');
    expect(shown()).toBe('12\' 0"');
    await type('12\' 6 1/2"');
    expect(events.map(({ value }) => value)).toEqual([3.8227]);
    await type('3,8 m');
    expect(events.at(-1)?.value).toBe(3.8);
    field.value = 3.8;
    await drawn();
    expect(text(/understood: 3.8.m \(12' 5 5\/8"\)/).elements()).toHaveLength(1);
  });

  it('says nothing when it is left as it was, or holds the amount already', async () => {
    const field = await placeField();
    const events = heard(field, 'dc-quantity');
    await box().click();
    await userEvent.tab();
    await type('12 ft');
    expect(events).toEqual([]);
    expect(shown()).toBe('12\' 0"');
  });

  it('keeps what it can’t understand, and says why, until it is put right', async () => {
    const field = await placeField();
    const events = heard(field, 'dc-quantity');
    await type('12 cfm');
    expect(shown()).toBe('12 cfm');
    expect(page.getByRole('alert').element().textContent).toContain('not a length');
    expect(box().element().getAttribute('aria-invalid')).toBe('true');
    await userEvent.keyboard('{Escape}');
    await drawn();
    expect(shown()).toBe('12\' 0"');
    expect(page.getByRole('alert').elements()).toHaveLength(0);
    expect(events).toEqual([]);
  });

  it('refuses an amount out of its bounds, with the bound', async () => {
    await placeField();
    await type('400 ft');
    expect(page.getByRole('alert').element().textContent).toContain('328\' 1"');
    expect(shown()).toBe('400 ft');
  });

  it('shows why the shop refused it, beside what was typed', async () => {
    const field = await placeField();
    await type('9 ft');
    field.problem = 'The branch is shorter than that.';
    await drawn();
    expect(shown()).toBe('9 ft');
    expect(page.getByRole('alert').element().textContent).toContain('shorter than that');
  });

  it('asks where a comma leaves two meanings', async () => {
    const field = await place<QuantityField>(html`<dc-quantity-field
      label="Length"
      quantity="flow"
      .units=${'us'}
      .value=${0.4}
    ></dc-quantity-field>`);
    const events = heard(field, 'dc-quantity');
    await type('1,200');
    expect(events).toEqual([]);
    await button(/^1,200.cfm$/).click();
    expect(events.map(({ value }) => value)).toEqual([0.56633693184]);
  });

  it('may be emptied only where that means something', async () => {
    const field = await placeField();
    const events = heard(field, 'dc-quantity');
    await type('');
    expect(page.getByRole('alert').element().textContent).toContain('Type a length');
    field.optional = true;
    await type('1 ft');
    await type('');
    expect(events.at(-1)?.value).toBeUndefined();
  });

  it('follows the amount when it is taken back elsewhere', async () => {
    const field = await placeField();
    await type('9 ft');
    field.value = 2.7432;
    await drawn();
    expect(shown()).toBe('9\' 0"');
    field.value = 3.6576;
    await drawn();
    expect(shown()).toBe('12\' 0"');
  });
});
