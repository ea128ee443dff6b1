import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { exampleCurves } from '../../src/shop/example-curves.ts';
import type { CurveEditor } from '../../src/ui/curve-editor/curve-editor.ts';
import '../../src/ui/curve-editor/curve-editor.ts';
import { expect, expectAccessible, heard, html, place, text } from './harness.ts';

const curve = exampleCurves()[0]!;
const placeEditor = () =>
  place<CurveEditor>(html`<dc-curve-editor .curve=${curve} .units=${'us'}></dc-curve-editor>`);

describe('the editor of a curve', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeEditor());
  });

  it('tells each change as a whole curve', async () => {
    const events = heard(await placeEditor(), 'dc-curve');
    await page.getByRole('textbox', { name: 'Name of the collector' }).fill('Ours');
    await userEvent.keyboard('{Enter}');
    await page
      .getByRole('textbox', { name: 'Inside diameter of the pipe with the tap' })
      .fill('100 mm');
    await userEvent.keyboard('{Enter}');
    await page.getByRole('checkbox', { name: 'its separator' }).click();
    await page.getByRole('radio', { name: /^total suction/ }).click();
    await page.getByRole('textbox', { name: 'The points hold in air of' }).fill('1.1 kg/m³');
    await userEvent.keyboard('{Enter}');
    expect(events.map((event) => event.curve)).toEqual([
      { ...curve, name: 'Ours' },
      { ...curve, basis: { kind: 'tap', diameter: 0.1 } },
      { ...curve, includes: { filter: true, separator: true } },
      { ...curve, basis: { kind: 'total' } },
      { ...curve, density: 1.1 },
    ]);
  });

  it('heads the pressures by what they are and asks for the tap only where there is one', async () => {
    const editor = await placeEditor();
    expect(text('Suction at the tap').elements()).not.toHaveLength(0);
    editor.curve = { ...curve, basis: { kind: 'fan-static' } };
    await editor.updateComplete;
    expect(page.getByRole('textbox', { name: /pipe with the tap/ }).elements()).toHaveLength(0);
    expect(page.getByRole('columnheader', { name: 'Fan static pressure' }).elements()).toHaveLength(
      1,
    );
  });

  it('keeps a test of one’s own with the curve, and takes its points when told to', async () => {
    const editor = await placeEditor();
    const events = heard(editor, 'dc-curve');
    editor.addEventListener('dc-curve', (event) => {
      editor.curve = event.curve;
    });
    await page.getByText('From a test of your own').click();
    const type = async (name: string | RegExp, words: string, at = 0) => {
      await page.getByRole('textbox', { name }).nth(at).fill(words);
      await userEvent.keyboard('{Enter}');
    };
    await type(/^Inside diameter of the pipe$/, '6', 0);
    await type(/^Suction at the tap$/, '9', 0);
    await type(/^Suction at the tap$/, '5', 1);
    await type('Speed at the centre', '4000', 0);
    expect(events.at(-1)!.curve.points).toBe(curve.points);
    expect(events.at(-1)!.curve.test!.rows[1]!.air).toMatchObject({ kind: 'velocity' });
    await page.getByRole('button', { name: 'Make these 2 points the curve' }).click();
    const taken = events.at(-1)!.curve;
    expect(taken.basis).toEqual({ kind: 'total' });
    expect(taken.points[0]).toEqual({ flow: 0, pressure: expect.closeTo(9 * 249.08891, 6) });
    // 0.86 of 4,000 ft/min through 0.19635 ft²: 675.4 cfm, by the definitions of the units.
    expect(taken.points[1]!.flow / 4.719474432e-4).toBeCloseTo(675.44, 1);
    expect(taken.test!.rows).toHaveLength(5);
  });
});
