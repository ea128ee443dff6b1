// Axes, a light grid, and the few round ticks of the operating-point plot.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { RuledPlot } from '../../plot/ruled-plot.ts';
import { textSize } from './text-size.ts';

const TICK_SIZE = 13;
/** Paper between a tick's number and the unit on its line [px]. */
const UNIT_ROOM = 6;

/**
 * Draws the axes.
 *
 * @param ruled - the ruled plot
 * @returns SVG content
 */
export function plotAxes({ frame, flow, pressure, compact }: RuledPlot): SVGTemplateResult {
  const { left, right, top, bottom } = frame.inner;
  // In a low plot the unit of flow stands at the end of the ticks' own line.
  const end = compact ? right - width(flow.unit) - UNIT_ROOM : right;
  const isWritten = (x: number, label: string) => !compact || x + width(label) / 2 <= end;
  return svg`
    ${pressure.ticks.map(
      ({ value, label }) => svg`
        <line class="grid" x1=${left} x2=${right} y1=${frame.y(value)} y2=${frame.y(value)} />
        <text class="tick-y" x=${left - 8} y=${frame.y(value)}>${label}</text>`,
    )}
    ${flow.ticks.map(
      ({ value, label }) => svg`
        <line class="axis" x1=${frame.x(value)} x2=${frame.x(value)} y1=${bottom} y2=${bottom + 5} />
        ${
          isWritten(frame.x(value), label)
            ? svg`<text class="tick-x" x=${frame.x(value)} y=${bottom + 19}>${label}</text>`
            : nothing
        }`,
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

function width(text: string): number {
  return textSize(text, TICK_SIZE).width;
}
