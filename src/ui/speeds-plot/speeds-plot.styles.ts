import { css } from 'lit';

export const speedsPlotStyles = css`
  :host {
    min-block-size: 80px;
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
