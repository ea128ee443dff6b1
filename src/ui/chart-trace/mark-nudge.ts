// Buttons that move the mark that is held by a pixel of the picture, for a finger that covers what it
// points at, and the one that takes the last step back.

import { html, nothing, type TemplateResult } from 'lit';
import type { Place } from '../../plot/frame.ts';
import type { MarkName } from '../../plot/chart-trace/traced-chart.ts';
import { theMark } from '../../plot/chart-trace/trace-words.ts';

/** What the buttons do. */
export interface NudgeWishes {
  readonly move: (way: Place) => void;
  readonly letGo: () => void;
  /** Undefined where there is nothing to take back. */
  readonly undo: (() => void) | undefined;
  /** Undefined where it is as large or as small as it can be. */
  readonly larger: (() => void) | undefined;
  readonly smaller: (() => void) | undefined;
}

const WAYS = [
  { sign: '←', words: 'left', way: { x: -1, y: 0 } },
  { sign: '→', words: 'right', way: { x: 1, y: 0 } },
  { sign: '↑', words: 'up', way: { x: 0, y: -1 } },
  { sign: '↓', words: 'down', way: { x: 0, y: 1 } },
] as const;

/**
 * Writes the buttons.
 *
 * @param held - the mark that they move, if one is held
 * @param wishes - what they do
 * @returns a row of buttons
 */
export function markNudge(held: MarkName | undefined, wishes: NudgeWishes): TemplateResult {
  const { undo, larger, smaller } = wishes;
  return html`<div class="nudge">
    ${
      held
        ? html`<span class="words">Move ${theMark(held)}</span>
            ${WAYS.map(
              ({ sign, words, way }) => html`<button
                type="button"
                aria-label="Move ${theMark(held)} ${words}"
                @click=${() => wishes.move(way)}
              >
                <span aria-hidden="true">${sign}</span>
              </button>`,
            )}
            <button type="button" @click=${() => wishes.letGo()}><span>Let go</span></button>`
        : nothing
    }
    ${button('Take the last step back', undo)}${button('Larger picture', larger)}
    ${button('Smaller picture', smaller)}
  </div>`;
}

function button(words: string, press: (() => void) | undefined): TemplateResult | typeof nothing {
  if (!press) return nothing;
  return html`<button type="button" @click=${() => press()}><span>${words}</span></button>`;
}
