// A drop's speed on a scale with the carrying range marked: a solid mark for the drop's own pipe,
// a hollow one for the slowest section that its air goes on through, a stroke between the two.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type SpeedRange, type SpeedScale, speedScale } from '../../plot/speed-scale.ts';
import { movedBy } from '../moved-by.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { speedMarkStyles } from '../styles/speed-mark.styles.ts';
import { speedScaleStyles } from './speed-scale.styles.ts';

/**
 * @element dc-speed-scale
 */
@customElement('dc-speed-scale')
export class SpeedScaleMark extends LitElement {
  static override styles = [baseStyles, speedMarkStyles, speedScaleStyles];

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
    return html`<svg class="rule" role="img" aria-label=${this.label}>
        <rect class="range" x=${start} y="10" width=${percent(scale.rangeEnd - scale.rangeStart)} height="8" />
        <line class="base" x1="0" x2="100%" y1="18" y2="18" />
        <line class="range-end" x1=${start} x2=${start} y1="10" y2="21" />
        <line class="range-end" x1=${end} x2=${end} y1="10" y2="21" />
      </svg>
      ${this.speed === undefined ? nothing : this.#marks(this.speed, scale)}`;
  }

  #marks(speed: number, scale: SpeedScale): TemplateResult {
    const own = scale.at(speed);
    const slowest = this.slowest === undefined ? undefined : scale.at(this.slowest);
    const shape = scale.isPastEnd(speed) ? 'M6,-7L-4,-14V0Z' : 'M0,0L-5.5,-9V-14H5.5V-9Z';
    return html`${
      slowest === undefined
        ? nothing
        : html`<div class="reach" ${movedBy(between(slowest, own))}></div>
            ${mark(slowest, 'slowest', this.#tone(this.slowest), 'M0,1.5L4.5,8.5H-4.5Z')}`
    }${mark(own, 'own', this.#tone(speed), shape)}`;
  }

  #tone(speed: number | undefined): string {
    if (speed === undefined) return '';
    if (Math.abs(speed) < this.range.low) return 'settles';
    return Math.abs(speed) > this.range.high ? 'tight' : '';
  }
}

/** Marks are moved over by a transform, so that nothing is laid out anew while a gate moves. */
function mark(at: number, kind: string, tone: string, d: string): TemplateResult {
  return html`<svg class="mark" aria-hidden="true" ${movedBy(`translateX(${rounded(at)}cqi)`)}>
    <path class="${kind} ${tone}" d=${d} />
  </svg>`;
}

function between(from: number, to: number): string {
  return `translateX(${rounded(Math.min(from, to))}cqi) scaleX(${Math.abs(to - from) / 100})`;
}

function rounded(length: number): number {
  return Math.round(length * 100) / 100;
}

function percent(length: number): string {
  return `${rounded(length)}%`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-speed-scale': SpeedScaleMark;
  }
}
