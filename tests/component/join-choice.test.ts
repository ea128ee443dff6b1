import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { SectionJoin } from '../../src/shop/schema/section-schema.ts';
import { joinView } from '../../src/state/run-editor/join-view.ts';
import type { JoinChoice } from '../../src/ui/run-editor/join-choice.ts';
import '../../src/ui/run-editor/join-choice.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const ANGLE: SectionJoin = { kind: 'momentum', angle: 45 };
const FIXED: SectionJoin = { kind: 'fixed', coefficient: 0.5, of: 'own' };
const list = (name: string) => page.getByRole('combobox', { name });
const type = async (name: string, words: string) => {
  await page.getByRole('textbox', { name }).fill(words);
  await userEvent.keyboard('{Enter}');
};
const placeChoice = (join: SectionJoin) =>
  place<JoinChoice>(html`<dc-join-choice .view=${joinView(join, 'the main', 2)}></dc-join-choice>`);

describe('how a section joins its wye', () => {
  it('is accessible, by its angle and by a coefficient', async () => {
    await expectAccessible(await placeChoice(ANGLE));
    await expectAccessible(await placeChoice(FIXED));
  });

  it('takes an angle within a right angle, and no other', async () => {
    const choice = await placeChoice(ANGLE);
    const joins = heard(choice, 'dc-join');
    await type('Angle, 0 for straight on', '30');
    await type('Angle, 0 for straight on', '120');
    expect(joins.map(({ join }) => join)).toEqual([{ kind: 'momentum', angle: 30 }]);
    expect(joins[0]?.isChoice).toBe(false);
  });

  it('names the wye, and says where its loss comes from', async () => {
    await placeChoice(ANGLE);
    expect(text(/^a wye of 2 into the main;/).elements()).toHaveLength(1);
    expect(text(/Idelchik/).elements()).toHaveLength(1);
  });

  it('fixes the coefficient instead, marks it, and puts the angle back', async () => {
    const choice = await placeChoice(ANGLE);
    const joins = heard(choice, 'dc-join');
    await list('How it joins').selectOptions('By a fixed coefficient');
    expect(joins.at(-1)?.join.kind).toBe('fixed');
    expect(joins.at(-1)?.isChoice).toBe(true);
    const fixed = await placeChoice(FIXED);
    const later = heard(fixed, 'dc-join');
    expect(text(/entered, in place of the flows/).elements()).toHaveLength(1);
    await type('Coefficient K', '0.3');
    await list('On the velocity pressure').selectOptions('of all the air together');
    await button('Put back by angle and flows').click();
    expect(later.map(({ join }) => join)).toEqual([
      { ...FIXED, coefficient: 0.3 },
      { ...FIXED, of: 'combined' },
      ANGLE,
    ]);
  });
});
