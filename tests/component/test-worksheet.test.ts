import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { TestSheet } from '../../src/shop/schema/test-schema.ts';
import type { TestWorksheet } from '../../src/ui/test-worksheet/test-worksheet.ts';
import '../../src/ui/test-worksheet/test-worksheet.ts';
import {
  button,
  drawn,
  expect,
  expectAccessible,
  heard,
  html,
  picture,
  place,
  text,
} from './harness.ts';

/** A bore of 0.02 m² and 1.2 kg/m³: 10 m/s are 720 m³/h and 60 Pa. */
const test: TestSheet = {
  diameter: 0.15957691216057307,
  air: { kind: 'density', density: 1.2 },
  centre: { factor: 0.8 },
  traverse: { rule: 'log-tchebycheff', perDiameter: 4, diameters: 1 },
  instruments: {},
  rows: [
    { id: 'closed', static: 2000, air: { kind: 'closed' } },
    { id: 'a', static: 1060, air: { kind: 'velocity', reading: 12.5 } },
    { id: 'b', static: 500, air: { kind: 'velocity-traverse', readings: [14, 16, 16, null] } },
  ],
};

const placeSheet = (sheet: TestSheet | undefined = test, units = 'metric') =>
  place<TestWorksheet>(
    html`<dc-test-worksheet .test=${sheet} .units=${units}></dc-test-worksheet>`,
  );
const setting = (number: number) => page.getByRole('region', { name: `Setting ${number}` });
const box = (scope: ReturnType<typeof setting>, name: string | RegExp) =>
  scope.getByRole('textbox', { name });

async function type(field: ReturnType<typeof box>, words: string): Promise<void> {
  await field.fill(words);
  await userEvent.tab();
  await drawn();
}

describe('the worksheet', () => {
  it('is accessible: begun, filled, and with every part unfolded', async () => {
    await expectAccessible(await placeSheet(undefined, 'us'));
    const sheet = await placeSheet();
    await expectAccessible(sheet);
    for (const name of [
      'Where to hold the instrument',
      'How the mean speed is found',
      'How exact the instruments are',
    ]) {
      await text(name).last().click();
    }
    await setting(2)
      .last()
      .getByText(/Every step/)
      .click();
    await expectAccessible(sheet);
    await expect.element(picture(/4 places on one diameter/)).toBeVisible();
  });

  it('shows what each setting comes to, and what is still to be read', async () => {
    await placeSheet();
    await expect.element(setting(1).getByText('0\u2009m³/h at 2\u202f000\u2009Pa')).toBeVisible();
    await expect.element(setting(2).getByText('720\u2009m³/h at 1\u202f000\u2009Pa')).toBeVisible();
    await expect
      .element(setting(3).getByText('Still to be read: one reading of the air.'))
      .toBeVisible();
  });

  it('shows every step of a setting', async () => {
    await placeSheet();
    await setting(2)
      .getByText(/Every step/)
      .click();
    const rows = setting(2).getByRole('table').first();
    await expect
      .element(
        rows.getByRole('row', {
          name: /Mean speed 12\.5\sm\/s at the centre × 0\.8 10\.0\sm\/s/,
        }),
      )
      .toBeVisible();
    await expect
      .element(rows.getByRole('row', { name: /Velocity pressure .* 60\sPa/ }))
      .toBeVisible();
  });

  it('keeps each reading as it is typed, and makes a point once a setting is whole', async () => {
    const sheet = await placeSheet();
    const kept = heard(sheet, 'dc-test-sheet');
    await type(box(setting(3), /^4 · /), '14');
    expect(kept.at(-1)!.test.rows[2]!.air).toEqual({
      kind: 'velocity-traverse',
      readings: [14, 16, 16, 14],
    });
    await expect.element(setting(3).getByText(/1\s080\sm³\/h at 365\sPa/)).toBeVisible();
    await type(box(setting(3), /^4 · /), '');
    expect(kept.at(-1)!.test).toEqual(test);
  });

  it('tells how far each place of a traverse is from the wall', async () => {
    await placeSheet();
    // 0.043 and 0.29 of 159.6 mm.
    await expect.element(box(setting(3), /^1 · 6\.9\smm$/)).toBeVisible();
    await expect.element(box(setting(3), /^2 · 46\.3\smm$/)).toBeVisible();
  });

  it('keeps a reading over range as a bound and not as a point', async () => {
    const sheet = await placeSheet();
    const kept = heard(sheet, 'dc-test-sheet');
    await page.getByRole('checkbox', { name: 'The speed of setting 2 was over range' }).click();
    await drawn();
    expect(kept.at(-1)!.test.rows[1]!.air).toEqual({
      kind: 'velocity',
      reading: 12.5,
      overRange: true,
    });
    await expect
      .element(setting(2).getByText(/Over range: at least 720\sm³\/h, at most 1\s000\sPa/))
      .toBeVisible();
    await expect.element(text(/needs two different flows/)).toBeVisible();
  });

  it('carries a reading along to another way of reading the same', async () => {
    const sheet = await placeSheet();
    const kept = heard(sheet, 'dc-test-sheet');
    await setting(2)
      .getByRole('combobox', { name: 'Read of the air' })
      .selectOptions('velocity-traverse');
    await drawn();
    expect(kept.at(-1)!.test.rows[1]!.air).toEqual({
      kind: 'velocity-traverse',
      readings: [12.5, null, null, null],
    });
  });

  it('says what the instruments leave in doubt, once it is stated', async () => {
    const sheet = await placeSheet();
    await expect
      .element(text(/How exact the manometer at the tap and the anemometer are was not stated/))
      .toBeVisible();
    sheet.test = {
      ...test,
      instruments: { static: { absolute: 17.3205 }, velocity: { fraction: 0.0866 } },
    };
    await drawn();
    // Limits over √3 and twice that: 20 Pa, and 10 % of 720 m³/h.
    await expect
      .element(setting(2).getByText(/720\sm³\/h ± 72\sm³\/h at 1\s000\sPa ± /))
      .toBeVisible();
    await expect.element(setting(1).getByText(/at 2\s000\sPa ± 20\sPa/)).toBeVisible();
    await expect.element(text(/not stated/)).not.toBeInTheDocument();
  });

  it('sends its points only when asked, by rising flow', async () => {
    const sheet = await placeSheet();
    const taken = heard(sheet, 'dc-test-points');
    await button('Make these 2 points the curve').click();
    expect(taken).toHaveLength(1);
    expect(taken[0]!.test).toEqual(test);
    expect(taken[0]!.points.map(({ flow }) => flow)).toEqual([0, expect.closeTo(0.2, 12)]);
    expect(taken[0]!.points.map(({ pressure }) => pressure)).toEqual([
      2000,
      expect.closeTo(1000, 9),
    ]);
  });

  it('adds a setting in the way of the last, with the focus in it, and takes one out', async () => {
    const sheet = await placeSheet();
    const kept = heard(sheet, 'dc-test-sheet');
    await button('Add a setting').click();
    await drawn();
    expect(kept.at(-1)!.test.rows.at(-1)!.air).toEqual({
      kind: 'velocity-traverse',
      readings: [null, null, null, null],
    });
    await userEvent.keyboard('700{Enter}');
    await drawn();
    expect(kept.at(-1)!.test.rows.at(-1)!.static).toBe(700);
    await button('Take out setting 4').click();
    expect(kept.at(-1)!.test).toEqual(test);
  });

  it('begins with the air that it is given, and speaks the units of the reader', async () => {
    const sheet = await place<TestWorksheet>(
      html`<dc-test-worksheet
        .air=${{ kind: 'density', density: 1.05 }}
        .units=${'us'}
      ></dc-test-worksheet>`,
    );
    const kept = heard(sheet, 'dc-test-sheet');
    await type(page.getByRole('textbox', { name: 'Inside diameter of the pipe' }), '6');
    expect(kept.at(-1)!.test).toMatchObject({
      diameter: 0.1524,
      air: { kind: 'density', density: 1.05 },
    });
    await type(box(setting(1), 'Suction at the tap'), '8');
    await expect.element(setting(1).getByText('0\u2009cfm at 8.00\u2009in. w.g.')).toBeVisible();
  });

  it('complains where a reading cannot be, in words', async () => {
    const sheet = await placeSheet();
    sheet.test = {
      ...test,
      rows: [{ id: 'a', static: 20, air: { kind: 'velocity', reading: 12.5 } }],
    };
    await drawn();
    await expect.element(text(/One of the two readings is wrong/)).toBeVisible();
    await type(box(setting(1), 'Suction at the tap'), '-20');
    await expect.element(page.getByRole('alert').first()).toBeVisible();
  });
});
