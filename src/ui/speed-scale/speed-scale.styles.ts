import { css } from 'lit';

export const speedScaleStyles = css`
  :host {
    display: block;
    contain: size layout;
    block-size: 26px;
    min-inline-size: 96px;
  }

  svg {
    inline-size: 100%;
    block-size: 26px;
    overflow: visible;
  }

  .base {
    stroke: var(--dc-rule-strong);
    stroke-width: 1;
  }

  .range {
    fill: var(--dc-range);
  }

  .range-end {
    stroke: var(--dc-ink-soft);
    stroke-width: 1;
  }

  .reach {
    stroke: var(--dc-ink-soft);
    stroke-width: 1.5;
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
`;
