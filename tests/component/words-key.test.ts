import { describe, it } from 'vitest';
import '../../src/ui/words-key/words-key.ts';
import { expect, expectAccessible, html, place, text } from './harness.ts';

describe('the key to the verdicts', () => {
  it('is accessible', async () => {
    await expectAccessible(await place(html`<dc-words-key></dc-words-key>`));
  });

  it('tells each verdict with the number it turns on, in the reader’s units', async () => {
    await place(html`<dc-words-key .units=${'metric'}></dc-words-key>`);
    for (const words of ['settles', 'short of air', 'tight', 'carries', /17\.8/, /22\.9/]) {
      expect(text(words).elements().length, `${words}`).toBeGreaterThanOrEqual(1);
    }
  });
});
