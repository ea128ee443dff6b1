// A drop's speed on a scale with the carrying range marked: a solid mark for the drop's own pipe,
// a hollow one for the slowest section that its air goes on through, a stroke between the two.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type SpeedRange, speedScale } from '../../plot/speed-scale.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { speedScaleStyles } from './speed-scale.styles.ts';

/**
 * @element dc-speed-scale
 */
@customElement('dc-speed-scale')
export class SpeedScaleMark extends LitElement {
  static override styles = [baseStyles, speedScaleStyles];

  /** What the scale says, in words, for those who don't see it. */
  @property() label = '';
  /** The carrying range [m/s]. */
  @property({ attribute: false }) range: SpeedRange = { low: 17.78, high: 22.86 };
  /** Speed in the drop's own pipe [m/s]; none if it is shut. */
  @property({ type: Number }) speed: number | undefined;
  /** Speed in the slowest section on its way [m/s]. */
  @property({ type: Number }) slowest: number | undefined;

  protected override render(): TemplateResult {
    const scale = speedScale(100, this.range);
    const start = percent(scale.rangeStart);
    const end = percent(scale.rangeEnd);
    return html`<svg role="img" aria-label=${this.label}>
      <rect class="range" x=${start} y="10" width=${percent(scale.rangeEnd - scale.rangeStart)} height="8" />
      <line class="base" x1="0" x2="100%" y1="18" y2="18" />
      <line class="range-end" x1=${start} x2=${start} y1="10" y2="21" />
      <line class="range-end" x1=${end} x2=${end} y1="10" y2="21" />
      ${this.speed === undefined ? nothing : this.#marks(this.speed)}
    </svg>`;
  }

  #marks(speed: number): SVGTemplateResult {
    const scale = speedScale(100, this.range);
    const own = percent(scale.at(speed));
    const slowest = this.slowest === undefined ? undefined : percent(scale.at(this.slowest));
    const pastEnd = scale.isPastEnd(speed);
    return svg`${
      slowest === undefined
        ? nothing
        : svg`<line class="reach" x1=${slowest} x2=${own} y1="18" y2="18" />
          <svg x=${slowest} y="18" overflow="visible">
            <path class="slowest ${this.#tone(this.slowest)}" d="M0,1.5L4.5,8.5H-4.5Z" />
          </svg>`
    }
    <svg x=${own} y="18" overflow="visible">
      <path class="own ${this.#tone(speed)}" d=${pastEnd ? 'M6,-7L-4,-14V0Z' : 'M0,0L-5.5,-9V-14H5.5V-9Z'} />
    </svg>`;
  }

  #tone(speed: number | undefined): string {
    if (speed === undefined) return '';
    if (Math.abs(speed) < this.range.low) return 'settles';
    return Math.abs(speed) > this.range.high ? 'tight' : '';
  }
}

function percent(length: number): string {
  return `${Math.round(length * 100) / 100}%`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-speed-scale': SpeedScaleMark;
  }
}
