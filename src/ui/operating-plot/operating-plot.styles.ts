import { css } from 'lit';

export const operatingPlotStyles = css`
  :host {
    display: block;
    contain: size layout;
    position: relative;
    block-size: 100%;
    min-block-size: 160px;
    min-inline-size: 0;
  }

  svg.plot {
    position: absolute;
    inset: 0 auto auto 0;
    overflow: visible;
  }

  .grid {
    stroke: var(--dc-rule);
    stroke-width: 1;
    shape-rendering: crispEdges;
  }

  .axis {
    stroke: var(--dc-ink);
    stroke-width: 1;
    shape-rendering: crispEdges;
  }

  text {
    fill: var(--dc-ink-soft);
  }

  .tick-x,
  .tick-y,
  .title-x,
  .title-y,
  .label-collector,
  .label-system,
  .point-unit {
    font-size: 13px;
  }

  .label-collector,
  .label-system,
  .label-tried {
    dominant-baseline: central;
  }

  .over-grid {
    stroke: var(--dc-paper);
    stroke-width: 5;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .tick-x {
    text-anchor: middle;
  }

  .tick-y {
    text-anchor: end;
    dominant-baseline: central;
  }

  .title-x {
    text-anchor: end;
  }

  .collector {
    fill: none;
    stroke: var(--dc-air);
    stroke-width: 2.25;
  }

  .unknown {
    fill: none;
    stroke: var(--dc-air);
    stroke-width: 2.25;
    stroke-dasharray: 0.1 6;
    stroke-linecap: round;
  }

  .entered {
    fill: var(--dc-paper);
    stroke: var(--dc-air);
    stroke-width: 1.5;
  }

  .aside {
    fill: none;
    stroke: var(--dc-ink-soft);
    stroke-width: 1.5;
  }

  .system {
    fill: none;
    stroke: var(--dc-duct);
    stroke-width: 2.25;
    stroke-linejoin: round;
  }

  .label-collector {
    fill: var(--dc-air);
  }

  .label-system {
    fill: var(--dc-duct);
  }

  .tried {
    fill: var(--dc-ink-soft);
    stroke: var(--dc-paper);
    stroke-width: 1.5;
    paint-order: stroke;
  }

  .label-tried {
    fill: var(--dc-ink-soft);
    font-size: 12px;
  }

  .other {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.5;
    stroke-dasharray: 3 2;
  }

  .point {
    fill: var(--dc-ink);
    stroke: var(--dc-paper);
    stroke-width: 3;
    paint-order: stroke;
  }

  .flow-number {
    fill: var(--dc-ink);
    font-weight: 650;
    letter-spacing: -0.01em;
  }

  .suction-number {
    fill: var(--dc-ink);
  }

  .point-unit {
    fill: var(--dc-ink-soft);
    font-weight: 400;
    letter-spacing: 0;
  }

  .instead {
    fill: var(--dc-ink);
    font-size: 16px;
  }

  /* As wide as the paper, whatever the window was. */
  @media print {
    :host {
      contain: none;
      block-size: auto;
      break-inside: avoid;
    }

    svg.plot {
      position: static;
      inline-size: 100%;
      block-size: auto;
      max-block-size: 40vh;
    }
  }
`;
