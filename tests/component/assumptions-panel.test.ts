import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { setAir } from '../../src/shop/edits/edit-shop.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/assumptions-panel/assumptions-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const HEADING = 'What was assumed, and where each figure comes from';

async function placePanel() {
  const session = new Session(demoShop(), ['planer'], 'us');
  const panel = await placeUnder(session, 'dc-assumptions-panel');
  return { session, panel };
}
const rows = () => page.getByRole('listitem').elements();
const rowOf = (what: string) => rows().find(({ textContent }) => textContent?.includes(what));

describe('what was assumed', () => {
  it('is accessible, folded and unfolded', async () => {
    const { panel } = await placePanel();
    await expectAccessible(panel);
    await text(HEADING).click();
    await expectAccessible(panel);
  });

  it('is folded until it is wanted', async () => {
    await placePanel();
    expect(rows()).toHaveLength(0);
    await text(HEADING).click();
    expect(rows().length).toBeGreaterThan(20);
  });

  it('gives every figure a source, or says that it has none', async () => {
    await placePanel();
    await text(HEADING).click();
    const sure =
      /(entered for this shop|verified|common practice, no source|from memory, unverified)$/;
    const bare = rows().filter(({ textContent }) => !sure.test(textContent?.trim() ?? ''));
    expect(bare.map(({ textContent }) => textContent)).toEqual([]);
  });

  it('can be saved as a table', async () => {
    await placePanel();
    await text(HEADING).click();
    await expect.element(button('Save as CSV: What was assumed')).toBeVisible();
  });

  it('follows edits and units', async () => {
    const { session } = await placePanel();
    await text(HEADING).click();
    expect(rowOf('Density of its air')?.textContent).toContain('lb/ft³');
    session.edit(setAir({ kind: 'plain', density: 1.1, viscosity: 1.8e-5 }));
    session.units.value = 'metric';
    await drawn();
    expect(rowOf('1.100')?.textContent).toContain('kg/m³');
    expect(rowOf('Density of its air')?.textContent ?? '').not.toContain('lb/ft³');
  });
});
