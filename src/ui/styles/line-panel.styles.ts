// Small ruled panels with lines in them, as the pictures of the decisions have them.

import { css } from 'lit';

export const linePanelStyles = css`
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

  .over-grid {
    stroke: var(--dc-paper);
    stroke-width: 5;
    stroke-linejoin: round;
    paint-order: stroke;
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
