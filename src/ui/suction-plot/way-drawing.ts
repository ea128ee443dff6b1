// How the parts of the plot of suction along a way are drawn: axis and heads, a row a part, and the
// names of the lines.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { SuctionPath } from '../../plot/suction-path.ts';
import type { SuctionStep } from '../../state/suction-view.ts';
import { lineMiddle, type WayColumns } from './way-labels.ts';

/** A part that takes so much of all is drawn strong [-]. */
export const MUCH = 0.095;

/** Ticks, grid and title of the suction. */
export function axisAt({ axis, inner, x }: SuctionPath, unit: string): SVGTemplateResult {
  const { top, bottom, left } = inner;
  return svg`${axis.ticks.map(
    ({ value, label }, i) => svg`<line
        class=${i === 0 ? 'room' : 'grid'}
        x1=${x(value)} x2=${x(value)} y1=${top - 4} y2=${bottom}
      />
      <text class="tick" x=${x(value)} y=${top - 9}>${label}</text>`,
  )}
  <text class="title" x=${left - 4} y="13">suction, ${unit}</text>`;
}

/** What stands above the columns. */
export function headsAt(
  { inner }: SuctionPath,
  columns: WayColumns,
  width: number,
): SVGTemplateResult {
  const y = inner.top - 9;
  return svg`<text class="title" x="0" y=${y}>from the hood down</text>
    ${columns.losses > 0 ? svg`<text class="head" x=${width - columns.shares} y=${y}>lost</text>` : nothing}
    <text class="head" x=${width} y=${y}>share</text>`;
}

/** One part: its name, what is lost in it, and which share of all that is. */
export function rowAt(
  { loss, share, part, begins }: SuctionStep,
  lines: readonly string[],
  { rows, inner }: SuctionPath,
  i: number,
  columns: WayColumns,
  width: number,
): SVGTemplateResult {
  const { top, bottom } = rows[i]!;
  const middle = (top + bottom) / 2;
  const strong = part >= MUCH ? 'strong' : '';
  return svg`${
    begins
      ? svg`<line class="section" x1="0" x2=${inner.left - 6} y1=${top} y2=${top} /><line
          class="section" x1=${inner.right + 6} x2=${width} y1=${top} y2=${top} />`
      : nothing
  }
  ${lines.map(
    (line, at) =>
      svg`<text class=${strong} x="0" y=${lineMiddle(lines.length, at, middle)}>${line}</text>`,
  )}
  ${
    columns.losses > 0
      ? svg`<text class="loss ${strong}" x=${width - columns.shares} y=${middle}>${loss}</text>`
      : nothing
  }
  <text class="share ${strong}" x=${width} y=${middle}>${share}</text>`;
}

/** What the two lines are called, and where they end. */
export function lineLabels({ rows, inner }: SuctionPath, last: SuctionStep): SVGTemplateResult {
  const end = rows.at(-1)!;
  const y = inner.bottom + 13;
  return svg`<text class="label-total" x=${end.total.x + 4} y=${y}>total ${last.totalText}</text>
    <text class="label-static" x=${Math.max(end.static.x - 4, end.total.x + 16)} y=${y}
      >static ${last.staticText}</text>`;
}
