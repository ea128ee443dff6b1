// How the parts of the plot of a curve are drawn: frame, axes, lines and their names, the gap between
// them, and the marks.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { CurvePlotParts, CurveRule } from '../../plot/curve-plot.ts';
import type { LabelSize } from '../../plot/place-label.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { movedTo } from '../operating-plot/moved-to.ts';
import { BOLD, textSize } from '../operating-plot/text-size.ts';

/** Font size of the gap's number [px]. */
const NUMBER_SIZE = 13;
/** From the line that it is written on to the bottom of its room [px]. */
const DESCENT = 4;

/** The box that lines are clipped to. */
export function frameBox({ frame }: CurveRule): SVGTemplateResult {
  const { left, right, top, bottom } = frame.inner;
  return svg`<rect x=${left} y=${top} width=${right - left} height=${bottom - top} />`;
}

/** Axes with their ticks and names. */
export function axesAt({ frame, flow, pressure }: CurveRule, name: string): SVGTemplateResult {
  const { left, right, top, bottom } = frame.inner;
  return svg`${pressure.ticks.map(
    ({
      value,
      label,
    }) => svg`<line class="grid" x1=${left} x2=${right} y1=${frame.y(value)} y2=${frame.y(value)} />
      <text class="tick-y" x=${left - 6} y=${frame.y(value)}>${label}</text>`,
  )}
  ${flow.ticks.map(
    ({
      value,
      label,
    }) => svg`<line class="axis" x1=${frame.x(value)} x2=${frame.x(value)} y1=${bottom} y2=${bottom + 4} />
      <text class="tick-x" x=${frame.x(value)} y=${bottom + 17}>${label}</text>`,
  )}
  <line class="axis" x1=${left} x2=${left} y1=${top} y2=${bottom} />
  <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />
  <text x="2" y="13">${name.toLowerCase()}, ${pressure.unit}</text>
  <text class="end" x=${right} y=${bottom + 35}>air flow, ${flow.unit}</text>`;
}

/** The line as entered, and what the ducts get of it. */
export function linesAt({ entered, unknown, available }: CurvePlotParts): SVGTemplateResult {
  const kind = available === '' ? 'entered alone' : 'entered';
  return svg`${unknown.map((path) => svg`<path class="${kind} unknown" d=${path} />`)}
    <path class=${kind} d=${entered} />
    ${available === '' ? nothing : svg`<path class="line" d=${available} />`}`;
}

/** The names of the two lines, where both are drawn. */
export function labelsAt({ labels }: CurvePlotParts): SVGTemplateResult {
  if (!labels) return svg``;
  const { entered, available } = labels;
  return svg`<g transform=${movedTo(entered.x, entered.y)}><text class="label-entered over-grid"
        >as entered</text></g>
    <g transform=${movedTo(available.x, available.y)}><text class="label over-grid"
        >what the ducts get</text></g>`;
}

/** Hollow where it is used; a cross, and so another shape, where it is set aside. */
export function markAt(
  { x, y, isAside }: CurvePlotParts['marks'][number],
  isHeld: boolean,
): SVGTemplateResult {
  if (isAside) return svg`<path class="cross" d="M${x - 5},${y - 5}l10,10m0,-10l-10,10" />`;
  return svg`<circle class=${isHeld ? 'mark held' : 'mark'} transform=${movedTo(x, y)} r="5.5" />`;
}

/** How far apart the two lines are at the operating point, and that point. */
export function gapAt({ gap, point }: CurvePlotParts, units: UnitSystem): SVGTemplateResult {
  const mark = point && svg`<circle class="point" transform=${movedTo(point.x, point.y)} r="6" />`;
  if (!gap) return svg`${mark ?? nothing}`;
  const { entered, available, number, difference } = gap;
  return svg`<path class="gap" d="M${entered.x},${entered.y}V${available.y}" />
      ${mark ?? nothing}
      ${
        number
          ? svg`<g transform=${movedTo(number.left, number.bottom - DESCENT)}><text
                class="gap-text over-grid">${gapText(difference, units)}</text></g>`
          : nothing
      }`;
}

/** How large the gap's number comes out [px]. */
export function gapSize(difference: number, units: UnitSystem): LabelSize {
  const { width, height } = textSize(gapText(difference, units), NUMBER_SIZE);
  return { width: BOLD * width, height };
}

function gapText(difference: number, units: UnitSystem): string {
  const size = formatQuantity('pressure', units, Math.abs(difference)).text;
  return `${difference >= 0 ? '−' : '+'}${size}`;
}
