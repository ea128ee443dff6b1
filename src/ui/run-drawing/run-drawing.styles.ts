import { css } from 'lit';

export const runDrawingStyles = css`
  :host {
    display: block;
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

  path {
    fill: none;
    stroke-linejoin: round;
  }

  .wall {
    stroke: var(--dc-rule-strong);
  }

  .inside {
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
    font-size: var(--dc-small);
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
`;
