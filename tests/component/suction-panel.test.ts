import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/suction-panel/suction-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, picture, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const begin = (open: readonly string[] = ['planer', 'floor-sweep']) =>
  new Session(demoShop(), open, 'us');
const placePanel = async (session: Session) => {
  const panel = await placeUnder(session, 'dc-suction-panel');
  await drawn();
  return panel;
};
const chooser = () => page.getByRole('combobox', { name: 'Drop' });
const chosen = () => {
  const select = chooser().element() as HTMLSelectElement;
  return select.selectedOptions[0]?.textContent?.trim();
};

describe('where the suction goes', () => {
  it('is accessible, with and without anything open', async () => {
    await expectAccessible(await placePanel(begin()));
  });

  it('is accessible when nothing moves, and says so', async () => {
    const session = begin([]);
    await expectAccessible(await placePanel(session));
    expect(text('Nothing is open: no air moves.').elements()).toHaveLength(1);
    expect(picture(/Suction from the hood/).elements()).toHaveLength(0);
  });

  it('begins with the drop that is worst off, and names the largest losses', async () => {
    await placePanel(begin());
    expect(chosen()).toBe('worst off: Thickness planer');
    const words = /Thickness planer: of .*ft of pipe takes \d+.%, the hood \d+.%/;
    expect(text(words).elements()).toHaveLength(1);
    expect(
      picture(/^Suction from the hood to the collector\. Thickness planer: of/).elements(),
    ).toHaveLength(1);
  });

  it('shows another drop when it is chosen, and selects it everywhere', async () => {
    const session = begin();
    await placePanel(session);
    await userEvent.selectOptions(chooser(), 'Floor sweep');
    expect(session.selection.value).toEqual({ kind: 'drop', id: 'floor-sweep' });
    await drawn();
    expect(text(/^Floor sweep: of/).elements()).toHaveLength(1);
    expect(text('grate').elements()).toHaveLength(1);
    await userEvent.selectOptions(chooser(), '');
    expect(session.selection.value).toBeUndefined();
  });

  it('follows what is selected elsewhere, a section too', async () => {
    const session = begin();
    await placePanel(session);
    session.select({ kind: 'section', id: 'floor-sweep' });
    await drawn();
    expect(chosen()).toBe('Floor sweep');
    session.select({ kind: 'drop', id: 'lathe' });
    await expect.poll(chosen).toBe('Lathe, shut');
    expect(text(/^Lathe, shut: of .* the gate takes/).elements()).toHaveLength(1);
  });

  it('can be read along its lines by the keys', async () => {
    await placePanel(begin());
    const reader = page.getByRole('slider', { name: /where the suction goes/ });
    (reader.element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    await expect
      .poll(() => reader.element().getAttribute('aria-valuetext'))
      .toMatch(/total suction: 7\.15.*after the 2 bends of 90°/);
  });

  it('has its figures in a table that says the same', async () => {
    await placePanel(begin());
    await text(/^Figures/).click();
    const rows = page.getByRole('row').elements();
    expect(rows).toHaveLength(17);
    expect(rows.at(-1)?.textContent).toContain('7.15');
  });
});
