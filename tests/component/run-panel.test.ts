import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/run-panel/run-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

async function placePanel() {
  const session = new Session(demoShop(), ['planer'], 'us');
  const panel = await placeUnder(session, 'dc-run-panel');
  panel.style.setProperty('--dc-run-height', '420px');
  await drawn();
  return { session, panel };
}
const drawing = () => page.getByRole('listbox', { name: /^Line drawing of the ducts/ });
const option = (name: string) => page.getByRole('option', { name: new RegExp(`^${name},`) });

describe('the run of a session', () => {
  it('is accessible, with its figures unfolded', async () => {
    const { panel } = await placePanel();
    await text(/^Figures/).click();
    await drawn();
    await expectAccessible(panel);
  });

  it('tells in its label where chips settle and what is tight', async () => {
    const { session } = await placePanel();
    const named = (verdicts: readonly string[]) =>
      verdicts.filter((name) => drawing().element().getAttribute('aria-label')?.includes(name));
    const tight = session.report.value.sections.filter(({ velocity }) => velocity > 22.86);
    expect(tight.length).toBeGreaterThan(0);
    const names = session.shop.value.sections
      .filter(({ id }) => tight.some((each) => each.id === id))
      .map(({ name = '' }) => name);
    expect(named(names)).toEqual(names);
  });

  it('selects everywhere what is selected in it, and shows what is selected elsewhere', async () => {
    const { session } = await placePanel();
    (option('Lathe').element() as SVGElement).dispatchEvent(
      new MouseEvent('click', { bubbles: true, composed: true }),
    );
    expect(session.selection.value).toEqual({ kind: 'drop', id: 'lathe' });
    session.select({ kind: 'section', id: 'west-1' });
    const selected = () =>
      page
        .getByRole('option', { selected: true })
        .elements()
        .map((each) => each.getAttribute('aria-label'));
    await expect.poll(selected).toEqual(['west leg, still']);
  });

  it('has every duct in its table, with the drop at its end and the speed of those that carry air', async () => {
    const { session } = await placePanel();
    await text(/^Figures/).click();
    await drawn();
    const rows = page.getByRole('row').elements().slice(1);
    expect(rows).toHaveLength(session.shop.value.sections.length);
    const cells = (name: string) => {
      const row = rows.find((each) => each.firstElementChild?.textContent?.includes(name));
      return [...(row?.children ?? [])].map((cell) => cell.textContent?.trim());
    };
    expect(cells('planer hose')[0]).toBe('planer hose, from Thickness planer');
    expect(cells('planer hose')[1]).toBe('planer drop');
    expect(cells('planer hose')[3]).toMatch(/^\d,\d{3}$/);
    expect(cells('lathe hose')[3]).toBe('–');
  });

  it('hands over its picture with a caption that tells unit and shapes', async () => {
    const { panel } = await placePanel();
    const picture = panel.renderRoot.querySelector('dc-run-drawing')?.picture;
    expect(picture?.dataset['caption']).toMatch(/^Speeds in ft\/min\./);
    expect(picture?.viewBox.baseVal.width).toBeGreaterThan(300);
  });
});
