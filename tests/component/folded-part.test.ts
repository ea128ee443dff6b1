import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '../../src/ui/folded-part/folded-part.ts';
import { drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const placePart = () =>
  place<HTMLElement>(html`<dc-folded-part heading="Collector" figures="5 hp, 8 points">
    <p>Inside</p>
  </dc-folded-part>`);

describe('a folded part', () => {
  it('is accessible', async () => {
    await expectAccessible(await placePart());
  });

  it('shows its heading and figures, and the rest when it is unfolded by key', async () => {
    const part = await placePart();
    const unfolded = heard(part, 'dc-unfold');
    expect(page.getByRole('heading', { level: 2, name: 'Collector' }).elements()).toHaveLength(1);
    expect(text('5 hp, 8 points').elements()).toHaveLength(1);
    expect((text('Inside').element() as HTMLElement).checkVisibility()).toBe(false);
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    await drawn();
    expect((text('Inside').element() as HTMLElement).checkVisibility()).toBe(true);
    await userEvent.keyboard('{Enter}');
    await userEvent.keyboard('{Enter}');
    await drawn();
    expect(unfolded).toHaveLength(1);
  });
});
