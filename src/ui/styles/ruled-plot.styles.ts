// What pictures with ruled axes share: grid, axes, the names of ticks, and text that lies over the grid.

import { css } from 'lit';

export const ruledPlotStyles = css`
  text {
    fill: var(--dc-ink-soft);
    font-size: 13px;
  }

  .grid {
    stroke: var(--dc-rule);
    shape-rendering: crispEdges;
  }

  .axis {
    stroke: var(--dc-ink);
    shape-rendering: crispEdges;
  }

  .tick-x {
    text-anchor: middle;
  }

  .tick-y,
  .end {
    text-anchor: end;
  }

  .tick-y {
    dominant-baseline: central;
  }

  .over-grid {
    stroke: var(--dc-paper);
    stroke-width: 5;
    stroke-linejoin: round;
    paint-order: stroke;
  }
`;
