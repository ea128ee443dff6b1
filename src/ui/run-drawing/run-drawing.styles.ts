import { css } from 'lit';

export const runDrawingStyles = css`
  :host {
    display: block;
    contain: size layout;
    position: relative;
    block-size: 100%;
    min-block-size: 160px;
  }

  svg.run {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    overflow: visible;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0 16px;
    margin: 0;
    color: var(--dc-ink-soft);
    font-size: 12px;
    line-height: 16px;
  }

  .item {
    display: inline-flex;
    align-items: center;
    gap: 6px;
  }

  path {
    fill: none;
    stroke-linejoin: round;
  }

  .wall {
    stroke: var(--dc-rule-strong);
  }

  .inside {
    stroke: var(--dc-range);
  }

  .tight .inside {
    stroke: var(--dc-paper);
  }

  .carries .wall,
  .carries .inside {
    stroke: var(--dc-air);
  }

  .tight .wall {
    stroke: var(--dc-air);
  }

  .settles .wall {
    stroke: var(--dc-duct);
  }

  .settles .inside {
    stroke: var(--dc-duct);
  }

  .chips {
    stroke: var(--dc-paper);
    stroke-linecap: round;
  }

  text {
    fill: var(--dc-ink-soft);
    font-size: 12px;
  }

  .drop {
    font-size: 13px;
    dominant-baseline: central;
  }

  .drop.open {
    fill: var(--dc-ink);
    font-weight: 600;
  }

  .speed {
    fill: var(--dc-ink);
    text-anchor: middle;
    stroke: var(--dc-paper);
    stroke-width: 3;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .settles .speed {
    fill: var(--dc-duct);
    font-weight: 600;
  }

  .tight .speed {
    fill: var(--dc-air);
    font-weight: 600;
  }

  .size {
    text-anchor: middle;
  }

  .collector {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.5;
  }

  @media (forced-colors: active) {
    .still .inside {
      stroke: Canvas;
    }
  }
`;
