import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { CurvePoint } from '../../src/curve/curve-data.ts';
import type { PointsTable } from '../../src/ui/points-table/points-table.ts';
import '../../src/ui/points-table/points-table.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const POINTS = [
  { flow: 0, pressure: 2000 },
  { flow: 0.25, pressure: 1500 },
  { flow: 0.5, pressure: 400 },
];
const placeTable = (points: readonly CurvePoint[] = POINTS) =>
  place<PointsTable>(
    html`<dc-points-table .points=${points} .units=${'metric'} pressure="Suction"></dc-points-table>`,
  );
const flow = (i: number) => page.getByRole('textbox', { name: `Flow of point ${i}`, exact: true });
const pressure = (i: number) =>
  page.getByRole('textbox', { name: `Suction of point ${i}`, exact: true });
const flows = () =>
  page
    .getByRole('textbox', { name: /^Flow/ })
    .elements()
    .map((element) => (element as HTMLInputElement).value);

async function type(box: ReturnType<typeof flow>, words: string): Promise<void> {
  await box.fill(words);
  await userEvent.tab();
  await drawn();
}

describe('the table of points', () => {
  it('is accessible, empty and full', async () => {
    await expectAccessible(await placeTable());
    await expectAccessible(await placeTable([]));
  });

  it('takes a point typed below the others and sorts it in once its row is left', async () => {
    const table = await placeTable();
    const events = heard(table, 'dc-points');
    await button('Add a point').click();
    await userEvent.keyboard('360');
    await userEvent.tab();
    expect(flows()).toEqual(['0', '900', '1800', '360']);
    await userEvent.keyboard('1800');
    // Past the box for its use and the button that removes it, out of the row.
    for (let stop = 0; stop < 3; stop++) await userEvent.tab();
    await drawn();
    expect(flows()).toEqual(['0', '360', '900', '1800']);
    expect(events.at(-1)!.points).toEqual(POINTS.toSpliced(1, 0, { flow: 0.1, pressure: 1800 }));
  });

  it('is saved as CSV in the units shown, with what is set aside', async () => {
    await placeTable([POINTS[0]!, { ...POINTS[1]!, aside: true }, POINTS[2]!]);
    let file: Blob | undefined;
    const createObjectURL = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (blob: Blob) => {
      file = blob;
      return createObjectURL(blob);
    };
    try {
      await button('Save as CSV: Points of the curve').click();
    } finally {
      URL.createObjectURL = createObjectURL;
    }
    expect(((await file?.text()) ?? '').trim().split('\r\n')).toEqual([
      'Flow [m³/h],Suction [Pa],Remark',
      '0,2000,',
      '900,1500,set aside',
      '1800,400,',
    ]);
  });

  it('has nothing to save while it has no points', async () => {
    await placeTable([]);
    expect(page.getByRole('button', { name: /^Save as CSV/ }).query()).toBeNull();
  });

  it('keeps the focus where it went though rows move under it', async () => {
    await placeTable();
    await flow(1).fill('2000');
    await pressure(2).click();
    await drawn();
    expect(flows()).toEqual(['900', '1800', '2000']);
    const focused = document.activeElement?.shadowRoot?.activeElement?.getAttribute('label');
    expect(focused).toBe('Suction of point 1');
  });

  it('says at the row which flow stands there twice, and sends nothing until it is right', async () => {
    const table = await placeTable();
    const events = heard(table, 'dc-points');
    await type(flow(2), '1800');
    expect(text(/1.800.m³\/h stands here a second time/).elements()).toHaveLength(1);
    expect(text(/the former points hold/).elements()).toHaveLength(1);
    expect(events).toEqual([]);
    await type(flow(2), '1000');
    expect(events).toHaveLength(1);
    expect(page.getByRole('alert').elements()).toHaveLength(0);
  });

  it('removes a point, and asks for two at least', async () => {
    const table = await placeTable();
    const events = heard(table, 'dc-points');
    await button('Remove point 2').click();
    expect(events.map(({ points }) => points.length)).toEqual([2]);
    await button('Remove point 2').click();
    expect(text(/two points at least/).elements()).toHaveLength(1);
    expect(events).toHaveLength(1);
  });

  it('takes two pasted columns at once', async () => {
    const table = await placeTable([]);
    const events = heard(table, 'dc-points');
    const data = new DataTransfer();
    data.setData('text/plain', 'm³/h\tPa\n1800\t400\n0\t2000\n900\t1500');
    const paste = { clipboardData: data, bubbles: true, composed: true, cancelable: true };
    flow(1).element().dispatchEvent(new ClipboardEvent('paste', paste));
    await drawn();
    expect(flows()).toEqual(['0', '900', '1800']);
    expect(events.map(({ points }) => points)).toEqual([POINTS]);
  });

  it('asks in words where a pasted text leaves something open, and sends once it is answered', async () => {
    const table = await placeTable();
    const events = heard(table, 'dc-points');
    const data = new DataTransfer();
    data.setData('text/plain', '0\t4900\n1800\t400');
    const paste = { clipboardData: data, bubbles: true, composed: true, cancelable: true };
    flow(1).element().dispatchEvent(new ClipboardEvent('paste', paste));
    await drawn();
    expect(text(/^No unit is written for the flows, 0 to 1800/).elements()).toHaveLength(1);
    await expectAccessible(table);
    expect(events).toEqual([]);
    await button('m³/h').click();
    expect(events.map(({ points }) => points)).toEqual([
      [
        { flow: 0, pressure: 4900 },
        { flow: 0.5, pressure: 400 },
      ],
    ]);
    expect(text(/^Understood: 2 points: flow in m³\/h, pressure in Pa/).elements()).toHaveLength(1);
  });

  it('sets a point aside without losing it, and takes it back', async () => {
    const table = await placeTable();
    const events = heard(table, 'dc-points');
    await page.getByRole('checkbox', { name: 'Use point 2' }).click();
    expect(events.at(-1)!.points[1]).toEqual({ ...POINTS[1], aside: true });
    await expectAccessible(table);
    await page.getByRole('checkbox', { name: 'Use point 2' }).click();
    expect(events.at(-1)!.points).toEqual(POINTS);
  });

  it('points at a doubtful reading in its row, and does what is suggested', async () => {
    const pressures = [2400, 2350, 2200, 2450, 1500, 900];
    const table = await placeTable(pressures.map((pressure, i) => ({ flow: 0.1 * i, pressure })));
    const events = heard(table, 'dc-points');
    expect(text(/^Point 4: 2.450.Pa lies .* above the line/).elements()).toHaveLength(1);
    await expectAccessible(table);
    await button('Set it aside').click();
    expect(events.at(-1)!.points[3]).toMatchObject({ pressure: 2450, aside: true });
    expect(text(/above the line/).elements()).toHaveLength(0);
  });

  it('says nothing of a point on the move until it rests', async () => {
    const table = await placeTable();
    table.moving = true;
    table.points = [POINTS[0]!, { flow: 0.25, pressure: 30000 }, POINTS[2]!];
    await drawn();
    expect(pressure(2).element()).toHaveProperty('value', '30000');
    expect(text(/^Point 2:/).elements()).toHaveLength(0);
    table.moving = false;
    await drawn();
    expect(text(/^Point 2:/).elements()).toHaveLength(1);
  });

  it('shows points that come from elsewhere, such as after an undo', async () => {
    const table = await placeTable();
    await type(flow(2), '1000');
    table.points = POINTS.slice(0, 2);
    await drawn();
    expect(flows()).toEqual(['0', '900']);
  });

  it('begins with empty rows, and makes a curve of what is filled', async () => {
    const table = await placeTable([]);
    const events = heard(table, 'dc-points');
    expect(flows()).toEqual(['', '', '', '', '']);
    await type(flow(1), '0');
    await type(pressure(1), '10 in. w.g.');
    await type(flow(2), '600 cfm');
    expect(events).toEqual([]);
    await type(pressure(2), '4 ft');
    expect(page.getByRole('alert').element().textContent).toMatch(/not a pressure/);
    await type(pressure(2), '4 in. w.g.');
    expect(events.at(-1)!.points).toEqual([
      { flow: 0, pressure: 2490.8891 },
      { flow: 0.28316846592, pressure: 996.35564 },
    ]);
  });
});
