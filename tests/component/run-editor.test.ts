// The run editor on a small shop and on the demo, worked as a maker would work it.
import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { checkShop } from '../../src/shop/open-shop.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/run-editor/run-editor.ts';
import { smallShop } from '../unit/shop/small-shop.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const row = (name: string) =>
  page.getByRole('button', { name: new RegExp(`^${name} (drop, |\\d)`) });
const box = (name: string) => page.getByRole('textbox', { name, exact: true });
const list = (name: string | RegExp) => page.getByRole('combobox', { name });
const focused = () => {
  let element = document.activeElement;
  while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
  return element;
};

async function placeEditor(shop = smallShop) {
  const session = new Session(shop, ['planer'], 'us');
  const element = await placeUnder(session, 'dc-run-editor');
  const section = (id: string) => session.shop.value.sections.find((each) => each.id === id);
  const drop = (id: string) => session.shop.value.drops.find((each) => each.id === id);
  return { element, session, section, drop };
}

async function type(name: string, words: string): Promise<void> {
  await box(name).fill(words);
  await userEvent.keyboard('{Enter}');
  await userEvent.tab();
  await drawn();
}

async function choose(name: string | RegExp, words: string): Promise<void> {
  await list(name).selectOptions(words);
  await drawn();
}

describe('the run editor', () => {
  it('is accessible, with every kind of form open', async () => {
    const { element, session } = await placeEditor(demoShop());
    await expectAccessible(element);
    for (const [kind, id] of [
      ['section', 'floor-sweep'],
      ['section', 'lathe-hose'],
      ['drop', 'blade-guard'],
    ] as const) {
      session.select({ kind, id });
      await drawn();
      await expectAccessible(element);
    }
  });

  it('goes from row to row by arrow keys, and opens and shuts a form by Enter', async () => {
    const { session } = await placeEditor();
    (row('Planer').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowDown}{ArrowDown}{Enter}');
    await drawn();
    expect(session.selection.value).toEqual({ kind: 'section', id: 'planer-run' });
    await userEvent.tab();
    expect(focused()?.textContent).toContain('Branch off halfway');
    await userEvent.keyboard('{Escape}');
    await drawn();
    expect(focused()?.getAttribute('aria-expanded')).toBe('true');
    await userEvent.keyboard('{End}');
    expect(focused()?.textContent).toContain('Main');
    await userEvent.keyboard('{Home}{ArrowUp}');
    expect(focused()?.textContent).toContain('Planer');
  });

  it('opens what is selected elsewhere', async () => {
    const { session } = await placeEditor();
    session.select({ kind: 'drop', id: 'saw' });
    await drawn();
    expect(row('Band saw').element().getAttribute('aria-expanded')).toBe('true');
    expect(page.getByRole('region', { name: 'Band saw' }).elements()).toHaveLength(1);
  });

  it('reads from the collector outwards instead', async () => {
    await placeEditor();
    const names = () =>
      page
        .getByRole('listitem')
        .elements()
        .map((each) => each.textContent?.trim().split(/\s{2,}/)[0]);
    const before = names();
    await button('From the collector').click();
    await drawn();
    expect(names()).toEqual(before.toReversed());
    expect(button('From the collector').element().getAttribute('aria-pressed')).toBe('true');
  });

  it('branches off, opens the new drop, and takes it back by one press', async () => {
    const { session } = await placeEditor();
    await row('Main').click();
    await button('Branch off halfway').click();
    await drawn();
    expect(session.shop.value.drops).toHaveLength(3);
    expect(session.selection.value).toEqual({ kind: 'drop', id: 'new-drop' });
    expect(focused()?.textContent).toContain('New drop');
    await button('Undo: A branch joins halfway along Main.').click();
    await drawn();
    expect(session.shop.value).toBe(smallShop);
    expect(button(/^Undo/).elements()).toHaveLength(0);
  });

  it('deletes without a question, moves on to what is left, and undoes', async () => {
    const { session } = await placeEditor();
    await row('Band saw').click();
    await button('Delete with its pipe').click();
    await drawn();
    expect(session.shop.value.drops.map(({ id }) => id)).toEqual(['planer']);
    expect(focused()?.textContent).toContain('Main');
    expect(text('Band saw deleted with its pipe.').elements()).toHaveLength(1);
    await button('Undo: Band saw deleted with its pipe.').click();
    expect(session.shop.value).toBe(smallShop);
  });

  it('forgets its notice once something else was edited', async () => {
    const { session } = await placeEditor();
    await row('Band saw').click();
    await button('Duplicate with its pipe').click();
    await drawn();
    expect(button(/^Undo/).elements()).toHaveLength(1);
    session.edit((shop) => ({ ...shop, name: 'Other' }));
    await drawn();
    expect(button(/^Undo/).elements()).toHaveLength(0);
  });

  it('leads a branch to another wye', async () => {
    const { section } = await placeEditor();
    await page.getByRole('button', { name: /^Section saw-run/ }).click();
    await choose('Move this branch to another wye', 'Section planer-run');
    await button('Move it there').click();
    expect(section('saw-run')?.into).toBe('planer-run');
  });

  it('takes a length as people write it, and keeps what it can’t understand', async () => {
    const { section } = await placeEditor();
    await row('Main').click();
    await type('Length', '12\' 6"');
    expect(section('main')?.length).toBeCloseTo(3.81, 12);
    await type('Length', '3,8 m');
    expect(section('main')?.length).toBe(3.8);
    await type('Length', 'about so long');
    expect(section('main')?.length).toBe(3.8);
    expect((box('Length').element() as HTMLInputElement).value).toBe('about so long');
    expect(text(/does not begin with a number/).elements()).toHaveLength(1);
  });

  it('chooses a pipe by family and size, shows the true inside, marks and puts back its wall', async () => {
    const { section } = await placeEditor();
    await row('Main').click();
    expect((box('Inside diameter').element() as HTMLInputElement).value).toBe('5.91');
    await choose('Kind of pipe', 'PVC, schedule 40');
    await choose('Size', '4 in.');
    expect(text(/^4.03\u2009in. inside · ASTM D1785/).elements()).toHaveLength(1);
    await type('Roughness of the wall', '0.05 mm');
    expect(section('main')?.pipe).toMatchObject({ size: '4in', roughness: 5e-5 });
    expect(text(/^entered, in place of/).elements()).toHaveLength(1);
    await button(/^Put back .*Roughness of the wall$/).click();
    expect(section('main')?.pipe).not.toHaveProperty('roughness');
  });

  it('counts the pushing together of a hose only while it is a hose', async () => {
    const { section } = await placeEditor();
    await page.getByRole('button', { name: /^Section saw-run/ }).click();
    await choose('Kind of pipe', 'Flexible hose, wire helix');
    await type('Pushed together by', '10');
    expect(section('saw-run')?.compression).toBeCloseTo(0.1, 12);
    expect(text(/^friction × \d/).elements()).toHaveLength(1);
    await choose('Kind of pipe', 'Galvanised steel, spiral');
    expect(section('saw-run')).not.toHaveProperty('compression');
  });

  it('adds, changes, overrides and removes fittings', async () => {
    const { section } = await placeEditor();
    await row('Main').click();
    await button('Add elbow of pieces').click();
    await drawn();
    const elbow = page.getByRole('group', { name: 'Elbow of pieces, fitting 2' });
    await elbow.getByRole('textbox', { name: 'How many' }).fill('2');
    await userEvent.keyboard('{Enter}');
    await elbow.getByRole('textbox', { name: 'K of each' }).fill('0.4');
    await userEvent.keyboard('{Enter}');
    await drawn();
    expect(section('main')?.fittings[1]).toMatchObject({ count: 2, coefficient: 0.4 });
    await button('Put back 0.24, K of each').click();
    await button('Remove Smooth bend, fitting 1').click();
    await drawn();
    expect(section('main')?.fittings).toEqual([
      { kind: 'gored', pieces: 5, radius: 1.5, angle: 90, count: 2 },
    ]);
  });

  it('takes back a walk through a list of a fitting by one press, apart from what went before', async () => {
    const { section, session } = await placeEditor();
    await row('Main').click();
    await button('Add elbow of pieces').click();
    await drawn();
    for (const pieces of ['4', '3', '4', '3']) await choose('Pieces', pieces);
    expect(section('main')?.fittings[1]).toMatchObject({ pieces: 3 });
    session.undo();
    expect(section('main')?.fittings[1]).toMatchObject({ pieces: 5 });
    session.undo();
    expect(section('main')?.fittings).toEqual(smallShop.sections[0]?.fittings);
  });

  it('refuses half a fitting, in words, and leaves the shop alone', async () => {
    const { section } = await placeEditor();
    await row('Main').click();
    await type('How many', '1.5');
    expect(section('main')?.fittings).toEqual(smallShop.sections[0]?.fittings);
    expect(text(/whole number/).elements()).toHaveLength(1);
  });

  it('changes the angle of a wye, or fixes its coefficient', async () => {
    const { section } = await placeEditor();
    await page.getByRole('button', { name: /^Section saw-run/ }).click();
    await type('Angle, 0 for straight on', '30°');
    expect(section('saw-run')?.join).toEqual({ kind: 'momentum', angle: 30 });
    await choose('How it joins', 'By a fixed coefficient');
    expect(section('planer-run')?.join?.kind).toBe('fixed');
    await button('Put back by angle and flows').click();
    expect(section('saw-run')?.join).toEqual({ kind: 'momentum', angle: 45 });
  });

  it('shows the reducer that was put in, changes it and puts it back', async () => {
    const { section } = await placeEditor();
    await page.getByRole('button', { name: /^Section planer-end/ }).click();
    await choose(/^Reducer, 3.94.in. to 4.92.in.$/, 'A step');
    expect(section('planer-end')?.transition).toEqual({ kind: 'sudden' });
    await button('Put back the 30° cone').click();
    expect(section('planer-end')).not.toHaveProperty('transition');
  });

  it('takes a reading of a hood once both halves fit, and says so where they don’t', async () => {
    const { drop } = await placeEditor();
    await row('Band saw').click();
    await choose('Hood', 'Measured on the machine');
    await type('Suction behind the hood', '100 Pa');
    await type('Speed there at the same time', '20 m/s');
    expect(drop('saw')?.hood.kind).toBe('coefficient');
    expect(text(/One of the two readings is wrong/).elements()).toHaveLength(1);
    await type('Suction behind the hood', '500 Pa');
    expect(drop('saw')?.hood).toEqual({ kind: 'measured', suction: 500, velocity: 20 });
    await choose('Hood', 'Plain pipe end');
    expect(drop('saw')?.hood).toEqual({ kind: 'table', id: 'plain-end' });
  });

  it('sets machine, need, port, gate and note of a drop', async () => {
    const { session, drop } = await placeEditor();
    await row('Band saw').click();
    await type('Name', 'Big saw');
    await choose('Machine of the table', 'Band saw');
    await button('Put back 400\u2009cfm, Air it needs').click();
    await type('Port, inside diameter', '5 in');
    await page.getByRole('checkbox').click();
    await box('Note').fill('Behind the door.');
    await userEvent.tab();
    await drawn();
    expect(drop('saw')).toMatchObject({
      name: 'Big saw',
      machine: 'band-saw',
      port: 0.127,
      note: 'Behind the door.',
    });
    expect(drop('saw')).not.toHaveProperty('need');
    expect(drop('saw')).not.toHaveProperty('gate');
    expect(checkShop(session.shop.value)).toEqual([]);
  });

  it.each([1300, 760, 358])(
    'cuts nothing off at %d px, and keeps targets of 44 px',
    async (width) => {
      const { element, session } = await placeEditor(demoShop());
      element.style.setProperty('display', 'block');
      element.style.setProperty('inline-size', `${width}px`);
      session.select({ kind: 'section', id: 'floor-sweep' });
      await drawn();
      expect(element.scrollWidth).toBeLessThanOrEqual(width);
      for (const each of page.getByRole('button').elements()) {
        expect(each.getBoundingClientRect().height, each.textContent ?? '').toBeGreaterThanOrEqual(
          44,
        );
      }
    },
  );
});
