import { describe, it } from 'vitest';
import '../../src/ui/cautions/cautions.ts';
import { expect, expectAccessible, html, place, text } from './harness.ts';

describe('the cautions', () => {
  it('are accessible', async () => {
    await expectAccessible(await place(html`<dc-cautions></dc-cautions>`));
  });

  it.each([
    /harms lungs/,
    /explode/,
    /static charge/,
    /Electrical work/,
    /not a code-compliance/,
    /Local codes/,
  ])('name %s', async (danger) => {
    await place(html`<dc-cautions></dc-cautions>`);
    expect(text(danger).elements().length).toBeGreaterThanOrEqual(1);
  });
});
