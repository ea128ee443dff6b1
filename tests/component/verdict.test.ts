import { describe, it } from 'vitest';
import '../../src/ui/verdict/verdict.ts';
import { expect, expectAccessible, html, place, text } from './harness.ts';

describe('a verdict', () => {
  it('is accessible, whatever it says', async () => {
    for (const verdict of ['shut', 'settles', 'short', 'tight', 'carries']) {
      const mark = await place(html`<dc-verdict verdict=${verdict}></dc-verdict>`);
      await expectAccessible(mark);
    }
  });

  it('is told in words', async () => {
    await place(html`<dc-verdict verdict="short"></dc-verdict>`);
    expect(text('short of air').elements()).toHaveLength(1);
  });
});
