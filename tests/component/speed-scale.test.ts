import { describe, it } from 'vitest';
import '../../src/ui/speed-scale/speed-scale.ts';
import { expect, expectAccessible, html, picture, place } from './harness.ts';

describe('a speed scale', () => {
  it('is accessible', async () => {
    const scale = await place(
      html`<dc-speed-scale label="Planer: 4,050 ft/min, carries" speed="20" slowest="12"></dc-speed-scale>`,
    );
    await expectAccessible(scale);
  });

  it('says in words what it shows', async () => {
    await place(html`<dc-speed-scale label="Planer: 4,050 ft/min, carries"></dc-speed-scale>`);
    expect(picture('Planer: 4,050 ft/min, carries').elements()).toHaveLength(1);
  });

  it('keeps within its width however fast the air is', async () => {
    const scale = await place(html`<dc-speed-scale label="fast" speed="200"></dc-speed-scale>`);
    const { width } = picture('fast').element().getBoundingClientRect();
    expect(width).toBeLessThanOrEqual(scale.getBoundingClientRect().width);
  });
});
