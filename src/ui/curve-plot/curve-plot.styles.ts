import { css } from 'lit';

export const curvePlotStyles = css`
  :host {
    display: block;
    position: relative;
    block-size: 20rem;
    min-inline-size: 0;
    contain: size layout;
  }

  svg.plot {
    position: absolute;
    inset: 0 auto auto 0;
    overflow: visible;
  }

  .line {
    fill: none;
    stroke: var(--dc-air);
    stroke-width: 2.25;
    stroke-linejoin: round;
  }

  .entered {
    fill: none;
    stroke: var(--dc-ink-soft);
    stroke-width: 1.5;
  }

  .alone {
    stroke: var(--dc-air);
    stroke-width: 2.25;
  }

  .unknown {
    stroke-dasharray: 0.1 5;
    stroke-linecap: round;
  }

  .mark {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.5;
  }

  .mark.held {
    fill: var(--dc-ink);
  }

  .cross {
    fill: none;
    stroke: var(--dc-ink-soft);
    stroke-width: 2;
  }

  .gap {
    stroke: var(--dc-duct);
    stroke-width: 1.5;
  }

  .gap-text {
    fill: var(--dc-duct);
    font-weight: 600;
  }

  .label,
  .label-entered {
    dominant-baseline: central;
  }

  .label {
    fill: var(--dc-air);
  }

  .label-entered {
    fill: var(--dc-ink-soft);
  }

  .point {
    fill: var(--dc-ink);
    stroke: var(--dc-paper);
    stroke-width: 2;
  }

  .handle {
    position: absolute;
    inset-block-start: -22px;
    inset-inline-start: -22px;
    inline-size: 44px;
    block-size: 44px;
    border-radius: 50%;
    cursor: grab;
    touch-action: none;
    -webkit-tap-highlight-color: transparent;
  }

  .handle:active {
    cursor: grabbing;
  }

  .handle:focus-visible {
    outline-offset: -8px;
    border-radius: 50%;
  }

  @media print {
    .handle {
      display: none;
    }
  }
`;
