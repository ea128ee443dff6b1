// Small ruled panels with lines in them, as the pictures of the decisions have them.

import { css } from 'lit';
import { ruledPlotStyles } from './ruled-plot.styles.ts';

export const linePanelStyles = css`
  ${ruledPlotStyles}

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

  .carrying {
    fill: var(--dc-range);
    fill-opacity: 0.45;
  }

  .limit {
    stroke: var(--dc-ink-soft);
    stroke-dasharray: 5 4;
  }

  .marker {
    stroke: var(--dc-ink);
    stroke-width: 1.25;
  }

  .flow-line,
  .speed-line {
    fill: none;
    stroke-width: 2.25;
    stroke-linejoin: round;
  }

  .flow-line {
    stroke: var(--dc-air);
  }

  .speed-line {
    stroke: var(--dc-duct);
  }

  .doubt-flow {
    fill: var(--dc-air);
    fill-opacity: 0.16;
  }

  .doubt-speed {
    fill: var(--dc-duct);
    fill-opacity: 0.18;
  }

  .flow-mark {
    fill: var(--dc-air);
  }

  .speed-mark {
    fill: var(--dc-duct);
  }

  .strong {
    fill: var(--dc-ink);
    font-weight: 600;
  }

  @media (forced-colors: active) {
    .carrying,
    .doubt-flow,
    .doubt-speed {
      fill: none;
      stroke: GrayText;
    }
  }
`;
