import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { GateSetView } from '../../src/ui/gate-sets/gate-sets.ts';
import '../../src/ui/gate-sets/gate-sets.ts';
import { button, expect, expectAccessible, heard, html, place } from './harness.ts';

const sets = (current: boolean): GateSetView[] => [
  { id: 'saws', name: 'Both saws', open: ['table-saw', 'band-saw'], current },
];
const placeSets = (current: boolean, open = true) =>
  place(html`<dc-gate-sets .sets=${sets(current)} .open=${open}></dc-gate-sets>`);
const focused = () => document.activeElement?.shadowRoot?.activeElement;
const name = () => page.getByRole('textbox', { name: 'Name of the set' });

describe('the sets of gates', () => {
  it('are accessible, while one is named too', async () => {
    const element = await placeSets(false);
    await expectAccessible(element);
    await button('Save as a set').click();
    await expectAccessible(element);
    await expectAccessible(await placeSets(true));
  });

  it('save what is open under a name, by keyboard', async () => {
    const saved = heard(await placeSets(false), 'dc-save-set');
    (button('Save as a set').element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    await expect.poll(focused).toBe(name().element());
    await userEvent.keyboard('{Enter}');
    expect(saved).toHaveLength(0);
    await userEvent.keyboard('  Rough milling {Enter}');
    expect(saved.map((event) => event.name)).toEqual(['Rough milling']);
    await expect.poll(focused).toBe(button('Save as a set').element());
  });

  it('leave it at Escape', async () => {
    const saved = heard(await placeSets(false), 'dc-save-set');
    await button('Save as a set').click();
    await userEvent.keyboard('x{Escape}');
    expect(name().elements()).toHaveLength(0);
    expect(saved).toHaveLength(0);
  });

  it('offer to take out the one in use, and nothing to save while it is', async () => {
    const removed = heard(await placeSets(true), 'dc-remove-set');
    expect(button('Save as a set').elements()).toHaveLength(0);
    await button('Remove set Both saws').click();
    expect(removed.map(({ set }) => set)).toEqual(['saws']);
  });

  it('have nothing to save where all is shut', async () => {
    await placeSets(false, false);
    expect(button('Save as a set').elements()).toHaveLength(0);
    expect(button('Remove set Both saws').elements()).toHaveLength(0);
  });
});
