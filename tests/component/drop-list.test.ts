import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { formatQuantity } from '../../src/units/format.ts';
import type { DropView } from '../../src/state/drop-views.ts';
import '../../src/ui/drop-list/drop-list.ts';
import type { GateSetView } from '../../src/ui/gate-sets/gate-sets.ts';
import { button, expect, expectAccessible, heard, html, place } from './harness.ts';

const drop = (id: string): DropView => ({
  id,
  name: id,
  travel: 0,
  flow: formatQuantity('flow', 'us', 0),
  need: undefined,
  speed: undefined,
  slowest: undefined,
  range: { low: 17.78, high: 22.86 },
  verdict: 'shut',
});
const sets: GateSetView[] = [
  { id: 'saws', name: 'Both saws', open: ['Table saw', 'Band saw'], current: true },
  { id: 'turning', name: 'Turning', open: ['Lathe'], current: false },
];
const placeList = () =>
  place(
    html`<dc-drop-list
      .drops=${['Table saw', 'Band saw', 'Lathe'].map(drop)}
      .sets=${sets}
    ></dc-drop-list>`,
  );

describe('the list of drops', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeList());
  });

  it('has a row a drop, in order', async () => {
    await placeList();
    const names = page
      .getByRole('heading', { level: 3 })
      .elements()
      .map((each) => each.textContent);
    expect(names).toEqual(['Table saw', 'Band saw', 'Lathe']);
    expect(page.getByRole('listitem').elements()).toHaveLength(3);
  });

  it('opens the gates that are used together, and marks the set in use', async () => {
    const chosen = heard(await placeList(), 'dc-gate-set');
    expect(button('Both saws').element().getAttribute('aria-pressed')).toBe('true');
    expect(button('Turning').element().getAttribute('aria-pressed')).toBe('false');
    await button('Turning').click();
    await button('Shut all').click();
    expect(chosen.map(({ open }) => open)).toEqual([['Lathe'], []]);
  });
});
