import { css } from 'lit';

export const chartPictureStyles = css`
  :host {
    display: block;
    position: relative;
    min-inline-size: 0;
  }

  .window {
    overflow: auto;
    border: 1px solid var(--dc-rule-strong);
    max-block-size: 80vh;
  }

  .zoom-2 {
    inline-size: 200%;
  }

  .zoom-4 {
    inline-size: 400%;
  }

  .surface {
    cursor: crosshair;
    touch-action: manipulation;
    user-select: none;
  }

  .picture {
    inline-size: 100%;
    block-size: auto;
    background: #fff;
  }

  .handle {
    fill: transparent;
    cursor: grab;
    touch-action: none;
  }

  .under {
    fill: none;
    stroke: #fff;
    stroke-width: 4;
    vector-effect: non-scaling-stroke;
  }

  .mark {
    fill: none;
    stroke: #95500f;
    stroke-width: 2;
    vector-effect: non-scaling-stroke;
  }

  .mark.point {
    stroke: #1a5a96;
  }

  .held {
    stroke-width: 3.5;
  }

  .cross {
    stroke: #1b2025;
    stroke-width: 1;
    stroke-dasharray: 4 3;
    vector-effect: non-scaling-stroke;
  }

  .name {
    fill: #1b2025;
    stroke: #fff;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .loupe {
    position: absolute;
    inline-size: 120px;
    block-size: 120px;
    border: 1px solid #1b2025;
    border-radius: 50%;
    background: #fff;
    pointer-events: none;
  }

  @media (max-width: 37.4375em) {
    .loupe {
      inline-size: 84px;
      block-size: 84px;
    }
  }

  .loupe.top {
    inset-block-start: 4px;
  }

  .loupe.bottom {
    inset-block-end: 4px;
  }

  .loupe.left {
    inset-inline-start: 4px;
  }

  .loupe.right {
    inset-inline-end: 4px;
  }

  .loupe image {
    image-rendering: pixelated;
  }

  .loupe path {
    fill: none;
    stroke: #1b2025;
    stroke-width: 1;
    vector-effect: non-scaling-stroke;
  }

  @media (forced-colors: active) {
    .picture,
    .loupe {
      forced-color-adjust: none;
    }
  }
`;
