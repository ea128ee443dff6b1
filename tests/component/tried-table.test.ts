import { describe, it } from 'vitest';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/tried-table/tried-table.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const session = new Session(demoShop(), ['lathe'], 'us');
session.dragGate('table-saw', 0.5);
session.rest();
const trail = session.trail.value;
const placeTable = () =>
  place(html`<dc-tried-table .trail=${trail} .units=${'us'}></dc-tried-table>`);
const unfold = async () => {
  await text(/^Tried so far: 2/).click();
  await drawn();
};

describe('what was tried so far', () => {
  it('is accessible, folded and unfolded', async () => {
    const table = await placeTable();
    await expectAccessible(table);
    await unfold();
    await expectAccessible(table);
  });

  it('lists gates, flow, suction, slowest speed and verdict, the latest first', async () => {
    const table = await placeTable();
    await unfold();
    const rows = [...table.shadowRoot!.querySelectorAll('tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent),
    );
    expect(rows.map(([gates]) => gates)).toEqual(['Table saw half open, Lathe', 'Lathe']);
    expect(rows[0]).toHaveLength(6);
    expect(rows[1]![5]).toMatch(/settles|short|tight|carries/);
    for (const unit of ['cfm', 'in. w.g.', 'ft/min']) {
      expect(text(unit).elements().length, unit).toBe(1);
    }
  });

  it('can be cleared', async () => {
    const cleared = heard(await placeTable(), 'dc-clear-trail');
    await unfold();
    await button('Clear what was tried').click();
    expect(cleared).toHaveLength(1);
  });
});
