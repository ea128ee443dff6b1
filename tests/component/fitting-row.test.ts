import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { Fitting } from '../../src/shop/schema/fitting-schema.ts';
import { fittingView } from '../../src/state/run-editor/fitting-view.ts';
import type { FittingRow } from '../../src/ui/run-editor/fitting-row.ts';
import '../../src/ui/run-editor/fitting-row.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const BEND: Fitting = { kind: 'bend', angle: 90, radius: 1.5 };
const GORED: Fitting = { kind: 'gored', pieces: 5, radius: 1.5, angle: 90 };
const PLAIN: Fitting = { kind: 'plain', coefficient: 0.4, name: 'grate' };
const PLACE = {
  pipe: { diameter: 0.15, roughness: 9e-5 },
  air: { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 },
  velocity: 20,
};
const type = async (name: string, words: string) => {
  await page.getByRole('textbox', { name }).fill(words);
  await userEvent.keyboard('{Enter}');
};
const placeRow = (fitting: Fitting) =>
  place<FittingRow>(html`<dc-fitting-row
    .view=${fittingView(fitting, PLACE, 'us')}
    .place=${2}
  ></dc-fitting-row>`);

describe('a fitting', () => {
  it('is accessible, of every kind', async () => {
    for (const fitting of [BEND, GORED, PLAIN, { kind: 'mitre', angle: 45 } as const]) {
      await expectAccessible(await placeRow(fitting));
    }
  });

  it('is told apart by its place, and says where its loss comes from', async () => {
    await placeRow(BEND);
    expect(page.getByRole('group', { name: 'Smooth bend, fitting 2' }).elements()).toHaveLength(1);
    expect(text(/Rennels and H\. M\. Hudson/).elements()).toHaveLength(1);
  });

  it('takes shape and count, within what there is', async () => {
    const row = await placeRow(BEND);
    const fittings = heard(row, 'dc-fitting');
    await type('Angle', '45');
    await type('Radius over diameter', '2');
    await type('How many', '3');
    await type('How many', '0');
    await type('Angle', '270');
    expect(fittings.map(({ fitting }) => fitting)).toEqual([
      { ...BEND, angle: 45 },
      { ...BEND, radius: 2 },
      { ...BEND, count: 3 },
    ]);
  });

  it('tells choices from what is typed, so that a walk through a list is undone as one', async () => {
    const row = await placeRow(GORED);
    const fittings = heard(row, 'dc-fitting');
    await page.getByRole('combobox', { name: 'Pieces' }).selectOptions('4');
    await type('How many', '2');
    expect(fittings.map(({ fitting, isChoice }) => [fitting, isChoice])).toEqual([
      [{ ...GORED, pieces: 4 }, true],
      [{ ...GORED, count: 2 }, false],
    ]);
  });

  it('marks a loss of one’s own, puts the usual one back, and is removed', async () => {
    const row = await placeRow({ ...GORED, coefficient: 0.5 });
    const fittings = heard(row, 'dc-fitting');
    expect(text(/^entered, in place of 0\.24/).elements()).toHaveLength(1);
    await button('Put back 0.24, K of each').click();
    await button('Remove Elbow of pieces, fitting 2').click();
    expect(fittings.map(({ fitting }) => fitting)).toEqual([GORED, undefined]);
  });

  it('lets a plain one be named, and keeps its loss', async () => {
    const row = await placeRow(PLAIN);
    const fittings = heard(row, 'dc-fitting');
    await type('What it is', 'wire grate');
    await userEvent.tab();
    expect(fittings.at(-1)?.fitting).toEqual({ ...PLAIN, name: 'wire grate' });
  });
});
