// How a mark looks on the picture of a chart, and what the loupe shows around a place.

import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { Corner } from '../../plot/chart-trace/loupe-corner.ts';
import { MARK_ARM, namePlace } from '../../plot/chart-trace/mark-name.ts';
import type { Place } from '../../plot/frame.ts';
import type { ChartImage } from './chart-image.ts';
import type { ShownMark } from './shown-marks.ts';

/** What the loupe shows to each side [px of the picture]. */
const LOUPE_REACH = 12;

/**
 * Draws a mark: a ring for a point of the curve, a slanting cross for one of an axis.
 *
 * @param shown - the mark
 * @param image - the picture
 * @param scale - pixels of the picture for one of the page [-]
 * @param emphasis - 'held' where keys move it
 * @returns its shapes and its name
 */
export function drawnMark(
  { mark, place: { x, y }, name }: ShownMark,
  image: ChartImage,
  scale: number,
  emphasis: 'held' | '',
): SVGTemplateResult {
  const arm = MARK_ARM * scale;
  const d =
    mark.kind === 'point'
      ? `M${x - arm},${y}a${arm},${arm} 0 1 0 ${2 * arm},0a${arm},${arm} 0 1 0 ${-2 * arm},0`
      : `M${x - arm},${y - arm}L${x + arm},${y + arm}M${x - arm},${y + arm}L${x + arm},${y - arm}`;
  const { place: end, anchor, size } = namePlace(mark, { x, y }, image, scale);
  return svg`<path class="under" d=${d} />
    <path class="mark ${mark.kind} ${emphasis}" d=${d} />
    <text class="name" x=${end.x} y=${end.y} text-anchor=${anchor} font-size=${size} stroke-width=${size / 4}>${name}</text>`;
}

/**
 * Draws the loupe.
 *
 * @param place - what it is held over [px]
 * @param image - the picture
 * @param corner - where it stands
 * @returns a drawing with hairlines that leave the place itself free
 */
export function loupe({ x, y }: Place, image: ChartImage, corner: Corner): TemplateResult {
  const reach = LOUPE_REACH;
  return html`<svg
    class="loupe ${corner.side} ${corner.edge}"
    viewBox="${x - reach} ${y - reach} ${2 * reach} ${2 * reach}"
    aria-hidden="true"
  >
    <image href=${image.url} width=${image.width} height=${image.height} />
    <path d="M${x - reach},${y}H${x - 1}M${x + 1},${y}H${x + reach}M${x},${y - reach}V${y - 1}M${x},${y + 1}V${y + reach}" />
  </svg>`;
}
