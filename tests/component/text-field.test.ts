import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { TextField } from '../../src/ui/text-field/text-field.ts';
import '../../src/ui/text-field/text-field.ts';
import { drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const box = () => page.getByRole('textbox', { name: 'Name' });
const type = async (words: string) => {
  await box().fill(words);
  await userEvent.tab();
  await drawn();
};
const placeField = (value = 'Lathe') =>
  place<TextField>(
    html`<dc-text-field label="Name" hint="one line" .value=${value}></dc-text-field>`,
  );

describe('a field of words', () => {
  it('is accessible, also with a problem', async () => {
    const field = await placeField();
    await expectAccessible(field);
    await type('');
    expect(text(/^A name is needed/).elements()).toHaveLength(1);
    await expectAccessible(field);
  });

  it('hands over what was typed without what surrounds it, once', async () => {
    const field = await placeField();
    const texts = heard(field, 'dc-text');
    await type('  Old lathe ');
    expect(texts.map(({ value }) => value)).toEqual(['Old lathe']);
  });

  it('says nothing where nothing was changed', async () => {
    const field = await placeField();
    const texts = heard(field, 'dc-text');
    await type(' Lathe ');
    expect(texts).toEqual([]);
  });

  it('keeps what it had where a name is needed, and names it', async () => {
    const field = await placeField();
    const texts = heard(field, 'dc-text');
    await type('   ');
    expect(texts).toEqual([]);
    expect(text('A name is needed; “Lathe” stays until there is one.').elements()).toHaveLength(1);
    expect(box().element().getAttribute('aria-invalid')).toBe('true');
    expect((box().element() as HTMLInputElement).value).toBe('Lathe');
  });

  it('may be emptied where it is optional, and keeps lines where it has several', async () => {
    const field = await place<TextField>(
      html`<dc-text-field label="Name" optional lines .value=${'near the door'}></dc-text-field>`,
    );
    const texts = heard(field, 'dc-text');
    await type('one\ntwo');
    await type('');
    expect(texts.map(({ value }) => value)).toEqual(['one\ntwo', undefined]);
  });
});
