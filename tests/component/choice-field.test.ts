import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { ChoiceField } from '../../src/ui/choice-field/choice-field.ts';
import '../../src/ui/choice-field/choice-field.ts';
import { drawn, expect, expectAccessible, heard, html, place } from './harness.ts';

const CHOICES = [
  { value: 'spiral', words: 'Spiral pipe', group: 'Pipe' },
  { value: 'sewer', words: 'Sewer pipe', group: 'Pipe' },
  { value: 'helix', words: 'Wire hose', group: 'Hose' },
];
const list = () => page.getByRole('combobox', { name: 'Kind' });
const shown = () => (list().element() as HTMLSelectElement).selectedOptions[0]?.text;
const placeField = () =>
  place<ChoiceField>(
    html`<dc-choice-field label="Kind" hint="as it is sold" value="sewer" .choices=${CHOICES}></dc-choice-field>`,
  );

describe('a choice from a list', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeField());
  });

  it('shows its value, its entries under their headings, and the hint as its description', async () => {
    await placeField();
    expect(shown()).toBe('Sewer pipe');
    const groups = [...list().element().querySelectorAll('optgroup')];
    expect(groups.map(({ label, children }) => [label, children.length])).toEqual([
      ['Pipe', 2],
      ['Hose', 1],
    ]);
    await expect.element(list()).toHaveAccessibleDescription('as it is sold');
  });

  it('tells what was chosen', async () => {
    const field = await placeField();
    const choices = heard(field, 'dc-choice');
    await list().selectOptions('Wire hose');
    expect(choices.map(({ value }) => value)).toEqual(['helix']);
  });

  it('shows what it is told to, also after a choice that was not taken over', async () => {
    const field = await placeField();
    await list().selectOptions('Wire hose');
    field.requestUpdate();
    await drawn();
    expect(shown()).toBe('Sewer pipe');
  });
});
