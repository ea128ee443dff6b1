import { css } from 'lit';

export const plotReaderStyles = css`
  :host {
    display: block;
    position: absolute;
    inset: 0;
    contain: layout;
  }

  .reader {
    position: absolute;
    inset: 0;
    cursor: crosshair;
    touch-action: pan-y pinch-zoom;
    -webkit-tap-highlight-color: transparent;
  }

  svg {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    overflow: visible;
    pointer-events: none;
  }

  .mark {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 2;
  }

  text {
    fill: var(--dc-ink);
    font-size: 13px;
    stroke: var(--dc-paper);
    stroke-width: 5;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .remark {
    fill: var(--dc-ink-soft);
  }

  .figure {
    font-weight: 600;
  }

  @media print {
    :host {
      display: none;
    }
  }
`;
