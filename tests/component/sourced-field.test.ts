import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { SourcedField } from '../../src/ui/sourced-field/sourced-field.ts';
import '../../src/ui/sourced-field/sourced-field.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const SOURCE = 'a handbook, table 3 · verified';
const box = () => page.getByRole('textbox', { name: 'K of each' });
const value = () => (box().element() as HTMLInputElement).value;
const placeField = (own: number | undefined, usual: number | undefined = 0.25) =>
  place<SourcedField>(html`<dc-sourced-field
    label="K of each"
    .figure=${{ own, usual, source: SOURCE }}
    .low=${0}
    .high=${10}
  ></dc-sourced-field>`);

describe('a figure with its source', () => {
  it('is accessible, as it comes and overridden', async () => {
    await expectAccessible(await placeField(undefined));
    await expectAccessible(await placeField(0.4));
  });

  it('shows the usual figure and where it comes from, with nothing to put back', async () => {
    await placeField(undefined);
    expect(Number(value())).toBe(0.25);
    expect(text(SOURCE).elements()).toHaveLength(1);
    expect(button(/^Put back/).elements()).toHaveLength(0);
  });

  it('marks a figure of one’s own, and puts the usual one back', async () => {
    const field = await placeField(0.4);
    expect(Number(value())).toBe(0.4);
    expect(text(`entered, in place of 0.25 · ${SOURCE}`).elements()).toHaveLength(1);
    const quantities = heard(field, 'dc-quantity');
    await button('Put back 0.25, K of each').click();
    expect(quantities.map((event) => event.value)).toEqual([undefined]);
  });

  it('hands over what is typed, and refuses what lies outside', async () => {
    const field = await placeField(undefined);
    const quantities = heard(field, 'dc-quantity');
    await box().fill('0.5');
    await userEvent.keyboard('{Enter}');
    await box().fill('11');
    await userEvent.keyboard('{Enter}');
    expect(quantities.map((event) => event.value)).toEqual([0.5]);
  });

  it('says so where there is no usual figure', async () => {
    const field = await placeField(0.4);
    field.figure = { own: 0.4, usual: undefined, source: '' };
    await field.updateComplete;
    expect(text('entered for this shop').elements()).toHaveLength(1);
    expect(button(/^Put back/).elements()).toHaveLength(0);
  });
});
