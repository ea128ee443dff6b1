// The collector's curve: solid through the entered points, which are hollow, dotted where unknown.

import { svg, type SVGTemplateResult } from 'lit';
import type { CollectorLine } from '../../plot/collector-line.ts';

/**
 * Draws the collector's curve. Lines are clipped to the element with the id `frame`.
 *
 * @param line - paths and points [px]
 * @returns SVG content
 */
export function plotCollector({ known, unknown, points }: CollectorLine): SVGTemplateResult {
  return svg`
    ${unknown.map((path) => svg`<path class="unknown" clip-path="url(#frame)" d=${path} />`)}
    <path class="collector" clip-path="url(#frame)" d=${known} />
    ${points.map(({ x, y }) => svg`<circle class="entered" cx=${x} cy=${y} r="4" />`)}
  `;
}
