// How a mark looks on the picture of a chart, and what the loupe shows around a place.

import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { Corner } from '../../plot/chart-trace/loupe-corner.ts';
import type { Place } from '../../plot/frame.ts';
import type { ChartImage } from './open-picture.ts';
import type { ShownMark } from './shown-marks.ts';

/** Half of what the eye sees, and the size of its name [px on the page]. */
const ARM = 9;
const NAME_SIZE = 13;
/** What the longest name needs beside its mark [px on the page]. */
const NAME_ROOM = 77;
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
  const arm = ARM * scale;
  const d =
    mark.kind === 'point'
      ? `M${x - arm},${y}a${arm},${arm} 0 1 0 ${2 * arm},0a${arm},${arm} 0 1 0 ${-2 * arm},0`
      : `M${x - arm},${y - arm}L${x + arm},${y + arm}M${x - arm},${y + arm}L${x + arm},${y - arm}`;
  const size = NAME_SIZE * scale;
  // Names of an axis' marks stand outside the chart where there is room, clear of curve and points.
  const isLeft = mark.kind === 'axis' && mark.axis === 'pressure' && x > NAME_ROOM * scale;
  const isBelow = mark.kind === 'axis' && mark.axis === 'flow' && y + 2 * arm + size < image.height;
  const anchor = isLeft || x > image.width - NAME_ROOM * scale ? 'end' : 'start';
  const beside = (arm + size / 3) * (anchor === 'end' ? -1 : 1);
  const base = isLeft ? y + size / 3 : isBelow ? y + arm + size : y - arm / 2;
  return svg`<path class="under" d=${d} />
    <path class="mark ${mark.kind} ${emphasis}" d=${d} />
    <text class="name" x=${x + beside} y=${base} text-anchor=${anchor} font-size=${size} stroke-width=${size / 4}>${name}</text>`;
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
