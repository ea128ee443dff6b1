import { css } from 'lit';

export const speedScaleStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    contain: size layout;
    position: relative;
    block-size: 26px;
    min-inline-size: 96px;
  }

  .rule {
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
    position: absolute;
    inset-block-start: 17.25px;
    inset-inline: 0;
    border-block-start: 1.5px solid var(--dc-ink-soft);
    transform-origin: 0 0;
  }

  .mark {
    position: absolute;
    inset-block-start: 18px;
    inset-inline-start: 0;
    inline-size: 1px;
    block-size: 1px;
    overflow: visible;
  }

`;
