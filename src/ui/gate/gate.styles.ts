import { css } from 'lit';

export const gateStyles = css`
  :host {
    display: inline-block;
    contain: size layout;
    inline-size: 116px;
    block-size: 44px;
  }

  .gate {
    position: relative;
    display: block;
    inline-size: 116px;
    block-size: 44px;
    cursor: ew-resize;
    touch-action: pan-y;
    user-select: none;
    -webkit-user-select: none;
    -webkit-tap-highlight-color: transparent;
  }

  svg,
  .slide,
  .slide > * {
    position: absolute;
    pointer-events: none;
  }

  svg {
    overflow: visible;
  }

  /* Plain boxes are moved without being laid out anew; a drawing would be. */
  .slide {
    inset: 0;
  }

  .bore {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.5;
  }

  .open .bore {
    fill: var(--dc-air-wash);
    stroke: var(--dc-air);
    stroke-width: 2.25;
  }

  .rails {
    stroke: var(--dc-rule-strong);
    stroke-width: 1;
  }

  .blade,
  .neck,
  .grip {
    border: 1.25px solid var(--dc-ink);
    background: var(--dc-blade);
  }

  .blade {
    inset-block: 3px;
    inset-inline-start: 3px;
    inline-size: 44px;
  }

  /* Grows out of the blade's edge. */
  .neck {
    inset-block-start: 18px;
    inset-inline-start: 46px;
    inline-size: 16px;
    block-size: 8px;
    border-inline-width: 0;
  }

  .hidden-rim {
    fill: none;
    stroke: var(--dc-rule-strong);
    stroke-dasharray: 2 3;
  }

  .grip {
    inset-block-start: 14px;
    inset-inline-start: 60px;
    inline-size: 16px;
    block-size: 16px;
    border-radius: 50%;
    background: var(--dc-paper);
  }

  .gate:hover .grip,
  .gate:active .grip {
    background: var(--dc-ink);
  }

  .gate:focus-visible {
    outline: 2px solid var(--dc-focus);
    outline-offset: 1px;
  }

  @media (forced-colors: active) {
    .gate {
      forced-color-adjust: none;
    }
  }
`;
