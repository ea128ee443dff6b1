import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { Announcer } from '../../src/ui/announcer/announcer.ts';
import '../../src/ui/announcer/announcer.ts';
import { expect, expectAccessible, html, place } from './harness.ts';

const spoken = () => page.getByRole('status').element().textContent;
const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));

describe('the announcer', () => {
  it('is accessible', async () => {
    await expectAccessible(await place(html`<dc-announcer text="a"></dc-announcer>`));
  });

  it('keeps quiet at first, and while the text changes', async () => {
    const announcer = await place<Announcer>(
      html`<dc-announcer text="at the start"></dc-announcer>`,
    );
    await wait(600);
    expect(spoken()).toBe('');
    for (const words of ['one', 'two', 'three']) {
      announcer.text = words;
      await wait(100);
    }
    expect(spoken()).toBe('');
  });

  it('speaks once, half a second after the last change', async () => {
    const announcer = await place<Announcer>(
      html`<dc-announcer text="at the start"></dc-announcer>`,
    );
    announcer.text = 'Planer open';
    await wait(700);
    expect(spoken()).toBe('Planer open');
  });
});
