// The two numbers at the operating point: the flow large, the suction under it.

import { svg, type SVGTemplateResult } from 'lit';
import type { FlowPoint } from '../../plot/moving-plot.ts';
import type { LabelSize } from '../../plot/place-label.ts';
import { type FormattedQuantity, formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { movedTo } from './moved-to.ts';
import { textSize } from './text-size.ts';

/** The numbers with the room that they take. */
export interface PointLabel {
  readonly flow: FormattedQuantity;
  readonly suction: FormattedQuantity;
  /** Font sizes [px]. */
  readonly large: number;
  readonly small: number;
  readonly size: LabelSize;
}

const USUAL = { large: 26, small: 16 };
const COMPACT = { large: 21, small: 14 };
const UNIT_SIZE = 13;
/** Height of capitals over the font size, near enough to set a line by its top [-]. */
const ASCENT = 0.95;

/**
 * Makes the label of a point.
 *
 * @param point - where the curves meet
 * @param units - the units to speak in
 * @param compact - whether there is little room
 * @returns the numbers, and how large they come out [px]
 */
export function pointLabel(
  point: FlowPoint,
  units: UnitSystem,
  compact: 'usual' | 'compact',
): PointLabel {
  const { large, small } = compact === 'compact' ? COMPACT : USUAL;
  const flow = formatQuantity('flow', units, point.flow);
  const suction = formatQuantity('pressure', units, point.suction);
  const width = (shown: FormattedQuantity, fontSize: number) =>
    textSize(shown.number, fontSize).width + textSize(` ${shown.unit}`, UNIT_SIZE).width;
  return {
    flow,
    suction,
    large,
    small,
    size: {
      width: Math.max(width(flow, large), width(suction, small)),
      height: textSize('', large).height + textSize('', small).height,
    },
  };
}

/**
 * Writes the label.
 *
 * @param label - the numbers
 * @param left - where they have room, from the left [px]
 * @param top - from the top [px]
 * @returns SVG content
 */
export function pointLabelAt(label: PointLabel, left: number, top: number): SVGTemplateResult {
  const { flow, suction, large, small, size } = label;
  const first = large * ASCENT;
  const second = size.height - small * (1.2 - ASCENT);
  return svg`<g transform=${movedTo(left, top)}
    ><text class="flow-number over-grid" font-size=${large} y=${first}
      >${flow.number}<tspan class="point-unit"> ${flow.unit}</tspan></text
    ><text class="suction-number over-grid" font-size=${small} y=${second}
      >${suction.number}<tspan class="point-unit"> ${suction.unit}</tspan></text
  ></g>`;
}
