// How the drawing of the run looks, on the screen, on paper and in forced colours; over 200 lines, because
// each state of a duct is told by several shapes.

import { css } from 'lit';

export const runDrawingStyles = css`
  :host {
    display: grid;
    grid-template-rows: 1.5rem minmax(0, 1fr) auto;
    contain: size layout;
    position: relative;
    block-size: 100%;
    min-block-size: 160px;
  }

  .window {
    min-block-size: 0;
    overflow: hidden;
    touch-action: pan-x pan-y;
    overscroll-behavior: auto;
  }

  .window.zoomed {
    overflow: auto;
    cursor: grab;
    box-shadow: inset 0 0 0 1px var(--dc-rule);
  }

  .window.zoomed:active {
    cursor: grabbing;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    block-size: 1.25rem;
    margin: 0;
    overflow: hidden;
    color: var(--dc-ink-soft);
    font-size: 0.75rem;
    line-height: 1.25rem;
  }

  .item {
    display: inline-flex;
    align-items: center;
    gap: 5px;
    white-space: nowrap;
  }

  .foot {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    align-items: center;
    gap: 12px;
    block-size: 2.75rem;
  }

  .foot.stacked {
    grid-template-columns: minmax(0, 1fr);
    gap: 0;
    block-size: 6.5rem;
  }

  .stacked .reading {
    block-size: 3.625rem;
    max-block-size: none;
    padding-block-start: 4px;
  }

  .reading {
    max-block-size: 2.5rem;
    margin: 0;
    overflow: hidden;
    font-size: var(--dc-small);
    font-variant-numeric: tabular-nums;
    line-height: 1.125rem;
  }

  .hint {
    color: var(--dc-ink-soft);
  }

  .figure + .figure::before {
    content: '· ';
    color: var(--dc-ink-soft);
  }

  .zoom {
    display: flex;
  }

  .sign {
    font-size: 1.125rem;
    line-height: 1.25rem;
  }

  button[aria-disabled='true'] {
    color: var(--dc-ink-soft);
    cursor: default;
  }

  button[aria-disabled='true'] > span {
    border-block-end-color: transparent;
  }

  path {
    fill: none;
    stroke-linejoin: round;
  }

  .wall,
  .inside {
    stroke: var(--dc-air);
  }

  .wall.still {
    stroke: var(--dc-rule-strong);
  }

  .inside.still {
    stroke: var(--dc-range);
  }

  .gap {
    stroke: var(--dc-paper);
  }

  .wall.settles,
  .inside.settles {
    stroke: var(--dc-duct);
  }

  .chips {
    stroke: var(--dc-paper);
    stroke-linecap: round;
  }

  .arrow {
    stroke: var(--dc-paper);
    stroke-width: 2;
    stroke-linejoin: miter;
  }

  .halo {
    stroke: var(--dc-ink);
  }

  .halo-paper {
    stroke: var(--dc-paper);
  }

  .name-halo {
    fill: none;
    stroke: var(--dc-ink);
    stroke-width: 1.5;
  }

  .halo.focused,
  .name-halo.focused {
    stroke: var(--dc-focus);
  }

  .name-halo.focused {
    stroke-width: 2;
  }

  .hit {
    fill: none;
    stroke: transparent;
    pointer-events: stroke;
    cursor: pointer;
  }

  rect.hit {
    stroke: none;
    fill: transparent;
    pointer-events: fill;
  }

  [role='option']:focus {
    outline: none;
  }

  text {
    fill: var(--dc-ink-soft);
    font-size: 12px;
    pointer-events: none;
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

  .paper {
    fill: var(--dc-paper);
  }

  .collector {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.5;
  }

  @media (forced-colors: active) {
    .inside.still {
      stroke: Canvas;
    }
  }

  @media print {
    :host {
      display: block;
      contain: none;
      block-size: auto;
      break-inside: avoid;
    }

    .window {
      overflow: visible;
    }

    svg.run {
      inline-size: 100%;
      block-size: auto;
    }

    .foot {
      display: none;
    }
  }
`;
