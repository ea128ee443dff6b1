import { html, LitElement } from 'lit';
import { describe, it } from 'vitest';
import { Stages } from '../../src/ui/stages.ts';
import { expect, place } from './harness.ts';

class StagedAnswer extends LitElement {
  readonly stages = new Stages(this, 2);
  answer = 'A';
  /** What was drawn, and a stroke for each time that the whole was. */
  readonly drawn: string[] = [];

  protected override render() {
    this.drawn.push('|');
    return html`${[0, 1, 2].map((stage) =>
      this.stages.part(stage, [this.answer], () => {
        this.drawn.push(`${this.answer}${stage}`);
        return html`<p>${this.answer}${stage}</p>`;
      }),
    )}`;
  }

  get shown(): string {
    return [...this.renderRoot.querySelectorAll('p')].map((part) => part.textContent).join(' ');
  }
}
customElements.define('staged-answer', StagedAnswer);
declare global {
  interface HTMLElementTagNameMap {
    'staged-answer': StagedAnswer;
  }
}

describe('an answer drawn by stages', () => {
  it('takes one stage after another, each part drawn once, and then rests', async () => {
    const answer = await place<StagedAnswer>(html`<staged-answer></staged-answer>`);
    await expect.poll(() => answer.shown).toBe('A0 A1 A2');
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(answer.drawn.join(' ')).toBe('| A0 | A1 | A2');
  });

  it('begins again when told, and leaves what was there until its stage comes', async () => {
    const answer = await place<StagedAnswer>(html`<staged-answer></staged-answer>`);
    await expect.poll(() => answer.shown).toBe('A0 A1 A2');
    answer.answer = 'B';
    answer.stages.restart();
    answer.requestUpdate();
    await answer.updateComplete;
    expect(answer.shown).toBe('B0 A1 A2');
    await expect.poll(() => answer.shown).toBe('B0 B1 B2');
  });
});
