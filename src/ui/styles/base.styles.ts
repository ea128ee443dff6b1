// What every element shares: boxes that count their border, one focus ring, text for ears only.

import { css } from 'lit';

export const baseStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  :host([hidden]),
  [hidden] {
    display: none !important;
  }

  :focus-visible {
    outline: 2px solid var(--dc-focus);
    outline-offset: 2px;
    border-radius: 2px;
  }

  .for-ears {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  svg {
    display: block;
  }

  svg text {
    font-family: inherit;
    font-variant-numeric: tabular-nums;
    text-rendering: geometricPrecision;
  }
`;
