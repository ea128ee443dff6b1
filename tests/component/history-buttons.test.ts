// Undo and redo, on the page that holds the session.
import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { renameShop } from '../../src/shop/edits/edit-shop.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/quantity-field/quantity-field.ts';
import '../../src/ui/shop-page/shop-page.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, html, placeWhole } from './harness.ts';

async function edited(): Promise<Session> {
  const session = new Session(demoShop(), ['planer'], 'us');
  await placeWhole(html`<div><dc-shop-page .session=${session}></dc-shop-page></div>`);
  session.edit(renameShop('First'));
  session.edit(renameShop('Second'));
  await drawn();
  return session;
}
const isOff = (name: string) => (button(name).element() as HTMLButtonElement).disabled;

describe('undo and redo', () => {
  it('can be pressed only where there is something to take back', async () => {
    const session = await edited();
    expect([isOff('Undo'), isOff('Redo')]).toEqual([false, true]);
    await button('Undo').click();
    await button('Undo').click();
    expect(session.shop.value.name).toBe('Heron Lane paddle works');
    await drawn();
    expect([isOff('Undo'), isOff('Redo')]).toEqual([true, false]);
    await button('Redo').click();
    expect(session.shop.value.name).toBe('First');
  });

  it('follow the keys', async () => {
    const session = await edited();
    const name = () => session.shop.value.name;
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(name()).toBe('First');
    await userEvent.keyboard('{Control>}{Shift>}Z{/Shift}{/Control}');
    expect(name()).toBe('Second');
    await userEvent.keyboard('{Meta>}z{/Meta}');
    await userEvent.keyboard('{Control>}y{/Control}');
    expect(name()).toBe('Second');
    await userEvent.keyboard('z{Shift>}Z{/Shift}');
    expect(name()).toBe('Second');
  });

  it('leave the keys to a field while somebody types in it', async () => {
    const session = await edited();
    const field = document.createElement('dc-quantity-field');
    field.label = 'Length';
    document.querySelector('dc-shop-page')!.after(field);
    await page.getByRole('textbox', { name: 'Length' }).fill('12');
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(session.shop.value.name).toBe('Second');
  });
});
