import { html, LitElement } from 'lit';
import { describe, it } from 'vitest';
import { Stages } from '../../src/ui/stages.ts';
import { expect, place } from './harness.ts';

class StagedAnswer extends LitElement {
  readonly stages = new Stages(this, 2);
  readonly drawn: string[] = [];

  protected override render() {
    this.drawn.push([0, 1, 2].filter((stage) => this.stages.reaches(stage)).join(''));
    return html`<p>An answer</p>`;
  }
}
customElements.define('staged-answer', StagedAnswer);
declare global {
  interface HTMLElementTagNameMap {
    'staged-answer': StagedAnswer;
  }
}

describe('an answer drawn by stages', () => {
  it('takes one stage after another, then rests, and begins again when told', async () => {
    const answer = await place<StagedAnswer>(html`<staged-answer></staged-answer>`);
    const drawn = () => answer.drawn.join(' ');
    await expect.poll(drawn).toBe('0 01 012');
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(drawn()).toBe('0 01 012');
    answer.stages.restart();
    answer.requestUpdate();
    await expect.poll(drawn).toBe('0 01 012 0 01 012');
  });
});
