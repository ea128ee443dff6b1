import { css } from 'lit';

export const speedsPlotStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
    min-block-size: 80px;
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

  .name,
  .speed,
  .where {
    dominant-baseline: central;
  }

  .name.open,
  .speed {
    fill: var(--dc-ink);
  }

  .name.open {
    font-weight: 600;
  }

  .selected {
    fill: var(--dc-air-wash);
  }

  .speed,
  .title.end {
    text-anchor: end;
  }

  .speed.settles {
    fill: var(--dc-duct);
    font-weight: 600;
  }

  .speed.tight {
    fill: var(--dc-air);
    font-weight: 600;
  }

  .tick,
  .band-label {
    text-anchor: middle;
  }

  .band {
    fill: var(--dc-range);
    fill-opacity: 0.6;
  }

  .band-end {
    stroke: var(--dc-ink-soft);
    shape-rendering: crispEdges;
  }

  .row {
    stroke: var(--dc-rule);
    shape-rendering: crispEdges;
  }

  .room {
    stroke: var(--dc-ink);
    shape-rendering: crispEdges;
  }

  .own {
    fill: var(--dc-ink);
    stroke: var(--dc-paper);
    stroke-width: 1.5;
    paint-order: stroke;
  }

  .own.settles {
    fill: var(--dc-duct);
  }

  .own.tight {
    fill: var(--dc-air);
  }

  .slowest {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.25;
  }

  .slowest.settles {
    stroke: var(--dc-duct);
    stroke-width: 1.75;
  }

  .ghost {
    fill: none;
    stroke: var(--dc-rule-strong);
    stroke-width: 1;
  }

  .moved {
    stroke: var(--dc-rule-strong);
    stroke-width: 1;
    fill: none;
  }

  @media (forced-colors: active) {
    .band {
      fill: none;
    }

    .selected {
      fill: none;
      stroke: Highlight;
    }
  }
`;
