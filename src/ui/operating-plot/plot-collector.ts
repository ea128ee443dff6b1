// The collector's curve: solid through the entered points, which are hollow, dotted where unknown. Points
// that are set aside are crosses.

import { svg, type SVGTemplateResult } from 'lit';
import type { CollectorLine } from '../../plot/collector-line.ts';

/** Half the size of a cross [px]. */
const ARM = 3.5;

/**
 * Draws the collector's curve. Lines are clipped to the element with the id `frame`.
 *
 * @param line - paths and points [px]
 * @returns SVG content
 */
export function plotCollector({ known, unknown, points, aside }: CollectorLine): SVGTemplateResult {
  return svg`
    ${unknown.map((path) => svg`<path class="unknown" clip-path="url(#frame)" d=${path} />`)}
    <path class="collector" clip-path="url(#frame)" d=${known} />
    ${aside.map(({ x, y }) => svg`<path class="aside" d=${cross(x, y)} />`)}
    ${points.map(({ x, y }) => svg`<circle class="entered" cx=${x} cy=${y} r="4" />`)}
  `;
}

function cross(x: number, y: number): string {
  return `M${x - ARM},${y - ARM}l${2 * ARM},${2 * ARM}m0,${-2 * ARM}l${-2 * ARM},${2 * ARM}`;
}
