import { css } from 'lit';

export const suctionPlotStyles = css`
  :host {
    min-block-size: 120px;
  }

  text {
    dominant-baseline: central;
  }

  .grid {
    stroke: var(--dc-rule);
    shape-rendering: crispEdges;
  }

  .section {
    stroke: var(--dc-rule);
    shape-rendering: crispEdges;
  }

  .tick {
    text-anchor: middle;
  }

  .title,
  .tick,
  .head {
    dominant-baseline: auto;
  }

  .title.end,
  .head,
  .loss,
  .share {
    text-anchor: end;
  }

  .between {
    fill: var(--dc-air-wash);
  }

  .total,
  .static {
    fill: none;
    stroke-width: 1.75;
    stroke-linejoin: round;
  }

  .total {
    stroke: var(--dc-duct);
  }

  .static {
    stroke: var(--dc-air);
  }

  .much {
    fill: none;
    stroke: var(--dc-duct);
    stroke-width: 4.5;
    stroke-linejoin: round;
  }

  .strong {
    fill: var(--dc-ink);
    font-weight: 600;
  }

  .label-total {
    fill: var(--dc-duct);
    text-anchor: end;
  }

  .label-static {
    fill: var(--dc-air);
  }

  @media (forced-colors: active) {
    .between {
      fill: none;
    }
  }
`;
