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

  /* The blade in a drawing of its own is moved without being laid out anew. */
  svg {
    position: absolute;
    overflow: visible;
    pointer-events: none;
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

  .blade {
    fill: var(--dc-blade);
    stroke: var(--dc-ink);
    stroke-width: 1.25;
  }

  .hidden-rim {
    fill: none;
    stroke: var(--dc-rule-strong);
    stroke-dasharray: 2 3;
  }

  .grip {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.25;
  }

  .gate:hover .grip,
  .gate:active .grip {
    fill: var(--dc-ink);
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
