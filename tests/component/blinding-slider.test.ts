import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { BlindingSlider } from '../../src/ui/blinding-slider/blinding-slider.ts';
import '../../src/ui/blinding-slider/blinding-slider.ts';
import { expect, expectAccessible, heard, html, place, slider, text } from './harness.ts';

const placeSlider = (blinding = 1.5) =>
  place<BlindingSlider>(html`<dc-blinding-slider .blinding=${blinding}></dc-blinding-slider>`);
const end = () => (slider('How blind the filter is').element() as HTMLInputElement).max;

describe('the blinding slider', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeSlider());
  });

  it('tells each step of a key, and that it came to rest', async () => {
    const events = heard(await placeSlider(), 'dc-blinding');
    (slider('How blind the filter is').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    await userEvent.keyboard('{Home}');
    expect(events.map(({ blinding, move }) => [blinding, move])).toEqual([
      [1.6, 'drag'],
      [1.6, 'rest'],
      [1, 'drag'],
      [1, 'rest'],
    ]);
  });

  it('says where it stands, and reaches as far as the filter is blind', async () => {
    const element = await placeSlider();
    expect(text('1.5 times clean').elements()).toHaveLength(1);
    expect(end()).toBe('5');
    element.blinding = 7.2;
    await element.updateComplete;
    expect(end()).toBe('8');
    element.blinding = 1;
    await element.updateComplete;
    expect(text('clean').elements().length).toBeGreaterThanOrEqual(1);
  });
});
