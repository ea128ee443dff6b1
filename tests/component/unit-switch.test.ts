import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../src/ui/unit-switch/unit-switch.ts';
import { expect, heard, html, place, radio } from './harness.ts';

describe('the unit switch', () => {
  it('is accessible', async () => {
    await expect(await place(html`<dc-unit-switch></dc-unit-switch>`)).to.be.accessible();
  });

  it('shows the units in use and tells when others are chosen', async () => {
    const element = await place(html`<dc-unit-switch></dc-unit-switch>`);
    const choices = heard(element, 'dc-units');
    expect((radio('US').element() as HTMLInputElement).checked).to.equal(true);
    await radio('metric').click();
    expect(choices.map(({ units }) => units)).to.deep.equal(['metric']);
  });

  it('is worked by keys', async () => {
    const element = await place(html`<dc-unit-switch></dc-unit-switch>`);
    const choices = heard(element, 'dc-units');
    await userEvent.tab();
    await userEvent.keyboard('{ArrowRight}');
    expect(choices.map(({ units }) => units)).to.deep.equal(['metric']);
  });
});
