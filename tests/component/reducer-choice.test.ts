import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { Transition } from '../../src/shop/schema/section-schema.ts';
import type { ReducerView } from '../../src/state/run-editor/reducer-view.ts';
import type { ReducerChoice } from '../../src/ui/run-editor/reducer-choice.ts';
import '../../src/ui/run-editor/reducer-choice.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const list = () => page.getByRole('combobox', { name: 'Reducer, 4 in. to 5 in.' });
const placeChoice = (transition: Transition | undefined) => {
  const view: ReducerView = {
    transition,
    sizes: '4 in. to 5 in.',
    coefficient: 0.12,
    source: 'a handbook · verified',
  };
  return place<ReducerChoice>(html`<dc-reducer-choice .view=${view}></dc-reducer-choice>`);
};
const type = async (name: string, words: string) => {
  await page.getByRole('textbox', { name }).fill(words);
  await userEvent.keyboard('{Enter}');
};

describe('a change of diameter', () => {
  it('is accessible, put in by itself and entered', async () => {
    await expectAccessible(await placeChoice(undefined));
    await expectAccessible(await placeChoice({ kind: 'taper', angle: 20 }));
  });

  it('shows what was put in by itself, its loss and the source', async () => {
    await placeChoice(undefined);
    expect(text(/on the smaller pipe · a handbook · verified/).elements()).toHaveLength(1);
    expect(text('K 0.12').elements()).toHaveLength(1);
    expect(button(/^Put back/).elements()).toHaveLength(0);
  });

  it('tells each kind with the figures that it begins with', async () => {
    const choice = await placeChoice(undefined);
    const reducers = heard(choice, 'dc-reducer');
    const entries = [...(list().element() as HTMLSelectElement).options].map(({ text }) => text);
    for (const entry of entries.slice(1)) await list().selectOptions(entry);
    expect(reducers.map(({ transition }) => transition)).toEqual(
      expect.arrayContaining([
        { kind: 'sudden' },
        { kind: 'taper', angle: 30 },
        { kind: 'plain', coefficient: 0.12 },
      ]),
    );
    expect(reducers.every(({ isChoice }) => isChoice)).toBe(true);
  });

  it('takes the angle of a cone, marks it as entered, and puts the usual one back', async () => {
    const choice = await placeChoice({ kind: 'taper', angle: 20 });
    const reducers = heard(choice, 'dc-reducer');
    expect(text(/entered, in place of the usual cone/).elements()).toHaveLength(1);
    await type('Angle between its sides', '40');
    await type('Angle between its sides', '200');
    await button('Put back the 30° cone').click();
    expect(reducers.map(({ transition }) => transition)).toEqual([
      { kind: 'taper', angle: 40 },
      undefined,
    ]);
  });
});
