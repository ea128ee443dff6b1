// Axes, a light grid, and the few round ticks of the operating-point plot.

import { svg, type SVGTemplateResult } from 'lit';
import type { RuledPlot } from '../../plot/ruled-plot.ts';

/**
 * Draws the axes.
 *
 * @param ruled - the ruled plot
 * @returns SVG content
 */
export function plotAxes({ frame, flow, pressure, compact }: RuledPlot): SVGTemplateResult {
  const { left, right, top, bottom } = frame.inner;
  return svg`
    ${pressure.ticks.map(
      ({ value, label }) => svg`
        <line class="grid" x1=${left} x2=${right} y1=${frame.y(value)} y2=${frame.y(value)} />
        <text class="tick-y" x=${left - 8} y=${frame.y(value)}>${label}</text>`,
    )}
    ${flow.ticks.map(
      ({ value, label }) => svg`
        <line class="axis" x1=${frame.x(value)} x2=${frame.x(value)} y1=${bottom} y2=${bottom + 5} />
        <text class="tick-x" x=${frame.x(value)} y=${bottom + 19}>${label}</text>`,
    )}
    <line class="axis" x1=${left} x2=${left} y1=${top} y2=${bottom} />
    <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />
    ${
      compact
        ? svg`<text class="title-y" x="2" y="10">${pressure.unit}</text>
            <text class="title-x" x=${right} y=${bottom + 19}>${flow.unit}</text>`
        : svg`<text class="title-y" x="2" y="14">suction at the collector, ${pressure.unit}</text>
            <text class="title-x" x=${right} y=${bottom + 38}>air flow, ${flow.unit}</text>`
    }
  `;
}
