// A line drawing of the run, laid out by itself, not to scale. Line weight follows the diameter.
// A still duct is pale, one that carries is solid, one where chips settle shows them as beads,
// a tight one is a thin bore between thick walls.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type DrawnSection, runDrawing } from '../../plot/run-drawing.ts';
import { runLayout } from '../../plot/run-layout.ts';
import type { RunState, SectionView } from '../../state/run-view.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { runDrawingStyles } from './run-drawing.styles.ts';

/** Room for the collector on the left and the drops' names on the right [px]. */
const COLLECTOR_ROOM = 34;
const NAME_ROOM = 132;
/** Room for the key above it [px]. */
const KEY_ROOM = 26;
const KEY: readonly (readonly [RunState, string])[] = [
  ['carries', 'carries'],
  ['settles', 'chips settle'],
  ['tight', 'tight'],
  ['still', 'still'],
];
const KEY_WEIGHT = 7;
/** A section's words are left out where its level stretch is shorter than this [px]. */
const SPEED_ROOM = 38;
const SIZE_ROOM = 84;

/** @element dc-run-drawing */
@customElement('dc-run-drawing')
export class RunDrawing extends LitElement {
  static override styles = [baseStyles, runDrawingStyles];

  /** The drawing in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) sections: readonly SectionView[] = [];

  /** What the speeds are written in. */
  @property({ attribute: 'speed-unit' }) speedUnit = '';

  readonly #size = new SizeController(this);

  protected override render(): TemplateResult {
    const { width, height } = this.#size;
    const { sections } = this;
    if (sections.length === 0 || width < 240 || height < 80) return html`${nothing}`;
    const drawn = runDrawing(
      runLayout(sections),
      sections.map((section) => section.diameter),
      { left: COLLECTOR_ROOM, right: width - NAME_ROOM, top: KEY_ROOM, bottom: height - 2 },
    );
    const flange = drawn[sections.findIndex((section) => section.into < 0)];
    return html`<p class="key">
        <span>speed in ${this.speedUnit}</span>${KEY.map(([state, word]) => keyItem(state, word))}
      </p>
      <svg class="run" role="img" aria-label=${this.label}>
      ${flange ? svg`<path class="collector" d=${cyclone(flange.middle.y)} />` : nothing}
      ${sections.map((section, i) => duct(section.state, drawn[i]!.path, drawn[i]!.weight))}
      ${sections.map((section, i) => words(section, drawn[i]!))}
    </svg>`;
  }
}

function keyItem(state: RunState, word: string): TemplateResult {
  return html`<span class="item"
    ><svg width="28" height="12" aria-hidden="true">${duct(state, 'M28,6H0', KEY_WEIGHT)}</svg
    >${word}</span
  >`;
}

function duct(state: RunState, path: string, weight: number): SVGTemplateResult {
  const wall = state === 'tight' ? weight * 0.36 : 0.75;
  return svg`<g class=${state}>
    <path class="wall" stroke-width=${weight} d=${path} />
    <path class="inside" stroke-width=${Math.max(0.75, weight - 2 * wall)} d=${path} />
    ${
      state === 'settles'
        ? svg`<path class="chips" stroke-width=${weight * 0.45} stroke-dasharray="0.1 ${weight + 2}" d=${path} />`
        : nothing
    }
  </g>`;
}

function words(
  section: SectionView,
  { middle, open, room, weight }: DrawnSection,
): SVGTemplateResult {
  const { state, speed, size, length, drop } = section;
  const flows = state !== 'still';
  return svg`<g class=${state}>
    ${
      flows && drop === undefined && room > SPEED_ROOM
        ? svg`<text class="speed" x=${middle.x} y=${middle.y - weight / 2 - 4}>${speed}</text>`
        : nothing
    }
    ${
      room > SIZE_ROOM && drop === undefined
        ? svg`<text class="size" x=${middle.x} y=${middle.y + weight / 2 + 13}>${size}, ${length}</text>`
        : nothing
    }
    ${
      drop === undefined
        ? nothing
        : svg`<text class=${flows ? 'drop open' : 'drop'} x=${open.x + 8} y=${open.y}>${drop}</text>`
    }
  </g>`;
}

/** A cyclone seen from the side, its inlet at the given height [px]. */
function cyclone(y: number): string {
  return `M6,${y - 9}H30V${y + 9}L21,${y + 30}H15L6,${y + 9}Z`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-drawing': RunDrawing;
  }
}
