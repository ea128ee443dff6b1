import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/drops-panel/drops-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, slider, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

async function placePanel() {
  const session = new Session(demoShop(), ['planer'], 'us');
  const panel = await placeUnder(session, 'dc-drops-panel');
  await drawn();
  return { session, panel };
}

describe('the drops of a session', () => {
  it('are accessible', async () => {
    await expectAccessible((await placePanel()).panel);
  });

  it('have a gate each, and tell what the range means in the session’s numbers', async () => {
    const { session } = await placePanel();
    for (const { name } of session.shop.value.drops) {
      expect(slider(`Gate, ${name}`).elements(), name).toHaveLength(1);
    }
    expect(text(/slower than 3,500\sft\/min/).elements()).toHaveLength(1);
    session.units.value = 'metric';
    await drawn();
    expect(text(/slower than 17\.8\sm\/s/).elements()).toHaveLength(1);
  });

  it('save the open gates as a set under a name of one’s own, and forget it again', async () => {
    const { session } = await placePanel();
    const before = session.shop.value.gateSets;
    await button('Save as a set').click();
    await drawn();
    await userEvent.keyboard('Planing alone{Enter}');
    await drawn();
    expect(session.shop.value.gateSets.slice(before.length)).toEqual([
      { id: 'planing-alone', name: 'Planing alone', open: ['planer'] },
    ]);
    await button('Remove set Planing alone').click();
    expect(session.shop.value.gateSets).toEqual(before);
  });

  it('list what was tried', async () => {
    const { session } = await placePanel();
    session.openOnly(['lathe']);
    session.showGates(session.gates.peek());
    session.rest();
    await drawn();
    await text('Tried so far: 2').click();
    await drawn();
    const rows = page.getByRole('row').elements().slice(1);
    expect(rows.map((row) => row.firstElementChild?.textContent?.trim())).toEqual([
      'Lathe',
      'Thickness planer',
    ]);
  });
});
