import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../src/ui/unit-switch/unit-switch.ts';
import { expect, expectAccessible, heard, html, place, radio } from './harness.ts';

describe('the unit switch', () => {
  it('is accessible', async () => {
    await expectAccessible(await place(html`<dc-unit-switch></dc-unit-switch>`));
  });

  it('shows the units in use and tells when others are chosen', async () => {
    const element = await place(html`<dc-unit-switch></dc-unit-switch>`);
    const choices = heard(element, 'dc-units');
    expect((radio('US').element() as HTMLInputElement).checked).toBe(true);
    await radio('metric').click();
    expect(choices.map(({ units }) => units)).toEqual(['metric']);
  });

  it('is worked by keys', async () => {
    const element = await place(html`<dc-unit-switch></dc-unit-switch>`);
    const choices = heard(element, 'dc-units');
    await userEvent.tab();
    await userEvent.keyboard('{ArrowRight}');
    expect(choices.map(({ units }) => units)).toEqual(['metric']);
  });
});
