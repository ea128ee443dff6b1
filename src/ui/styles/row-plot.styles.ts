// A plot of rows under one scale that runs from left to right.

import { css } from 'lit';

export const rowPlotStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  .figure {
    position: relative;
  }

  svg.plot {
    inline-size: 100%;
    overflow: visible;
  }

  @media print {
    .figure {
      break-inside: avoid;
    }

    svg.plot {
      block-size: auto;
    }
  }

  text {
    fill: var(--dc-ink-soft);
    font-size: 13px;
  }

  .room {
    stroke: var(--dc-ink);
    shape-rendering: crispEdges;
  }
`;
