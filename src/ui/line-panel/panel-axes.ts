// Axes, a light grid and the few round ticks of a small ruled panel.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { LinePanel } from '../../plot/line-panel.ts';

/** What is written at the axes. */
export interface PanelTitles {
  /** Above the panel. */
  readonly up: string;
  /** Under it; left out: the panel below bears it, and the ticks. */
  readonly across?: string | undefined;
}

/**
 * Draws the axes of a panel.
 *
 * @param panel - the ruled panel
 * @param titles - what is on them
 * @returns SVG content; it needs the line panels' styles
 */
export function panelAxes(panel: LinePanel, { up, across }: PanelTitles): SVGTemplateResult {
  const { left, right, top, bottom } = panel.inner;
  return svg`${panel.up.ticks.map(
    ({ value, label }) => svg`<line
        class="grid" x1=${left} x2=${right} y1=${panel.y(value)} y2=${panel.y(value)} />
      <text class="tick-y" x=${left - 8} y=${panel.y(value)}>${label}</text>`,
  )}
  <line class="axis" x1=${left} x2=${left} y1=${top} y2=${bottom} />
  <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />
  ${panel.across.ticks.map(
    ({ value, label }) => svg`<line
        class="axis" x1=${panel.x(value)} x2=${panel.x(value)} y1=${bottom} y2=${bottom + 4} />
      ${across === undefined ? nothing : svg`<text class="tick-x" x=${panel.x(value)} y=${bottom + 18}>${label}</text>`}`,
  )}
  <text class="title" x="0" y=${top - 10}>${up}</text>
  ${across === undefined ? nothing : svg`<text class="title end" x=${right} y=${bottom + 37}>${across}</text>`}`;
}
