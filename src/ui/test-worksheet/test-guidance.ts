// Where to hold the instrument: a drawing of the pipe with the straight stretches it wants and the
// places across its bore, the distances, and what spoils a reading. Each figure with its source.

import { css, html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type HoldDrawing, holdDrawing } from '../../plot/hold-drawing.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { sourceWords } from '../../state/run-editor/figure-source.ts';
import { placesOf, straightPipe } from '../../state/throttle-test/guidance.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { worksheetStyles } from './worksheet.styles.ts';

/** Width of a tap: wide enough not to clog, small beside the pipe [m]. */
const TAP_HOLE = 0.0015;

/** @element dc-test-guidance */
@customElement('dc-test-guidance')
export class TestGuidance extends LitElement {
  static override styles = [
    baseStyles,
    worksheetStyles,
    css`
      svg {
        inline-size: min(100%, 27rem);
        block-size: auto;
        margin-block: 4px 8px;
        fill: none;
        stroke: var(--dc-ink);
        stroke-width: 1.25;
      }

      .air {
        stroke: var(--dc-air);
      }

      .across {
        stroke: var(--dc-rule-strong);
        stroke-dasharray: 2 3;
      }

      .place {
        fill: var(--dc-duct);
        stroke: none;
      }

      .tap {
        stroke: var(--dc-duct);
        stroke-width: 2;
      }

      text {
        fill: var(--dc-ink);
        stroke: none;
        font-size: 12px;
      }

      ul {
        max-inline-size: 70ch;
        margin: 0 0 8px;
        padding-inline-start: 20px;
        font-size: var(--dc-small);
        line-height: 1.25rem;
      }

      li + li {
        margin-block-start: 4px;
      }

      small {
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
      }
    `,
  ];

  @property({ attribute: false }) test: TestSheet | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { test } = this;
    if (!test) return html`${nothing}`;
    const good = straightPipe('preferred');
    const least = straightPipe('least');
    const { positions, source } = placesOf(test.traverse);
    const drawing = holdDrawing(good.before, good.after, positions, test.traverse.diameters);
    return html`${this.#drawing(drawing)}
      <ul>
        <li>
          Read in a straight stretch: ${this.#long(good.before)} of pipe after the last bend, wye or
          open end, and ${this.#long(good.after)} before the next. The least that will do is
          ${this.#long(least.before)} and ${this.#long(least.after)}.
          <small>${sourceWords(good.source)}</small>
        </li>
        <li>
          Drill the tap square through the wall, about
          ${formatQuantity('diameter', this.units, TAP_HOLE).text} wide, and leave no burr inside: it bends the
          air at the hole, and the reading with it. <small>common practice, no source</small>
        </li>
        <li>
          Across the pipe, hold the instrument at these distances from the near wall:
          ${positions.map((part) => this.#distance(part)).join(' · ')}
          <small>${sourceWords(source)}</small>
        </li>
        <li>
          A Pitot tube points straight into the air. The head of a vane anemometer fills a good part of a
          small pipe, and reads too much there. <small>common practice, no source</small>
        </li>
        <li>
          Don’t read in a plain open end: the jet is pinched there. And what an open hose end moves is not
          what it moves with the machine on. <small>common practice, no source</small>
        </li>
        <li>
          Set the throttle behind the place of reading, never before it, and wait until the reading rests.
          <small>common practice, no source</small>
        </li>
      </ul>`;
  }

  #drawing({ width, height, pipe, reading, cut, diameters, places }: HoldDrawing): TemplateResult {
    const middle = pipe.y + pipe.bore / 2;
    const end = pipe.x + pipe.length;
    const good = straightPipe('preferred');
    return html`<svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${this.#words()}>
      ${svg`<path d="M${pipe.x} ${pipe.y}H${end}M${pipe.x} ${pipe.y + pipe.bore}H${end}" />
      <path class="air" d="M${pipe.x + 8} ${middle}h36m-6 -4l6 4l-6 4" />
      <path class="tap" d="M${reading} ${pipe.y - 14}V${middle}" />
      <path d="M${pipe.x} ${pipe.y + pipe.bore + 12}v8m0 -4H${reading}m0 -4v8m0 -4H${end}m0 -4v8" />
      <text x=${(pipe.x + reading) / 2} y=${pipe.y + pipe.bore + 32} text-anchor="middle">${this.#short(good.before)}</text>
      <text x=${(reading + end) / 2} y=${pipe.y + pipe.bore + 32} text-anchor="middle">${this.#short(good.after)}</text>
      <circle cx=${cut.x} cy=${cut.y} r=${cut.radius} />
      ${diameters.map(([from, to]) => svg`<path class="across" d="M${from.x} ${from.y}L${to.x} ${to.y}" />`)}
      ${places.map(({ x, y }) => svg`<circle class="place" cx=${x} cy=${y} r="3" />`)}`}
    </svg>`;
  }

  #words(): string {
    const { perDiameter, diameters } = this.test?.traverse ?? { perDiameter: 0, diameters: 0 };
    const across = diameters === 1 ? 'one diameter' : `${diameters} diameters`;
    return `Straight pipe around the place of reading, and ${perDiameter} places on ${across} of the bore`;
  }

  /** A length in diameters, and in the maker's units where the diameter is known. */
  #long(count: number): string {
    const diameters = count === 1 ? '1 inside diameter' : `${count} inside diameters`;
    const diameter = this.test?.diameter;
    if (diameter === undefined) return diameters;
    return `${diameters} (${formatQuantity('length', this.units, count * diameter).text})`;
  }

  #short(count: number): string {
    const diameter = this.test?.diameter;
    return diameter === undefined
      ? `${count} × D`
      : formatQuantity('length', this.units, count * diameter).text;
  }

  #distance(part: number): string {
    const diameter = this.test?.diameter;
    return diameter === undefined
      ? formatQuantity('fraction', this.units, part).text
      : formatQuantity('diameter', this.units, part * diameter).text;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-test-guidance': TestGuidance;
  }
}
